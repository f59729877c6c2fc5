package thrumwright.output.card;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.sheet.card.Card;
import thrumwright.sheet.card.CardSaying;

/**
 * The head of a card: which end it is of which piece, whose, and what its signs mean.
 *
 * @param number which of several cards it is
 */
record CardHead(Card card, Optional<CardSaying> number, CardStyle style) implements Part {
    private static final double GAP = 10;
    private static final double PIECE = 0.6;
    private static final float LARGEST = 34;

    private Font title() {
        return style.name().deriveFont(Math.min(LARGEST, (float) style.large()));
    }

    private Font piece() {
        return style.type().fonts().semibold().deriveFont((float) Math.max(13, title().getSize2D() * PIECE));
    }

    private double titleHeight() {
        return title().getSize2D() * 1.05;
    }

    private KeyFlow keys() {
        return new KeyFlow(card.keys(), style);
    }

    private TextPart text(String text, Color colour) {
        return new TextPart(text, style.small(), colour);
    }

    private TextPart facts() {
        return text(card.facts(), style.palette().faint());
    }

    /** Whether the facts find room behind the title. */
    private boolean inOneLine(double width) {
        double piece = TextPart.width(card.piece(), piece()) + GAP;
        return left() + piece + TextPart.width(card.facts(), style.small()) + 1 <= width - right();
    }

    private List<TextPart> texts(double width) {
        List<TextPart> texts = new ArrayList<>();
        if (!inOneLine(width)) {
            texts.add(facts());
        }
        if (!card.notes().isEmpty()) {
            texts.add(text(String.join(" ", card.notes()), style.palette().ink()));
        }
        return texts;
    }

    private double left() {
        return TextPart.width(card.title(), title()) + GAP;
    }

    private double right() {
        return number.map(one -> TextPart.width(one.shown(), title()) + GAP).orElse(0.0);
    }

    @Override
    public double height(double width) {
        double texts =
                texts(width).stream().mapToDouble(text -> text.height(width)).sum();
        return titleHeight() + texts + keys().height(width) + 3;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        String piece = TextPart.shortened(card.piece(), piece(), width - left() - right());
        String says = card.title() + ": " + card.piece()
                + number.map(one -> ". " + one.says()).orElse("");
        g.setColor(style.palette().ink());
        Structured.as(g, Role.CHAPTER, () -> {
            Structured.spell(g, says);
            draw(g, card.title(), title(), x, y);
            draw(g, piece, piece(), x + left(), y);
            number.ifPresent(one -> draw(g, one.shown(), title(), x + width - right() + GAP, y));
        });
        if (inOneLine(width)) {
            double wide = TextPart.width(card.facts(), style.small()) + 1;
            double above = title().getSize2D() * 0.8 - style.small().getSize2D() * 0.98;
            facts().paint(g, x + width - right() - wide, y + above, wide);
        }
        double at = y + titleHeight();
        for (TextPart text : texts(width)) {
            text.paint(g, x, at, width);
            at += text.height(width);
        }
        keys().paint(g, x, at, width);
    }

    private void draw(Graphics2D g, String text, Font font, double x, double y) {
        g.setFont(font);
        g.drawString(text, (float) x, (float) (y + title().getSize2D() * 0.8));
    }
}
