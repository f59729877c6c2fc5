package thrumwright.editor.files;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileFilter;
import javax.swing.filechooser.FileNameExtensionFilter;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Texts;
import thrumwright.output.SheetForm;
import thrumwright.store.FileSort;

/** Asks in dialogs. */
public final class Dialogs implements Questions {
    private final Component parent;
    private final Texts texts;
    private final Workplace room;
    private Path folder;

    /** @param folder where to begin looking for files */
    public Dialogs(Component parent, Workplace room, Path folder) {
        this.parent = parent;
        this.room = room;
        this.texts = room.texts();
        this.folder = folder;
    }

    private JFileChooser chooser(String ending) {
        JFileChooser chooser = new JFileChooser(folder.toFile());
        chooser.setName("files");
        String[] kinds = alike(ending).stream().map(each -> each.substring(1)).toArray(String[]::new);
        chooser.setFileFilter(new FileNameExtensionFilter(texts.say("files." + kind(ending)), kinds));
        return chooser;
    }

    private static String kind(String ending) {
        return FileSort.isOurs(ending) ? "own" : ending.substring(1);
    }

    /** With which a name is whole: of our own files with any that we know. */
    private static List<String> alike(String ending) {
        return FileSort.isOurs(ending) ? FileSort.endings() : List.of(ending);
    }

    private static Path whole(Path path, String ending) {
        String name = String.valueOf(path.getFileName());
        boolean whole = alike(ending).stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith);
        return whole ? path : path.resolveSibling(name + ending);
    }

    @Override
    public Optional<Path> fileToOpen() {
        JFileChooser chooser = chooser(FileSort.PIECE.ending());
        chooser.setDialogTitle(texts.say("files.open"));
        if (chooser.showOpenDialog(active()) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        return Optional.of(chosen(chooser));
    }

    private Path chosen(JFileChooser chooser) {
        Path path = chooser.getSelectedFile().toPath();
        if (path.getParent() != null) {
            folder = path.getParent();
        }
        return path;
    }

    @Override
    public Optional<Path> fileToSave(String suggestion, String ending, Function<Path, List<Path>> files) {
        JFileChooser chooser = chooser(ending);
        chooser.setDialogTitle(texts.say("files.save." + kind(ending)));
        chooser.setSelectedFile(folder.resolve(suggestion + ending).toFile());
        Component over = active();
        while (chooser.showSaveDialog(over) == JFileChooser.APPROVE_OPTION) {
            Path whole = whole(chosen(chooser), ending);
            if (mayReplace(over, files.apply(whole))) {
                return Optional.of(whole);
            }
        }
        return Optional.empty();
    }

    private boolean mayReplace(Component over, List<Path> files) {
        List<Path> there = files.stream().filter(Files::exists).toList();
        return there.isEmpty() || agreed(over, "replace", there.size() == 1 ? "question" : "several", there);
    }

    @Override
    public Optional<SheetTarget> sheetFile(String suggestion, SheetForm form, int pages) {
        JFileChooser chooser = new JFileChooser(folder.toFile());
        chooser.setName("files");
        chooser.setDialogTitle(texts.say("files.sheet"));
        chooser.setAcceptAllFileFilterUsed(false);
        Map<FileFilter, SheetForm> filters = new LinkedHashMap<>();
        for (SheetForm each : SheetForm.values()) {
            filters.put(
                    new FileNameExtensionFilter(
                            texts.name("form", each), each.ending().substring(1)),
                    each);
        }
        filters.keySet().forEach(chooser::addChoosableFileFilter);
        filters.forEach((filter, of) -> {
            if (of == form) {
                chooser.setFileFilter(filter);
            }
        });
        String[] name = {suggestion};
        chooser.addPropertyChangeListener(JFileChooser.SELECTED_FILE_CHANGED_PROPERTY, event -> {
            if (event.getNewValue() instanceof File file && !file.isDirectory()) {
                name[0] = withoutEnding(file.getName());
            }
        });
        // the chooser forgets the name whenever another kind of file is chosen
        chooser.addPropertyChangeListener(
                JFileChooser.FILE_FILTER_CHANGED_PROPERTY,
                event -> EventQueue.invokeLater(() -> suggest(chooser, name[0], filters)));
        suggest(chooser, suggestion, filters);
        Component over = active();
        while (chooser.showDialog(over, texts.say("files.sheet.write")) == JFileChooser.APPROVE_OPTION) {
            SheetTarget target = SheetTarget.named(chosen(chooser), filters.get(chooser.getFileFilter()));
            if (mayReplace(over, target.files(pages))) {
                return Optional.of(target);
            }
        }
        return Optional.empty();
    }

    /** The window that the weaver looks at. */
    private Component active() {
        Window active = KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow();
        return active == null ? parent : active;
    }

    private static String withoutEnding(String name) {
        return SheetForm.named(name)
                .map(form -> name.substring(0, name.length() - form.ending().length()))
                .orElse(name);
    }

    private static void suggest(JFileChooser chooser, String name, Map<FileFilter, SheetForm> filters) {
        String ending = filters.get(chooser.getFileFilter()).ending();
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), name + ending));
    }

    @Override
    public boolean overOthersWork(Path file) {
        return agreed(parent, "changed", "question", List.of(file));
    }

    private boolean agreed(Component over, String key, String question, List<Path> files) {
        Object[] answers = {texts.say(key + ".yes"), texts.say(key + ".no")};
        int answer = JOptionPane.showOptionDialog(
                over,
                texts.say(key + "." + question, Map.of("file", files.get(0).getFileName(), "count", files.size())),
                texts.say(key + ".title"),
                JOptionPane.YES_NO_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                answers,
                answers[1]);
        return answer == 0;
    }

    @Override
    public Closing unsaved(String title) {
        Object[] answers = {texts.say("unsaved.save"), texts.say("unsaved.leave"), texts.say("unsaved.stay")};
        int answer = JOptionPane.showOptionDialog(
                parent,
                texts.say("unsaved.question", Map.of("title", title)),
                texts.say("unsaved.title"),
                JOptionPane.YES_NO_CANCEL_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                answers,
                answers[0]);
        return answer == 0 ? Closing.SAVE : answer == 1 ? Closing.LEAVE : Closing.STAY;
    }

    @Override
    public Recovering left(String question, boolean saved) {
        List<Recovering> choices =
                saved ? List.of(Recovering.values()) : List.of(Recovering.UNSAVED, Recovering.LATER, Recovering.FORGET);
        Object[] answers =
                choices.stream().map(choice -> texts.name("recover", choice)).toArray();
        int answer = JOptionPane.showOptionDialog(
                parent,
                question,
                texts.say("recover.title"),
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                answers,
                answers[0]);
        return answer == JOptionPane.CLOSED_OPTION ? Recovering.LATER : choices.get(answer);
    }

    @Override
    public Optional<Welcome> welcome() {
        return new WelcomeDialog(parent, room).ask();
    }

    @Override
    public Optional<Beginning> beginning() {
        return new BeginningDialog(parent, room).ask();
    }
}
