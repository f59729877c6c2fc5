package thrumwright.editor.look;

import com.formdev.flatlaf.FlatDarkLaf;

/** White on black, with strong lines; its colours are in {@code HighContrastLaf.properties}. */
public final class HighContrastLaf extends FlatDarkLaf {
    private static final long serialVersionUID = 1L;

    @Override
    public String getName() {
        return "High contrast";
    }
}
