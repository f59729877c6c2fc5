package thrumwright.editor.look;

import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** A picture that is told in words to those who hear it: as its name or its description. */
public abstract class HeardPicture extends JComponent {
    private static final long serialVersionUID = 1L;

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Heard();
        }
        return accessibleContext;
    }

    private final class Heard extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }
}
