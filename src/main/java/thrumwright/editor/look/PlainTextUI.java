package thrumwright.editor.look;

import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.UIDefaults;
import javax.swing.UIManager;
import javax.swing.plaf.ComponentUI;

/**
 * Lets no component take a text for HTML: a name out of somebody's file that looks like it would else be shown as something
 * else, and could fetch pictures from the network. Every component asks the look who draws it before it has any text; here
 * that question passes through.
 */
public final class PlainTextUI extends ComponentUI {
    private static final String ENDING = "UI";
    private static final String REAL = "Thrumwright.real.";

    /** Puts itself before all that draws components in the look as it is now. */
    static void install() {
        UIDefaults look = UIManager.getLookAndFeelDefaults();
        for (Map.Entry<Object, Object> each : List.copyOf(look.entrySet())) {
            if (each.getKey() instanceof String key && key.endsWith(ENDING) && each.getValue() instanceof String real) {
                look.put(REAL + key, real);
                look.put(key, PlainTextUI.class.getName());
            }
        }
    }

    /** As the look asks for it, by name. */
    public static ComponentUI createUI(JComponent component) {
        component.putClientProperty("html.disable", Boolean.TRUE);
        UIDefaults look = UIManager.getLookAndFeelDefaults();
        Class<? extends ComponentUI> real = look.getUIClass(REAL + component.getUIClassID());
        try {
            return (ComponentUI) real.getMethod("createUI", JComponent.class).invoke(null, component);
        } catch (IllegalAccessException | InvocationTargetException | NoSuchMethodException e) {
            throw new IllegalStateException("the look can't draw a " + component.getUIClassID(), e);
        }
    }
}
