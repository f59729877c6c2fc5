package thrumwright.editor.view;

import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** A view that is one picture; its description says the same in words. */
abstract class PictureView extends JComponent {
    private static final long serialVersionUID = 1L;

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new DescribedPicture();
        }
        return accessibleContext;
    }

    private final class DescribedPicture extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }
}
