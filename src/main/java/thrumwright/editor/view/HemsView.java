package thrumwright.editor.view;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.UIManager;
import thrumwright.drawing.Palette;
import thrumwright.drawing.hem.HemPicture;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Ground;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.Smooth;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;

/** Both hems from the side, folded, to scale. */
public final class HemsView extends PictureView {
    private static final long serialVersionUID = 1L;
    private static final int SIDE = 14;
    private static final int LEAST_HEIGHT = 160;
    private static final int ABOVE = 5;

    private final transient Session session;
    private final transient Texts texts;
    private final transient Supplier<Palette> palette;
    private final Map<Place, Prose> titles =
            new EnumMap<>(Map.of(Place.START, new Prose(""), Place.TOP, new Prose("")));

    public HemsView(Session session, Texts texts, Supplier<Palette> palette) {
        this.session = session;
        this.texts = texts;
        this.palette = palette;
        setName("hems");
        titles.values().forEach(this::add);
        LiveView.keep(session, this, this::describe);
    }

    /** The depths in words, for those who can't see the picture. */
    private void describe() {
        getAccessibleContext()
                .setAccessibleDescription(title(session.plan().start()) + " "
                        + title(session.plan().top()));
        titles.forEach((place, words) -> words.setText(title(session.plan().end(place))));
        revalidate();
    }

    @Override
    public void doLayout() {
        int half = getWidth() / 2;
        titles.forEach((place, words) -> {
            int width = Math.max(1, half - 2 * SIDE);
            words.setSize(width, 1);
            words.setBounds(place == Place.START ? SIDE : half + SIDE, ABOVE, width, words.getPreferredSize().height);
        });
    }

    /** Lower, their words would be cut through; then they are scrolled. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Pixels.of(300), Pixels.of(LEAST_HEIGHT));
    }

    /** Where the pictures begin. */
    private int top() {
        return titles.values().stream()
                .mapToInt(words -> words.getY() + words.getHeight())
                .max()
                .orElse(0);
    }

    private String title(EndPlan end) {
        String place = Texts.capitalised(texts.words().place(end.place()));
        Optional<Hem> hem = end.hem().filter(Hem::folds);
        return hem.map(there -> measures(place, there)).orElse(texts.say("hems.none", Map.of("place", place)));
    }

    private String measures(String place, Hem hem) {
        Shown shown = session.shown().shown();
        String flat = texts.say(
                "hems.depth",
                Map.of(
                        "place", place,
                        "depth", shown.height(hem.depth()),
                        "layers", hem.layers(),
                        "thick", shown.height(hem.stacked())));
        return HemPicture.depthRoundBar(hem)
                .map(depth -> flat + " " + texts.say("hems.filled", Map.of("depth", shown.height(depth))))
                .orElse(flat);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Smooth.letters(g);
        Ground.fill(g, this, palette.get().paper());
        Map<Place, HemPicture> pictures = new EnumMap<>(Place.class);
        for (Place place : Place.values()) {
            EndPlan end = session.plan().end(place);
            end.hem().filter(Hem::folds).ifPresent(hem -> pictures.put(place, picture(g, end, hem)));
        }
        // one scale, so that both can be compared
        pictures.entrySet().stream()
                .mapToDouble(picture -> picture.getValue().scale(box(picture.getKey())))
                .min()
                .ifPresent(scale -> pictures.forEach((place, picture) -> {
                    Graphics2D own = (Graphics2D) g.create();
                    own.clip(box(place));
                    picture.paint(own, palette.get(), box(place), scale);
                    own.dispose();
                }));
        g.dispose();
    }

    private HemPicture picture(Graphics2D g, EndPlan end, Hem hem) {
        Font font = UIManager.getFont("Label.font");
        return new HemPicture(
                session.plan(),
                end,
                hem,
                font,
                g.getFontRenderContext(),
                block -> texts.words().name(block));
    }

    private Rectangle2D box(Place place) {
        double half = getWidth() / 2.0;
        double left = place == Place.START ? 0 : half;
        return new Rectangle2D.Double(left + SIDE, top() + 3, half - 2 * SIDE, Math.max(30, getHeight() - top() - 9));
    }
}
