package thrumwright.output.card;

import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;

/** A step's number, white on a dark tag, so that it is found from afar. */
record NumberTag(CardStyle style) {
    private static final double PADDING = 0.22;
    private static final double HEIGHT = 1.02;

    double width(int number) {
        return style.width(Integer.toString(number), style.name()) + 2 * PADDING * style.large();
    }

    double height() {
        return HEIGHT * style.large();
    }

    /** @param right its right edge */
    void paint(Graphics2D g, int number, double right, double middle) {
        double wide = width(number);
        double round = style.large() * 0.3;
        g.setColor(style.palette().ink());
        g.fill(new RoundRectangle2D.Double(right - wide, middle - height() / 2, wide, height(), round, round));
        g.setColor(style.palette().paper());
        g.setFont(style.name());
        double x = right - wide + PADDING * style.large();
        g.drawString(Integer.toString(number), (float) x, (float) (middle + style.large() * 0.325));
    }
}
