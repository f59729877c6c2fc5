package thrumwright.editor.loom;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Theme;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Phrases;
import thrumwright.piece.Piece;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;

/** What is seen at the loom has room, and is large enough, through whole pieces. */
class LoomLayoutTest {
    /** Pixels per mm of a screen of 96 dots to the inch. */
    private static final double PIXELS = 96 / 25.4;

    private static final Fonts FONTS = Fonts.load();
    private static final Map<Font, Integer> CAPITALS = new HashMap<>();
    private static final LoomType TYPE = new LoomType(FONTS, PIXELS, 1);

    private static List<LoomLayout> whole(Piece piece, Dimension room, LoomType type) {
        Session session = new Session(new PieceFile(piece, Unknown.none()), Optional.empty());
        Weaving weaving = new Weaving(session, Texts.of(Locale.UK), () -> LocalDateTime.of(2026, 11, 28, 14, 5));
        AtHand hand = new AtHand(weaving, Phrases.of("thrumwright.sheet.loom", Locale.UK));
        List<LoomLayout> all = new ArrayList<>();
        while (weaving.now().isPresent()) {
            all.add(hand.layout(type, room));
            weaving.forward(hand.count());
        }
        return all;
    }

    private static Piece demo(String name) throws FileProblem {
        return PieceFile.read(BuiltIn.DEMO.text(name)).piece();
    }

    /** Capitals of 11.6 mm are seen under 20 minutes of arc from 2 m (NUREG-0700 rev. 2, 1.3.1-4). */
    @Test
    void everythingButWhatComesNextIsReadFromTwoMetresOnUsualScreens() throws FileProblem {
        List<Dimension> rooms = List.of(new Dimension(1366, 708), new Dimension(1920, 1020));
        for (String name : BuiltIn.DEMO.names()) {
            // what a small screen has room for, a large one has too
            for (Dimension room : name.equals("first-wave.json") ? rooms : rooms.subList(0, 1)) {
                for (LoomLayout layout : whole(demo(name), room, TYPE)) {
                    assertThat(layout.fits()).as("%s: %s", name, layout.leaf()).isTrue();
                    assertThat(capitals(layout) / PIXELS)
                            .as("%s %s: %s", name, room, layout.leaf())
                            .isGreaterThanOrEqualTo(11.6);
                }
            }
        }
    }

    /** A screen with twice as many dots shows the same words as large, and leaf by leaf the same. */
    @Test
    void twiceAsManyDotsShowTheSameAsLarge() throws FileProblem {
        LoomType fine = new LoomType(FONTS, 2 * PIXELS, 1);
        List<LoomLayout> usual = whole(demo("first-wave.json"), new Dimension(1366, 708), TYPE);
        List<LoomLayout> twice = whole(demo("first-wave.json"), new Dimension(2732, 1416), fine);
        assertThat(twice)
                .extracting(LoomLayout::leaf)
                .isEqualTo(usual.stream().map(LoomLayout::leaf).toList());
        for (LoomLayout layout : twice) {
            assertThat(capitals(layout) / (2 * PIXELS)).isGreaterThanOrEqualTo(11.6);
        }
    }

    /** Words stand out in every look by at least 7 : 1 (WCAG 2, 1.4.6), in high contrast by as much as can be. */
    @Test
    void wordsStandOutInEveryLook() {
        for (Theme theme : Theme.values()) {
            double contrast = contrast(theme.palette().ink(), theme.palette().paper());
            assertThat(contrast).as("%s", theme).isGreaterThanOrEqualTo(theme == Theme.HIGH_CONTRAST ? 20 : 7);
        }
    }

    private static double contrast(Color one, Color other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    /** Relative luminance as WCAG 2 defines it. */
    private static double luminance(Color colour) {
        double[] parts = new double[3];
        for (int i = 0; i < 3; i++) {
            double part = colour.getRGBColorComponents(null)[i];
            parts[i] = part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }

    /** The height of an H as it is painted, pixels; of each font once. */
    private static int capitals(LoomLayout layout) {
        return CAPITALS.computeIfAbsent(layout.type().words(), any -> painted(layout));
    }

    private static int painted(LoomLayout layout) {
        BufferedImage image = new BufferedImage(300, 300, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        new LoomLines(300).add("H", layout.type().words()).draw(g, 10, 10);
        g.dispose();
        int rows = 0;
        for (int y = 0; y < 300; y++) {
            boolean inked = false;
            for (int x = 0; x < 300; x++) {
                inked |= (image.getRGB(x, y) & 0xff) > 100;
            }
            rows += inked ? 1 : 0;
        }
        return rows;
    }

    /** On a screen too small for its words type gives way, but nothing is lost. */
    @Test
    void onASmallScreenEverythingIsStillThere() throws FileProblem {
        for (LoomLayout layout : whole(demo("first-wave.json"), new Dimension(683, 330), TYPE)) {
            assertThat(layout.fits()).as("%s", layout.leaf()).isTrue();
            BufferedImage image = new BufferedImage(683, 330, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            layout.draw(g, Palette.onDarkScreen());
            g.dispose();
        }
    }
}
