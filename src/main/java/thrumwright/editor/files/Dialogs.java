package thrumwright.editor.files;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JOptionPane;
import thrumwright.editor.look.FileAsked;
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

    private FileAsked asked(String title, String ending) {
        List<String> endings = new ArrayList<>(List.of(ending));
        endings.addAll(alike(ending));
        FileAsked.Kind kind = new FileAsked.Kind(
                texts.say("files." + kind(ending)),
                endings.stream().distinct().map(each -> each.substring(1)).toList());
        return FileAsked.of("files", title, Optional.of(folder), kind);
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
        return asked(texts.say("files.open"), FileSort.PIECE.ending())
                .dialog()
                .open(active())
                .map(this::chosen);
    }

    private Path chosen(FileAsked.Chosen chosen) {
        Path path = chosen.path();
        if (path.getParent() != null) {
            folder = path.getParent();
        }
        return path;
    }

    @Override
    public Optional<Path> fileToSave(String suggestion, String ending, Function<Path, List<Path>> files) {
        FileAsked.Dialog dialog =
                asked(texts.say("files.save." + kind(ending)), ending).dialog();
        Component over = active();
        while (true) {
            Optional<Path> path =
                    dialog.save(over, suggestion).map(this::chosen).map(named -> whole(named, ending));
            if (path.isEmpty() || mayReplace(over, files.apply(path.get()))) {
                return path;
            }
        }
    }

    private boolean mayReplace(Component over, List<Path> files) {
        List<Path> there = files.stream().filter(Files::exists).toList();
        return there.isEmpty() || agreed(over, "replace", there.size() == 1 ? "question" : "several", there);
    }

    @Override
    public Optional<SheetTarget> sheetFile(String suggestion, SheetForm form, int pages) {
        Map<FileAsked.Kind, SheetForm> kinds = new LinkedHashMap<>();
        for (SheetForm each : SheetForm.values()) {
            kinds.put(FileAsked.Kind.of(texts.name("form", each), each.ending().substring(1)), each);
        }
        FileAsked.Kind usual = List.copyOf(kinds.keySet()).get(form.ordinal());
        FileAsked.Dialog dialog = new FileAsked(
                        "files", texts.say("files.sheet"), Optional.of(folder), List.copyOf(kinds.keySet()), usual)
                .dialog();
        Component over = active();
        while (true) {
            Optional<SheetTarget> target = dialog.save(over, suggestion)
                    .map(named -> SheetTarget.named(chosen(named), kinds.get(named.kind())));
            if (target.isEmpty() || mayReplace(over, target.get().files(pages))) {
                return target;
            }
        }
    }

    /** The window that the weaver looks at. */
    private Component active() {
        Window active = KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow();
        return active == null ? parent : active;
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
