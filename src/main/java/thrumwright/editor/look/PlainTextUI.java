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
 * that question passes through. On the same way the parts of windows that have no text get a name for those who hear them.
 */
public final class PlainTextUI extends ComponentUI {
    private static final String ENDING = "UI";
    private static final String REAL = "Thrumwright.real.";
    private static final String NAME = "Thrumwright.name.";

    /**
     * What a part of windows is called by those who hear it, if nobody calls it otherwise.
     *
     * @param ui as the look calls its kind, such as {@code ScrollBarUI}
     */
    public static void call(String ui, String name) {
        UIManager.put(NAME + ui, name);
    }

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
        if (UIManager.get(NAME + component.getUIClassID()) instanceof String name) {
            component.getAccessibleContext().setAccessibleName(name);
        }
        UIDefaults look = UIManager.getLookAndFeelDefaults();
        Class<? extends ComponentUI> real = look.getUIClass(REAL + component.getUIClassID());
        try {
            return (ComponentUI) real.getMethod("createUI", JComponent.class).invoke(null, component);
        } catch (IllegalAccessException | InvocationTargetException | NoSuchMethodException e) {
            throw new IllegalStateException("the look can't draw a " + component.getUIClassID(), e);
        }
    }
}
