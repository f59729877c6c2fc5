package thrumwright.editor.look;

import java.awt.Component;
import java.awt.EventQueue;
import java.io.File;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileFilter;
import javax.swing.filechooser.FileNameExtensionFilter;
import thrumwright.editor.look.FileAsked.Chosen;
import thrumwright.editor.look.FileAsked.Kind;

/** Files chosen in a dialog of our own. */
final class OwnFiles implements FileAsked.Dialog {
    private final JFileChooser chooser;
    private final Map<FileFilter, Kind> filters = new LinkedHashMap<>();
    private final FileAsked asked;
    private String suggestion = "";

    OwnFiles(FileAsked asked) {
        this.asked = asked;
        this.chooser = new JFileChooser(asked.folder().map(Path::toFile).orElse(null));
        chooser.setName(asked.name());
        chooser.setDialogTitle(asked.title());
        chooser.setAcceptAllFileFilterUsed(asked.kinds().size() == 1);
        for (Kind kind : asked.kinds()) {
            FileFilter filter = new FileNameExtensionFilter(kind.name(), kind.inArray());
            filters.put(filter, kind);
            chooser.addChoosableFileFilter(filter);
            if (kind.equals(asked.usual())) {
                chooser.setFileFilter(filter);
            }
        }
    }

    @Override
    public Optional<Chosen> open(Component over) {
        return chosen(chooser.showOpenDialog(over));
    }

    @Override
    public Optional<Chosen> save(Component over, String name) {
        if (suggestion.isEmpty()) {
            suggestion = name;
            suggest();
            if (filters.size() > 1) {
                keepName();
            }
        }
        return chosen(chooser.showSaveDialog(over));
    }

    /** The chooser forgets the name whenever another kind of file is chosen. */
    private void keepName() {
        chooser.addPropertyChangeListener(JFileChooser.SELECTED_FILE_CHANGED_PROPERTY, event -> {
            if (event.getNewValue() instanceof File file && !file.isDirectory()) {
                suggestion = withoutEnding(file.getName());
            }
        });
        chooser.addPropertyChangeListener(
                JFileChooser.FILE_FILTER_CHANGED_PROPERTY, event -> EventQueue.invokeLater(this::suggest));
    }

    private String withoutEnding(String name) {
        return asked.kinds().stream()
                .flatMap(kind -> kind.endings().stream())
                .filter(ending -> name.toLowerCase(Locale.ROOT).endsWith("." + ending))
                .findFirst()
                .map(ending -> name.substring(0, name.length() - ending.length() - 1))
                .orElse(name);
    }

    private void suggest() {
        String ending = kind().endings().get(0);
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), suggestion + "." + ending));
    }

    private Kind kind() {
        return filters.getOrDefault(chooser.getFileFilter(), asked.usual());
    }

    private Optional<Chosen> chosen(int answer) {
        return answer == JFileChooser.APPROVE_OPTION
                ? Optional.of(new Chosen(chooser.getSelectedFile().toPath(), kind()))
                : Optional.empty();
    }
}
