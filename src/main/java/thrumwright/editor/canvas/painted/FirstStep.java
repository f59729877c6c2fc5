package thrumwright.editor.canvas.painted;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import javax.swing.UIManager;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.look.Ground;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;

/** What to do first, as long as a piece has no block: a sentence where the start will be. Never printed. */
public final class FirstStep {
    private static final int WIDEST = 340;
    private static final int EDGE = 12;

    private FirstStep() {}

    public static boolean isAhead(Plan plan) {
        return plan.start().blocks().isEmpty() && plan.top().blocks().isEmpty();
    }

    static void paint(Graphics2D g, Showing showing) {
        g.setFont(UIManager.getFont("Label.font"));
        FontMetrics metrics = g.getFontMetrics();
        Rectangle room = showing.pictured();
        int most = Math.min(WIDEST, room.width - 4 * EDGE);
        List<String> lines = lines(showing.texts().say("canvas.first"), metrics, most);
        int width = lines.stream().mapToInt(metrics::stringWidth).max().orElse(0) + 2 * EDGE;
        int height = lines.size() * metrics.getHeight() + 2 * EDGE;
        double design = showing.map().y(Place.START, -PiecePicture.DESIGN / 2);
        double top = Math.max(room.y + EDGE, Math.min(design, room.getMaxY() - height - EDGE));
        Rectangle2D box =
                new Rectangle2D.Double(Math.round(room.getCenterX() - width / 2.0), Math.round(top), width, height);
        Ground.fill(g, box, showing.palette().paper());
        g.setColor(showing.palette().faint());
        g.setStroke(new BasicStroke(1));
        g.draw(box);
        g.setColor(showing.palette().ink());
        for (int i = 0; i < lines.size(); i++) {
            float base = (float) (box.getY() + EDGE + i * metrics.getHeight() + metrics.getAscent());
            g.drawString(lines.get(i), (float) box.getX() + EDGE, base);
        }
    }

    private static List<String> lines(String sentence, FontMetrics metrics, int most) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : sentence.split(" ")) {
            if (line.length() > 0 && metrics.stringWidth(line + " " + word) > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
