package thrumwright.editor.loom;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import thrumwright.editor.text.Commands;

/** What is pressed with a mouse or a finger: one row on, one back, and how the picture moves. */
final class LoomBar {
    /** The least side of what is pressed with a finger or a mouse at arm's length, mm. */
    static final double TARGET = 12;

    private static final double GAP = 2;
    /** Size of the type on it, mm. */
    static final double TYPE = 5;

    private final JPanel panel = new JPanel(new BorderLayout());
    private final JPanel motion = new JPanel();
    private final List<AbstractButton> buttons = new ArrayList<>();
    private final Commands commands;
    private final double pixels;

    /** @param pixels per mm of the screen, more than 0 */
    LoomBar(Commands commands, double pixels) {
        this.commands = commands;
        this.pixels = pixels;
        int gap = (int) Math.round(GAP * pixels);
        motion.setLayout(new FlowLayout(FlowLayout.CENTER, gap, 0));
        for (String id : new String[] {"loom-slower", "loom-move", "loom-crossing", "loom-faster"}) {
            motion.add(button(id, 1));
        }
        panel.setBorder(BorderFactory.createEmptyBorder(gap, gap, gap, gap));
        panel.add(button("loom-back", 2), BorderLayout.WEST);
        panel.add(motion);
        JPanel beside = new JPanel(new FlowLayout(FlowLayout.RIGHT, gap, 0));
        beside.add(button("loom-speak", 1));
        beside.add(button("loom-measure", 1));
        beside.add(button("loom-done", 3));
        panel.add(beside, BorderLayout.EAST);
    }

    private AbstractButton button(String id, int wide) {
        AbstractButton button = button(commands, id, wide, pixels);
        buttons.add(button);
        return button;
    }

    /** @param wide at least so many times as wide as a finger needs */
    static AbstractButton button(Commands commands, String id, int wide, double pixels) {
        Action action = commands.get(id);
        AbstractButton button =
                action.getValue(Action.SELECTED_KEY) == null ? new JButton(action) : new JToggleButton(action);
        button.setFont(button.getFont().deriveFont((float) (TYPE * pixels)));
        button.setName(id);
        button.setIcon(null);
        button.setFocusable(false);
        return large(button, wide, pixels);
    }

    /** As large as a finger needs it, or larger. */
    static <C extends JComponent> C large(C pressed, int wide, double pixels) {
        int side = (int) Math.ceil(TARGET * pixels);
        Dimension usual = pressed.getPreferredSize();
        pressed.setPreferredSize(new Dimension(Math.max(wide * side, usual.width), Math.max(side, usual.height)));
        return pressed;
    }

    JPanel component() {
        return panel;
    }

    List<AbstractButton> buttons() {
        return List.copyOf(buttons);
    }

    /** Where nothing moves, there is nothing to slow down; where there is no room, keys do it. */
    void showMotion(boolean moves, int width) {
        int beside = buttons.stream()
                .mapToInt(button -> button.getPreferredSize().width)
                .sum();
        motion.setVisible(moves && beside + 9 * GAP * pixels <= width);
    }
}
