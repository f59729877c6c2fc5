package thrumwright.output.card;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
record CardHead(Card card, Optional<CardSaying> number, KeyFlow keys, double width, CardStyle style) {
    private static final double GAP = 10;
    /** Room for which of several cards it is. */
    private static final String WIDEST = "88 of 88";

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

    private TextPart text(String text, Color colour) {
        return new TextPart(text, style.small(), colour);
    }

    private TextPart facts() {
        return text(card.facts(), style.palette().faint());
    }

    /** Whether the facts find room behind the title. */
    private boolean inOneLine() {
        double piece = style.width(card.piece(), piece()) + GAP;
        return left() + piece + style.width(card.facts(), style.small()) + 1 <= width - right();
    }

    private List<TextPart> texts() {
        List<TextPart> texts = new ArrayList<>();
        if (style.form().bare()) {
            return texts;
        }
        if (!inOneLine()) {
            texts.add(facts());
        }
        if (!card.notes().isEmpty()) {
            texts.add(text(String.join(" ", card.notes()), style.palette().ink()));
        }
        return texts;
    }

    private double left() {
        return style.width(card.title(), title()) + GAP;
    }

    private double right() {
        return number.map(one -> style.width(WIDEST, title()) + GAP).orElse(0.0);
    }

    double height() {
        double texts = texts().stream().mapToDouble(text -> text.height(width)).sum();
        return titleHeight() + texts + keys.height() + 3;
    }

    void paint(Graphics2D g, double x, double y) {
        title(g, x, y);
        if (inOneLine() && !style.form().bare()) {
            double wide = style.width(card.facts(), style.small()) + 1;
            double above = title().getSize2D() * 0.8 - style.small().getSize2D() * 0.98;
            facts().paint(g, x + width - right() - wide, y + above, wide);
        }
        double at = y + titleHeight();
        for (TextPart text : texts()) {
            text.paint(g, x, at, width);
            at += text.height(width);
        }
        keys.paint(g, x, at);
    }

    private void title(Graphics2D g, double x, double y) {
        String piece = style.widths().shortened(card.piece(), piece(), width - left() - right());
        String which = number.map(one -> ". " + one.says()).orElse("");
        g.setColor(style.palette().ink());
        Structured.as(g, Role.CHAPTER, () -> {
            Structured.spell(g, card.title() + ": " + card.piece() + which);
            draw(g, card.title(), title(), x, y);
            draw(g, piece, piece(), x + left(), y);
            number.ifPresent(one -> draw(g, one.shown(), title(), x + width - style.width(one.shown(), title()), y));
        });
    }

    private void draw(Graphics2D g, String text, Font font, double x, double y) {
        g.setFont(font);
        g.drawString(text, (float) x, (float) (y + title().getSize2D() * 0.8));
    }
}
