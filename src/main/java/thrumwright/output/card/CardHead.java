package thrumwright.output.card;

import java.awt.Font;
import java.awt.Graphics2D;
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

    private List<TextPart> texts() {
        TextPart facts =
                new TextPart(card.facts(), style.small(), style.palette().faint());
        return card.notes().isEmpty()
                ? List.of(facts)
                : List.of(
                        facts,
                        new TextPart(
                                String.join(" ", card.notes()),
                                style.strong(),
                                style.palette().ink()));
    }

    @Override
    public double height(double width) {
        double texts = texts().stream().mapToDouble(text -> text.height(width)).sum();
        return titleHeight() + texts + keys().height(width) + 3;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double right =
                number.map(one -> TextPart.width(one.shown(), title()) + GAP).orElse(0.0);
        double left = TextPart.width(card.title(), title()) + GAP;
        String piece = TextPart.shortened(card.piece(), piece(), width - left - right);
        String says = card.title() + ": " + card.piece()
                + number.map(one -> ". " + one.says()).orElse("");
        g.setColor(style.palette().ink());
        Structured.as(g, Role.CHAPTER, () -> {
            Structured.spell(g, says);
            draw(g, card.title(), title(), x, y);
            draw(g, piece, piece(), x + left, y);
            number.ifPresent(one -> draw(g, one.shown(), title(), x + width - right + GAP, y));
        });
        double at = y + titleHeight();
        for (TextPart text : texts()) {
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
