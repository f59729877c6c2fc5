package thrumwright.editor.loom;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Phrases;
import thrumwright.store.PieceFile;

/** The view at the loom by itself, on a screen of 96 dots to the inch. For the event thread. */
public final class LoomStage {
    private static final double PIXELS = 96 / 25.4;

    private final Weaving weaving;
    private final AtHand hand;
    private final LoomView view;
    private int painted;

    public LoomStage(PieceFile piece, Dimension size) {
        Texts texts = Texts.of(Locale.UK);
        LoomType type = new LoomType(Fonts.load(), PIXELS, 1);
        Session session = new Session(piece, Optional.empty());
        this.weaving = new Weaving(session, texts, () -> LocalDateTime.of(2026, 11, 28, 14, 5));
        this.hand = new AtHand(weaving, Phrases.of("thrumwright.sheet.loom", Locale.UK));
        this.view = new LoomView(hand, () -> type, Palette::onDarkScreen, false);
        view.setSize(size);
        view.setPreferredSize(size);
    }

    public JComponent component() {
        return view;
    }

    /** Goes on to the first row of the step whose key this is. */
    public void weaveTo(String step) {
        view.refresh();
        while (weaving.now()
                .filter(at -> weaving.sheet().step(at).step().key().equals(step)
                        && weaving.read(hand.count()) == hand.count())
                .isEmpty()) {
            weaving.forward(hand.count());
            view.refresh();
        }
    }

    /** Where the picture is, pixels. */
    Rectangle all() {
        return view.laidOut().picture().getBounds();
    }

    /** How many pixels the last picture painted. */
    int painted() {
        return painted;
    }

    /** Lets the yarn go in, or stops it. */
    public void turn() {
        view.setPace(Pace::turned);
    }

    public boolean busy() {
        return view.busy();
    }

    /** The share of a row's yarn that is laid in, 0 to 1. */
    public double laid() {
        return view.pace().shown();
    }

    /**
     * Lays in as much more as in some seconds and paints what has changed, as a timer would let it; a row that is laid in
     * begins again at once, since a timer paints nothing while it rests.
     */
    public void frame(BufferedImage window, double seconds) {
        double before = laid();
        view.setPace(pace -> new Pace(before < 1 ? pace.laid() : 0, pace.speed(), true).after(seconds));
        Graphics2D g = window.createGraphics();
        Rectangle part = view.changed(before, laid());
        painted = part.width * part.height;
        g.setClip(part);
        view.paint(g);
        g.dispose();
    }
}
