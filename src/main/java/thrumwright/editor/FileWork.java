package thrumwright.editor;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.filechooser.FileNameExtensionFilter;
import net.miginfocom.swing.MigLayout;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.editor.edit.Session;
import thrumwright.measure.Phrases;
import thrumwright.output.Paper;
import thrumwright.output.PdfFile;
import thrumwright.output.SheetLayout;
import thrumwright.output.SheetPages;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Piece;
import thrumwright.piece.Structure;
import thrumwright.plan.Plan;
import thrumwright.store.FileProblem;
import thrumwright.store.Structures;
import thrumwright.store.UserFolder;

/** All that a window does with files. What goes wrong is told in a plain sentence. */
final class FileWork {
    private final JFrame frame;
    private final Session session;
    private final Documents documents;
    private final Fonts fonts;
    private final Phrases phrases;
    private final BiConsumer<Piece, Documents> opener;

    /** @param opener opens another window */
    FileWork(
            JFrame frame,
            Session session,
            Documents documents,
            Fonts fonts,
            Phrases phrases,
            BiConsumer<Piece, Documents> opener) {
        this.frame = frame;
        this.session = session;
        this.documents = documents;
        this.fonts = fonts;
        this.phrases = phrases;
        this.opener = opener;
    }

    /** A new piece from a structure that the weaver chooses, in a window of its own. */
    void begin() {
        Structures structures = Structures.with(UserFolder.structures());
        JList<Structure> list = new JList<>(structures.all().toArray(Structure[]::new));
        list.setName("structures");
        list.setSelectedIndex(0);
        list.setCellRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getListCellRendererComponent(
                    JList<?> all, Object value, int index, boolean selected, boolean focused) {
                return super.getListCellRendererComponent(all, ((Structure) value).name(), index, selected, focused);
            }
        });
        JLabel about = new JLabel();
        Runnable tell = () -> about.setText(
                "<html><body style='width:260px'><p>" + list.getSelectedValue().use() + "</p><p><br>"
                        + list.getSelectedValue().needs() + "</p>");
        list.addListSelectionListener(event -> tell.run());
        tell.run();
        JPanel panel = new JPanel(new MigLayout("insets 0", "[]16[280!, top]", "[top]"));
        panel.add(new JScrollPane(list), "grow, h 240!");
        panel.add(about, "grow");
        int answer = JOptionPane.showConfirmDialog(
                frame, panel, phrases.say("begin.title"), JOptionPane.OK_CANCEL_OPTION, JOptionPane.PLAIN_MESSAGE);
        if (answer == JOptionPane.OK_OPTION && list.getSelectedValue() != null) {
            Piece piece = Beginnings.with(
                    list.getSelectedValue(), session.piece().habits().units());
            opener.accept(piece.withTitle(list.getSelectedValue().name()), new Documents());
        }
    }

    /** Opens a piece in a window of its own. */
    void open() {
        JFileChooser chooser = chooser();
        if (chooser.showOpenDialog(frame) == JFileChooser.APPROVE_OPTION) {
            open(chooser.getSelectedFile().toPath());
        }
    }

    private void open(Path file) {
        try {
            Documents opened = new Documents();
            opener.accept(opened.open(file), opened);
        } catch (FileProblem problem) {
            tell(problem.getMessage());
        }
    }

    private JFileChooser chooser() {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter(phrases.say("files.pieces"), "json"));
        documents.file().ifPresent(file -> chooser.setSelectedFile(file.toFile()));
        return chooser;
    }

    /** Saves where the piece was read from, or asks. */
    boolean save() {
        takeOver();
        if (documents.file().isEmpty()) {
            return saveAs();
        }
        if (documents.changedOutside() && !agreed("save.changed")) {
            return false;
        }
        return write(documents.file().get());
    }

    boolean saveAs() {
        takeOver();
        JFileChooser chooser = chooser();
        if (chooser.showSaveDialog(frame) != JFileChooser.APPROVE_OPTION) {
            return false;
        }
        Path file = withEnding(chooser.getSelectedFile().toPath(), ".json");
        return (!Files.exists(file) || agreed("save.over")) && write(file);
    }

    private static Path withEnding(Path file, String ending) {
        String name = file.getFileName().toString();
        return name.toLowerCase(Locale.ROOT).endsWith(ending) ? file : file.resolveSibling(name + ending);
    }

    private boolean write(Path file) {
        try {
            Piece piece = session.piece();
            documents.save(piece, file);
            session.saved(piece);
            return true;
        } catch (FileProblem problem) {
            tell(problem.getMessage());
            return false;
        }
    }

    /** What is typed in a field is taken over before anything is done with the piece. */
    private static void takeOver() {
        Component focused =
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (focused instanceof EntryField field) {
            field.take();
        }
    }

    /** Writes the step sheet as a PDF. */
    void exportSheet() {
        takeOver();
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter(phrases.say("files.pdf"), "pdf"));
        JComboBox<Paper> paper = new JComboBox<>(Paper.values());
        paper.setName("paper");
        JPanel side = new JPanel(new MigLayout("insets 8, wrap 1"));
        side.add(new JLabel(phrases.say("sheet.paper")));
        side.add(paper);
        chooser.setAccessory(side);
        if (chooser.showSaveDialog(frame) != JFileChooser.APPROVE_OPTION) {
            return;
        }
        Path file = withEnding(chooser.getSelectedFile().toPath(), ".pdf");
        if (!Files.exists(file) || agreed("save.over")) {
            export(file, (Paper) paper.getSelectedItem());
        }
    }

    private void export(Path file, Paper paper) {
        Plan plan = session.plan();
        new SheetExport(
                        () -> pdf(plan, paper),
                        file,
                        written -> tellDone(phrases.say("sheet.written", Map.of("file", written))),
                        this::tell)
                .execute();
    }

    private byte[] pdf(Plan plan, Paper paper) throws IOException {
        SheetPages pages = SheetLayout.of(plan, paper, fonts, Palette.onPaper(), SheetLayout.USUAL_DISTANCE, Locale.UK);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PdfFile.write(pages, fonts, bytes);
        return bytes.toByteArray();
    }

    /** Whether the window may close: nothing is unsaved, or the weaver saved it or doesn't want it. */
    boolean mayClose() {
        takeOver();
        if (!session.isDirty()) {
            return true;
        }
        List<String> answers =
                List.of(phrases.say("close.save"), phrases.say("close.discard"), phrases.say("close.stay"));
        int answer = JOptionPane.showOptionDialog(
                frame,
                phrases.say("close.question"),
                phrases.say("close.title"),
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                answers.toArray(),
                answers.get(0));
        return answer == 0 ? save() : answer == 1;
    }

    private boolean agreed(String key) {
        return JOptionPane.showConfirmDialog(
                        frame, phrases.say(key), phrases.say("app.name"), JOptionPane.OK_CANCEL_OPTION)
                == JOptionPane.OK_OPTION;
    }

    private void tell(String sentence) {
        JOptionPane.showMessageDialog(frame, wrapped(sentence), phrases.say("app.name"), JOptionPane.WARNING_MESSAGE);
    }

    private void tellDone(String sentence) {
        JOptionPane.showMessageDialog(
                frame, wrapped(sentence), phrases.say("app.name"), JOptionPane.INFORMATION_MESSAGE);
    }

    private static String wrapped(String sentence) {
        return "<html><body style='width:320px'>"
                + sentence.replace("&", "&amp;").replace("<", "&lt;");
    }
}
