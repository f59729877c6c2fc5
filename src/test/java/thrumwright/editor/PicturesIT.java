package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.swing.JSplitPane;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.block.Amount;
import thrumwright.block.PlainBand;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.look.Theme;
import thrumwright.editor.window.sheet.SheetWindow;
import thrumwright.output.SheetLayout;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.SheetPages;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.testing.WindowTest;

/**
 * Takes the pictures of the window for the docs. Run with {@code -Dgolden.accept=true} to write them anew; else it looks
 * whether those in the docs still show what the window does. Look at them before you commit.
 */
class PicturesIT {
    private static final Path FOLDER = Path.of("docs/pictures");

    /** Pictures are compared by squares of so many pixels, so that the smoothing of letters doesn't matter. */
    private static final int SQUARE = 12;

    private static final int SAME_SHADE = 40;
    private static final double MAY_DIFFER = 0.05;

    @RegisterExtension
    final WindowTest window = new WindowTest();

    private Stage stage;

    private void open(Piece piece, Theme theme) {
        stage = Stage.open(window, Locale.UK, piece);
        stage.theme(theme);
        stage.size(1200, 780);
        stage.settle();
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, window", "DARK, window-dark", "HIGH_CONTRAST, window-high-contrast"})
    void theWholeWindow(Theme theme, String name) throws IOException {
        open(Stage.demo("saltmarsh-panel"), theme);
        stage.select(Place.START, "facing");
        check(name, stage.editor().frame().getContentPane());
    }

    /** A piece about which there is something to say. */
    private static Piece withFindings() {
        Piece piece = Stage.demo("saltmarsh-panel");
        return piece.withStart(piece.start().without(Set.of("waste", "stiff")));
    }

    @Test
    void everyView() throws IOException {
        open(withFindings(), Theme.LIGHT);
        stage.run(this::work);
        JSplitPane split =
                stage.robot().finder().findByName(stage.editor().frame(), "canvasAndViews", JSplitPane.class);
        Set<String> taken = new HashSet<>();
        stage.eachView(state -> {
            Component view = stage.ask(() -> stage.view());
            String name = "view-" + stage.ask(() -> named(view));
            stage.run(() -> split.setDividerLocation(split.getHeight() - (tall(name) ? 420 : 200)));
            stage.settle();
            assertThat(taken.add(name)).as(name).isTrue();
            try {
                check(name, view);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
        assertThat(taken).contains("view-findings", "view-cuts", "view-hems", "view-ends", "view-budget", "view-steps");
    }

    @Test
    void theSheetInItsWindow() throws IOException {
        open(Stage.demo("saltmarsh-panel"), Theme.LIGHT);
        SheetWindow sheet = stage.ask(() -> stage.editor().sheet());
        stage.run(() -> {
            sheet.show();
            sheet.frame().setSize(982, 780);
        });
        WindowTest.waitFor("a painted page", () -> stage.ask(() -> sheet.view().painted()));
        check("sheet-window", sheet.frame().getContentPane());
    }

    @ParameterizedTest
    @CsvSource({"0, sheet-1", "2, sheet-3"})
    void aPageOfTheSheet(int number, String name) throws IOException {
        Plan plan = Plan.of(Stage.demo("saltmarsh-panel"));
        SheetPages pages = SheetLayout.of(plan, PageSetup.usual(Paper.A4), Fonts.load(), Palette.onPaper(), Locale.UK);
        check(name, PngFile.picture(pages, number, 60));
    }

    /** A little to go back to in the history. */
    private void work() {
        Edits edits = stage.editor().desk().edits();
        PlainBand facing =
                (PlainBand) stage.session().piece().start().block("facing").orElseThrow();
        for (int picks : new int[] {8, 7, 6}) {
            stage.session().edit(edits.amount(Place.START, facing.withAmount(new Amount.Picks(picks))));
        }
        stage.session().edit(edits.topOnItsOwn());
        stage.session().undo();
    }

    private static boolean tall(String name) {
        return Set.of("view-ends", "view-steps", "view-hems").contains(name);
    }

    /** The name of the first part of a view that has one. */
    private static String named(Component view) {
        String name = view.getName();
        if (name != null && !name.contains(".")) {
            return name;
        }
        if (view instanceof Container container) {
            for (Component child : container.getComponents()) {
                String inner = named(child);
                if (!inner.isEmpty()) {
                    return inner;
                }
            }
        }
        return "";
    }

    private void check(String name, Component shown) throws IOException {
        check(name, still(shown));
    }

    static void check(String name, BufferedImage picture) throws IOException {
        assertThat(shades(picture)).as(name + " shows something").isGreaterThan(20);
        Path file = FOLDER.resolve(name + ".png");
        if (Boolean.getBoolean("golden.accept")) {
            ImageIO.write(picture, "png", file.toFile());
        }
        assertThat(Files.exists(file)).as(file + " is there").isTrue();
        BufferedImage inDocs = ImageIO.read(file.toFile());
        assertThat(inDocs.getWidth()).as(name).isEqualTo(picture.getWidth());
        assertThat(inDocs.getHeight()).as(name).isEqualTo(picture.getHeight());
        assertThat(differing(picture, inDocs)).as(name).isLessThan(MAY_DIFFER);
    }

    /** As it looks once it no longer changes: cloth becomes sharp a moment later. */
    private BufferedImage still(Component shown) {
        BufferedImage[] last = {taken(shown)};
        int[] alike = {0};
        Pause.pause(new Condition("the window to be painted") {
            @Override
            public boolean test() {
                stage.robot().waitForIdle();
                boolean sharp = stage.ask(() -> WindowTest.sharp((Container) shown));
                BufferedImage now = taken(shown);
                alike[0] = sharp && differing(now, last[0]) == 0 ? alike[0] + 1 : 0;
                last[0] = now;
                return alike[0] >= 3;
            }
        });
        return last[0];
    }

    private BufferedImage taken(Component shown) {
        return stage.ask(() -> {
            BufferedImage picture = new BufferedImage(shown.getWidth(), shown.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = picture.createGraphics();
            shown.paint(g);
            g.dispose();
            return picture;
        });
    }

    private static int shades(BufferedImage picture) {
        Set<Integer> shades = new HashSet<>();
        for (int y = 0; y < picture.getHeight(); y += 2) {
            for (int x = 0; x < picture.getWidth(); x += 2) {
                shades.add(picture.getRGB(x, y));
            }
        }
        return shades.size();
    }

    /** The share of squares that differ by more than a shade. */
    private static double differing(BufferedImage one, BufferedImage other) {
        int squares = 0;
        int differing = 0;
        for (int y = 0; y + SQUARE <= one.getHeight(); y += SQUARE) {
            for (int x = 0; x + SQUARE <= one.getWidth(); x += SQUARE) {
                squares++;
                differing += Math.abs(shade(one, x, y) - shade(other, x, y)) > SAME_SHADE ? 1 : 0;
            }
        }
        return (double) differing / Math.max(1, squares);
    }

    /** The mean lightness of a square, 0 to 255. */
    private static double shade(BufferedImage picture, int left, int top) {
        long sum = 0;
        for (int y = top; y < top + SQUARE; y++) {
            for (int x = left; x < left + SQUARE; x++) {
                int rgb = picture.getRGB(x, y);
                sum += (rgb >> 16 & 0xff) + (rgb >> 8 & 0xff) + (rgb & 0xff);
            }
        }
        return sum / 3.0 / SQUARE / SQUARE;
    }
}
