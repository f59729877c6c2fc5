package thrumwright.editor.files;

import java.awt.Component;
import java.awt.Container;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.ContainerAdapter;
import java.awt.event.ContainerEvent;
import java.awt.event.ContainerListener;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JList;
import javax.swing.JRootPane;
import javax.swing.JTable;
import javax.swing.TransferHandler;
import javax.swing.text.JTextComponent;

/** Opens pieces that are dropped on a window. */
public final class FileDrop extends TransferHandler {
    private static final long serialVersionUID = 1L;

    private final transient Consumer<Path> open;

    /** Much of the window is only made when it is first seen. */
    private final transient ContainerListener later = new ContainerAdapter() {
        @Override
        public void componentAdded(ContainerEvent event) {
            letThrough(event.getChild());
        }
    };

    public FileDrop(Consumer<Path> open) {
        this.open = open;
    }

    /** Lists and texts that take nothing themselves let it through. To be called again when the look has changed. */
    public void on(JRootPane root) {
        root.setTransferHandler(this);
        letThrough(root);
    }

    private void letThrough(Component component) {
        boolean readOnly = component instanceof JTextComponent text && !text.isEditable();
        if (readOnly || component instanceof JList || component instanceof JTable) {
            component.setDropTarget(null);
        }
        if (component instanceof Container container) {
            container.removeContainerListener(later);
            container.addContainerListener(later);
            for (Component inner : container.getComponents()) {
                letThrough(inner);
            }
        }
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDrop() && support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        if (!canImport(support)) {
            return false;
        }
        try {
            Object data = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            for (Object each : (List<?>) data) {
                open.accept(((File) each).toPath());
            }
            return true;
        } catch (UnsupportedFlavorException | IOException e) {
            return false;
        }
    }
}
