package thrumwright.editor.look;

import com.formdev.flatlaf.FlatSystemProperties;
import com.formdev.flatlaf.ui.FlatNativeLinuxLibrary;
import com.formdev.flatlaf.ui.FlatNativeMacLibrary;
import com.formdev.flatlaf.ui.FlatNativeWindowsLibrary;
import com.formdev.flatlaf.util.SystemFileChooser;
import com.formdev.flatlaf.util.SystemInfo;
import java.awt.Component;
import java.awt.Toolkit;
import java.io.File;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import thrumwright.editor.look.FileAsked.Chosen;
import thrumwright.editor.look.FileAsked.Kind;

/** Files chosen in the system's own dialog, with the places and habits that somebody has there. */
final class SystemFiles implements FileAsked.Dialog {
    private final SystemFileChooser chooser;
    private final Map<SystemFileChooser.FileFilter, Kind> filters = new LinkedHashMap<>();
    private final FileAsked asked;
    private boolean suggested;

    SystemFiles(FileAsked asked) {
        this.asked = asked;
        this.chooser = new SystemFileChooser(asked.folder().map(Path::toFile).orElse(null));
        chooser.setDialogTitle(asked.title());
        chooser.setAcceptAllFileFilterUsed(asked.kinds().size() == 1);
        // we ask ourselves, as we know what else is written and which ending a name is given
        chooser.putPlatformProperty(
                SystemFileChooser.LINUX_OPTIONS_CLEAR, FlatNativeLinuxLibrary.FC_do_overwrite_confirmation);
        chooser.putPlatformProperty(
                SystemFileChooser.WINDOWS_OPTIONS_CLEAR, FlatNativeWindowsLibrary.FOS_OVERWRITEPROMPT);
        for (Kind kind : asked.kinds()) {
            SystemFileChooser.FileFilter filter =
                    new SystemFileChooser.FileNameExtensionFilter(kind.name(), kind.inArray());
            filters.put(filter, kind);
            chooser.addChoosableFileFilter(filter);
            if (kind.equals(asked.usual())) {
                chooser.setFileFilter(filter);
            }
        }
    }

    /** Whether this system has such a dialog that we can reach, and nobody has said that it isn't wanted. */
    static boolean offered() {
        if (!Boolean.parseBoolean(System.getProperty(FlatSystemProperties.USE_SYSTEM_FILE_CHOOSER, "true"))) {
            return false;
        }
        if (SystemInfo.isWindows_10_orLater) {
            return FlatNativeWindowsLibrary.isLoaded();
        }
        if (SystemInfo.isMacOS) {
            return FlatNativeMacLibrary.isLoaded();
        }
        boolean onX = Toolkit.getDefaultToolkit().getClass().getName().endsWith(".XToolkit");
        return onX && FlatNativeLinuxLibrary.isLoaded() && FlatNativeLinuxLibrary.isGtk3Available();
    }

    @Override
    public Optional<Chosen> open(Component over) {
        return chosen(chooser.showOpenDialog(over));
    }

    @Override
    public Optional<Chosen> save(Component over, String name) {
        if (!suggested) {
            suggested = true;
            chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), name + ending()));
        }
        return chosen(chooser.showSaveDialog(over));
    }

    /** Where there is a choice of kinds, none: what is chosen then counts, as the dialog doesn't change the name. */
    private String ending() {
        return asked.kinds().size() > 1 ? "" : "." + asked.usual().endings().get(0);
    }

    private Optional<Chosen> chosen(int answer) {
        return answer == SystemFileChooser.APPROVE_OPTION
                ? Optional.of(new Chosen(
                        chooser.getSelectedFile().toPath(),
                        filters.getOrDefault(chooser.getFileFilter(), asked.usual())))
                : Optional.empty();
    }
}
