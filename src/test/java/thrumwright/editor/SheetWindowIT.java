package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.event.KeyEvent;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.Media;
import javax.print.attribute.standard.MediaSizeName;
import javax.print.attribute.standard.PageRanges;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileFilter;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.files.Dialogs;
import thrumwright.editor.files.SheetTarget;
import thrumwright.editor.settings.ScreenScale;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.sheet.PageView;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.editor.window.sheet.Printers;
import thrumwright.output.SheetForm;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Stopped;
import thrumwright.piece.Place;
import thrumwright.testing.WindowTest;

/** Looks at the step sheet, sets it up, prints it and writes it to files, as a weaver would. */
class SheetWindowIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private final Answers answers = new Answers();
    private Workroom room;
    private EditorWindow editor;
    private FrameFixture frame;
    private FrameFixture sheet;

    private void open() {
        frame = window.show(() -> {
            room = Rooms.with(new Settings(Optional.of(folder.resolve("settings.properties"))));
            editor = room.open(Optional.empty());
            editor.files().setQuestions(answers);
            return editor.frame();
        });
    }

    private void openSheet() {
        frame.button("tool.sheet").click();
        sheet = window.frame("sheet");
        waitForPage();
    }

    private void waitForPage() {
        waitFor("a painted page", () -> onEventThread(() -> view().painted()));
        frame.robot().waitForIdle();
    }

    private PageView view() {
        return editor.sheet().view();
    }

    private int pages() {
        return onEventThread(() -> view().count());
    }

    private void focusPages() {
        onEventThread(() -> view().requestFocusInWindow());
        waitFor("the keyboard at the pages", () -> onEventThread(() -> view().isFocusOwner()));
    }

    /** What the sheet's window says above its pages; nothing if it says nothing. */
    private String message() {
        return WindowTest.message(sheet.target());
    }

    private void waitForMessage(String begins) {
        waitFor("a message", () -> !message().isEmpty());
        assertThat(message()).startsWith(begins);
    }

    private String reason(String field) {
        return onEventThread(() -> sheet
                .robot()
                .finder()
                .findAll(sheet.target(), new GenericTypeMatcher<JTextArea>(JTextArea.class) {
                    @Override
                    protected boolean isMatching(JTextArea component) {
                        return (field + ".reason").equals(component.getName()) && component.isVisible();
                    }
                })
                .stream()
                .map(JTextArea::getText)
                .findFirst()
                .orElse(""));
    }

    @Test
    void showsThePagesAndFollowsThePaper() {
        open();
        openSheet();
        int onA4 = pages();
        assertThat(onA4).isGreaterThan(3);
        sheet.label("page").requireText("Page 1 of " + onA4);

        sheet.comboBox("field.page.paper").selectItem("A3");

        waitFor("fewer pages on larger paper", () -> pages() < onA4);
        waitForPage();
        sheet.label("page").requireText("Page 1 of " + pages());

        int upright = pages();
        sheet.comboBox("field.page.lying").selectItem("on its side");
        waitFor("other pages on its side", () -> pages() != upright || !uprightShown());
    }

    private boolean uprightShown() {
        return onEventThread(() -> !editor.sheet().setup().choice().landscape());
    }

    @Test
    void farAwayTheTypeIsLargerAndTakesMorePages() {
        open();
        openSheet();
        int near = pages();

        window.typeOver(sheet, "field.page.distance", "2 m");

        waitFor("more pages", () -> pages() > near);
    }

    @Test
    void wrongMarginsAreMarkedWithTheReasonAndStayAsTyped() {
        open();
        openSheet();

        window.typeOver(sheet, "field.page.margin", "2 in");
        window.press(KeyEvent.VK_ENTER);

        sheet.textBox("field.page.margin").requireText("2 in");
        assertThat(reason("field.page.margin")).isEqualTo("Margins are 5 to 40 mm wide, or ¼ to 1½ in.");
        assertThat(sheet.textBox("field.page.margin").target().getClientProperty("JComponent.outline"))
                .isEqualTo("error");
        assertThat(onEventThread(() -> editor.sheet().setup().choice().margin().text()))
                .isEqualTo("14 mm");

        window.press(KeyEvent.VK_ESCAPE);
        sheet.textBox("field.page.margin").requireText("14 mm");
        assertThat(reason("field.page.margin")).isEmpty();

        window.typeOver(sheet, "field.page.margin", "1/2 in");
        window.press(KeyEvent.VK_ENTER);
        assertThat(onEventThread(
                        () -> editor.sheet().setup().choice().look().setup().margin()))
                .isEqualTo(12.7);
    }

    @Test
    void theSheetFollowsThePieceWhileItIsEdited() {
        open();
        openSheet();
        String before = onEventThread(() -> view().getAccessibleContext().getAccessibleDescription());

        onEventThread(() -> {
            editor.session().select(Selection.of(Place.START, "facing"));
            editor.session()
                    .edit(editor.desk()
                            .edits()
                            .delete(editor.session().piece(), editor.session().selection()));
            return null;
        });

        waitFor(
                "another first page",
                () -> !onEventThread(() -> view().getAccessibleContext().getAccessibleDescription())
                        .equals(before));
        assertThat(onEventThread(() -> view().getAccessibleContext().getAccessibleDescription()))
                .contains("Cut first")
                .doesNotContain("Facing, start");
    }

    @Test
    void theKeyboardGoesFromPageToPageAndZooms() {
        open();
        openSheet();
        focusPages();
        int last = pages();

        window.press(KeyEvent.VK_PAGE_DOWN);
        sheet.label("page").requireText("Page 2 of " + last);
        window.press(KeyEvent.VK_PAGE_DOWN, KeyEvent.VK_CONTROL);
        sheet.label("page").requireText("Page 3 of " + last);
        window.press(KeyEvent.VK_PAGE_UP, KeyEvent.VK_CONTROL);
        sheet.label("page").requireText("Page 2 of " + last);
        window.press(KeyEvent.VK_END, KeyEvent.VK_CONTROL);
        sheet.label("page").requireText("Page " + last + " of " + last);
        sheet.button("tool.sheet-next").requireDisabled();
        window.press(KeyEvent.VK_HOME, KeyEvent.VK_CONTROL);
        sheet.label("page").requireText("Page 1 of " + last);

        double whole = onEventThread(() -> view().scale());
        window.press(KeyEvent.VK_1, KeyEvent.VK_CONTROL);
        assertThat(onEventThread(() -> view().scale())).isGreaterThan(whole);
        window.press(KeyEvent.VK_4, KeyEvent.VK_CONTROL);
        // an inch is 72 points on paper and 96 pixels on a screen that nobody has measured
        assertThat(onEventThread(() -> view().scale())).isCloseTo(96.0 / 72, within(1e-9));
        window.press(KeyEvent.VK_MINUS, KeyEvent.VK_CONTROL);
        assertThat(onEventThread(() -> view().scale())).isLessThan(96.0 / 72);
        onEventThread(() -> {
            new ScreenScale(room.place().settings()).measured(view().getGraphicsConfiguration(), 5);
            return null;
        });
        window.press(KeyEvent.VK_4, KeyEvent.VK_CONTROL);
        assertThat(onEventThread(() -> view().scale())).isCloseTo(5 * 25.4 / 72, within(1e-9));
        window.press(KeyEvent.VK_0, KeyEvent.VK_CONTROL);
        assertThat(onEventThread(() -> view().scale())).isEqualTo(whole);
        waitForPage();

        window.press(KeyEvent.VK_W, KeyEvent.VK_CONTROL);
        sheet.requireNotVisible();
        frame.requireVisible();
    }

    /** Buttons, fields and pages have names for those who can't see them. */
    @Test
    void everythingThatTakesTheKeyboardHasAName() {
        open();
        openSheet();

        List<JComponent> focusable = sheet
                .robot()
                .finder()
                .findAll(sheet.target(), new GenericTypeMatcher<JComponent>(JComponent.class) {
                    @Override
                    protected boolean isMatching(JComponent component) {
                        return component.isShowing()
                                && component.isFocusable()
                                && component.getName() != null
                                && component.getName().matches("(tool|field)\\..*|pages|jobStop");
                    }
                })
                .stream()
                .toList();

        assertThat(focusable).hasSizeGreaterThan(12);
        for (JComponent component : focusable) {
            assertThat(onEventThread(() -> component.getAccessibleContext().getAccessibleName()))
                    .as(component.getName())
                    .isNotBlank();
        }
    }

    @Test
    void howThePageIsSetUpIsRememberedForTheNextTime() {
        open();
        openSheet();
        sheet.comboBox("field.page.paper").selectItem("Tabloid");
        sheet.comboBox("field.page.colours").selectItem("in black and white");
        window.typeOver(sheet, "field.page.margin", "3/4 in");
        window.press(KeyEvent.VK_W, KeyEvent.VK_CONTROL);
        FrameFixture first = frame;
        onEventThread(() -> {
            editor.dispose();
            return null;
        });
        first.cleanUp();

        open();
        openSheet();

        sheet.comboBox("field.page.paper").requireSelection("Tabloid");
        sheet.comboBox("field.page.colours").requireSelection("in black and white");
        sheet.textBox("field.page.margin").requireText("3/4 in");
    }

    private void export(SheetForm form, String name) {
        answers.sheet = Optional.of(new SheetTarget(folder.resolve(name), form));
        sheet.button("tool.sheet-export").click();
    }

    @Test
    void writesThePdfThatIsShown() throws IOException {
        open();
        openSheet();
        int pages = pages();

        export(SheetForm.PDF, "marsh.pdf");
        waitForMessage("The step sheet is written to ");

        try (PDDocument document = Loader.loadPDF(folder.resolve("marsh.pdf").toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(pages);
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo((float) Paper.A4.width(), within(0.01f));
        }
    }

    @Test
    void writesAPictureOfEachPageAndTextAndAPageForABrowser() throws IOException {
        open();
        openSheet();

        export(SheetForm.SVG, "marsh.svg");
        waitForMessage("The step sheet is written, " + pages() + " pages, from ");
        assertThat(written(".svg")).hasSize(pages());

        export(SheetForm.TEXT, "marsh.txt");
        waitFor("the text", () -> written(".txt").size() == 1);
        export(SheetForm.HTML, "marsh.html");
        waitFor("the page", () -> written(".html").size() == 1);
    }

    /** In the program's own dialog: another kind of file keeps the name, and nothing is written over unasked. */
    @Test
    void theKindOfFileIsChosenInTheDialog() throws IOException {
        open();
        openSheet();
        onEventThread(() -> {
            editor.files().setQuestions(new Dialogs(editor.frame(), room.place(), folder));
            return null;
        });
        Files.writeString(folder.resolve("saltmarsh-at-low-water-steps.txt"), "somebody’s notes");
        sheet.button("tool.sheet-export").click();
        JFileChooserFixture dialog = window.files();

        onEventThread(() -> {
            FileFilter[] kinds = dialog.target().getChoosableFileFilters();
            assertThat(kinds).hasSize(SheetForm.values().length);
            dialog.target().setFileFilter(kinds[SheetForm.TEXT.ordinal()]);
            return null;
        });
        waitFor(
                "the name with the other ending",
                () -> "saltmarsh-at-low-water-steps.txt"
                        .equals(dialog.fileNameTextBox().text()));
        dialog.approve();
        JOptionPaneFixture question = window.question();
        assertThat(SwingUtilities.getWindowAncestor(question.target()).getOwner())
                .as("the window that the question lies on")
                .isSameAs(sheet.target());
        question.buttonWithText("Replace it").click();

        waitForMessage("The step sheet is written to ");
        assertThat(Files.readString(folder.resolve("saltmarsh-at-low-water-steps.txt")))
                .startsWith("Saltmarsh at low water\n=====");
        assertThat(written(".pdf")).isEmpty();
    }

    @Test
    void theButtonThatBeganAWorkHasTheKeyboardAgainAfterwards() {
        open();
        openSheet();
        answers.sheet = Optional.of(new SheetTarget(folder.resolve("marsh.pdf"), SheetForm.PDF));
        var export = sheet.button("tool.sheet-export").focus().target();
        waitFor("the keyboard at the button", () -> onEventThread(export::isFocusOwner));

        window.press(KeyEvent.VK_SPACE);

        waitForMessage("The step sheet is written to ");
        waitFor("the keyboard at the button again", () -> onEventThread(export::isFocusOwner));
    }

    private List<Path> written(String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }

    @Test
    void whatCannotBeWrittenIsToldInASentence() throws IOException {
        open();
        openSheet();

        export(SheetForm.PDF, "no-such-folder/marsh.pdf");

        waitForMessage("The step sheet wasn’t written: There is no folder for ");
        assertThat(written(".pdf")).isEmpty();
    }

    /** A work that would never end by itself is stopped by the button. */
    @Test
    void aLongWorkShowsHowFarItIsAndIsStopped() {
        open();
        openSheet();
        CountDownLatch stopped = new CountDownLatch(1);
        onEventThread(() -> {
            editor.sheet()
                    .jobs()
                    .run(
                            "job.page",
                            progress -> {
                                while (true) {
                                    progress.reached(2, 9);
                                    TimeUnit.MILLISECONDS.sleep(5);
                                }
                            },
                            ended -> {
                                if (ended.thrown() instanceof Stopped) {
                                    stopped.countDown();
                                }
                            });
            return null;
        });
        waitFor(
                "how far it is",
                () -> "Page 3 of 9".equals(sheet.label("jobLabel").text()));
        sheet.button("tool.sheet-export").requireDisabled();
        sheet.button("tool.sheet-print").requireDisabled();

        sheet.button("jobStop").click();

        waitFor("the end", () -> stopped.getCount() == 0);
        waitFor("the buttons", () -> sheet.button("tool.sheet-export").isEnabled());
    }

    @Test
    void anExportThatIsStoppedLeavesNoFileBehind() throws IOException {
        open();
        openSheet();
        answers.sheet = Optional.of(new SheetTarget(folder.resolve("marsh.png"), SheetForm.PNG));
        onEventThread(() -> {
            sheet.button("tool.sheet-export").target().doClick();
            editor.sheet().jobs().stop();
            return null;
        });

        waitForMessage("Stopped. Nothing was written.");

        assertThat(written(".png")).isEmpty();
        assertThat(written(".new")).isEmpty();
    }

    private PaperlessPrinter printer() {
        PaperlessPrinter printer = new PaperlessPrinter();
        onEventThread(() -> {
            editor.sheet().printing().setPrinters(printer);
            return null;
        });
        return printer;
    }

    @Test
    void printsAllPagesOnThePaperThatWasChosen() {
        open();
        openSheet();
        sheet.comboBox("field.page.paper").selectItem("Letter");
        sheet.robot().waitForIdle();
        waitFor("Letter", () -> onEventThread(() -> view().painted()));
        PaperlessPrinter printer = printer();

        window.press(KeyEvent.VK_P, KeyEvent.VK_CONTROL);
        waitForMessage("Sent to ");

        assertThat(printer.asked.get(Media.class)).isEqualTo(MediaSizeName.NA_LETTER);
        assertThat(printer.printed).hasSize(pages());
        // Letter is 8 1/2 × 11 in (ANSI), 612 × 792 points
        assertThat(printer.formats).allSatisfy(format -> {
            assertThat(format.getWidth()).isCloseTo(612, within(0.01));
            assertThat(format.getHeight()).isCloseTo(792, within(0.01));
            assertThat(format.getImageableX()).isZero();
        });
    }

    /** Chooses, and goes on at once: both happen before the window has had time for anything else. */
    private void chooseAnd(String field, String item, String button) {
        onEventThread(() -> {
            sheet.comboBox(field).target().setSelectedItem(itemOf(field, item));
            sheet.button(button).target().doClick();
            return null;
        });
    }

    private Object itemOf(String field, String item) {
        JComboBox<?> box = sheet.comboBox(field).target();
        for (int i = 0; i < box.getItemCount(); i++) {
            if (item.equals(String.valueOf(box.getItemAt(i)))) {
                return box.getItemAt(i);
            }
        }
        throw new AssertionError("no “" + item + "” in " + field);
    }

    @Test
    void paperThatIsChosenJustBeforePrintingIsThePaperThatIsPrinted() {
        open();
        openSheet();
        PaperlessPrinter printer = printer();

        chooseAnd("field.page.paper", "A3", "tool.sheet-print");
        waitForMessage("Sent to ");

        assertThat(printer.asked.get(Media.class)).isEqualTo(MediaSizeName.ISO_A3);
        // A3 is 297 × 420 mm (ISO 216)
        assertThat(printer.formats)
                .isNotEmpty()
                .allSatisfy(format -> assertThat(format.getHeight()).isCloseTo(420 / 25.4 * 72, within(0.01)));
        assertThat(printer.printed).hasSize(pages());
    }

    /** The first wish for pages is still being fulfilled, or waits, when the next comes. */
    @Test
    void ofManySettingsInARowTheLastIsPrinted() {
        open();
        openSheet();
        PaperlessPrinter printer = printer();
        for (int round = 1; round <= 3; round++) {
            int sent = round;
            printer.formats.clear();
            onEventThread(() -> {
                editor.sheet().setup().change(choice -> choice.withPaper(Paper.TABLOID), null);
                return null;
            });
            Pause.pause(100 + 20 * round);

            chooseAnd("field.page.paper", "Letter", "tool.sheet-print");
            waitFor(
                    "round " + sent,
                    () -> !message().isEmpty()
                            && !onEventThread(() -> editor.sheet().jobs().busy()));

            assertThat(printer.formats)
                    .isNotEmpty()
                    .allSatisfy(format -> assertThat(format.getHeight()).isCloseTo(792, within(0.01)));
        }
    }

    @Test
    void whatIsTypedIsPrintedWithoutEnter() {
        open();
        openSheet();
        int near = pages();
        PaperlessPrinter printer = printer();

        window.typeOver(sheet, "field.page.distance", "2 m");
        window.press(KeyEvent.VK_P, KeyEvent.VK_CONTROL);
        waitForMessage("Sent to ");

        assertThat(printer.printed).hasSizeGreaterThan(near).hasSize(pages());
    }

    @Test
    void theQuestionForAFileKnowsHowManyPagesThereAreNow() {
        open();
        openSheet();
        int onA4 = pages();

        chooseAnd("field.page.paper", "A3", "tool.sheet-export");
        waitFor("the question", () -> answers.asked == 1);

        assertThat(answers.pages).isLessThan(onA4);
        waitForPage();
        assertThat(answers.pages).isEqualTo(pages());
    }

    /** Laying out can't be hurried, but nobody has to wait for it. */
    @Test
    void printingIsStoppedWhileThePagesAreMade() {
        open();
        openSheet();
        PaperlessPrinter printer = printer();

        onEventThread(() -> {
            sheet.comboBox("field.page.paper").target().setSelectedItem(itemOf("field.page.paper", "A3"));
            sheet.button("tool.sheet-print").target().doClick();
            editor.sheet().jobs().stop();
            return null;
        });
        waitForMessage("Stopped.");

        assertThat(printer.asked).isNull();
        assertThat(printer.printed).isEmpty();
    }

    @Test
    void printsTheRangeOfPagesThatWasChosen() {
        open();
        openSheet();
        PaperlessPrinter printer = printer();
        printer.range = new PageRanges(2, 3);

        sheet.button("tool.sheet-print").click();
        waitForMessage("Sent to ");

        assertThat(printer.printed).containsExactly(1, 2);
    }

    @Test
    void printsNothingWhenTheWeaverThinksBetterOfIt() {
        open();
        openSheet();
        PaperlessPrinter printer = printer();
        printer.agrees = false;

        sheet.button("tool.sheet-print").click();
        waitFor("the question", () -> printer.asked != null);
        sheet.robot().waitForIdle();

        assertThat(printer.printed).isEmpty();
        assertThat(message()).isEmpty();
        waitFor("the button", () -> sheet.button("tool.sheet-print").isEnabled());
    }

    @Test
    void refusesAnotherPaperThanThePagesAreLaidOutFor() {
        open();
        openSheet();
        PaperlessPrinter printer = printer();
        printer.chosen = MediaSizeName.NA_LETTER;

        sheet.button("tool.sheet-print").click();
        waitForMessage("Nothing was printed: these pages are laid out for A4");

        assertThat(printer.printed).isEmpty();
    }

    @Test
    void printingIsStoppedBetweenPages() {
        open();
        openSheet();
        PaperlessPrinter printer = printer();
        printer.beforePage = page -> {
            if (page == 1) {
                onEventThread(() -> {
                    sheet.button("jobStop").target().doClick();
                    return null;
                });
            }
        };

        sheet.button("tool.sheet-print").click();

        waitForMessage("Stopped. What has gone to the printer already");
        assertThat(printer.printed).containsExactly(0);
    }

    @Test
    void saysWhenThereIsNoPrinter() {
        open();
        openSheet();
        onEventThread(() -> {
            editor.sheet().printing().setPrinters(new Printers() {
                @Override
                public PrinterJob job() throws PrinterException {
                    throw new PrinterException(room.place().texts().say("print.no-printer"));
                }

                @Override
                public boolean choose(PrinterJob job, PrintRequestAttributeSet attributes) {
                    throw new AssertionError("there is nothing to choose from");
                }
            });
            return null;
        });

        sheet.button("tool.sheet-print").click();

        waitForMessage("Not printed: there is no printer.");
    }

    @Test
    void theMenuOfThePieceOpensTheSheetAndPrintsAtOnce() {
        open();
        PaperlessPrinter printer = printer();

        frame.menuItem("menu.print").click();
        sheet = window.frame("sheet");

        waitForMessage("Sent to ");
        assertThat(printer.printed).hasSize(pages());
    }
}
