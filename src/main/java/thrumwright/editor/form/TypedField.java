package thrumwright.editor.form;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import javax.swing.JTextField;
import javax.swing.Timer;
import javax.swing.text.JTextComponent;
import thrumwright.editor.look.Quiet;
import thrumwright.editor.look.Typed;

/**
 * A field to type in. What makes sense is taken over as it is typed, all of it one step of the history; what doesn't
 * stays in the field, with the reason under it.
 */
final class TypedField<T> implements Field {
    /** How long the weaver may pause before the reason is shown, ms. */
    private static final int PATIENCE = 700;

    private final Holder<T> holder;
    private final String key;
    private final BinaryOperator<String> named;
    private final Function<T, String> get;
    private final BiFunction<T, String, T> set;
    private final JTextComponent component;
    private final JTextComponent reason;
    private final Timer patience = new Timer(PATIENCE, event -> showReason());
    private String lastSeen = "";
    /** What stood here before the weaver typed. */
    private String before = "";

    private Optional<String> wrong = Optional.empty();
    private Object run;
    private final Quiet quiet = new Quiet();

    TypedField(
            Holder<T> holder,
            String key,
            BinaryOperator<String> named,
            Function<T, String> get,
            BiFunction<T, String, T> set,
            JTextComponent component,
            JTextComponent reason) {
        this.holder = holder;
        this.key = key;
        this.named = named;
        this.get = get;
        this.set = set;
        this.component = component;
        this.reason = reason;
        patience.setRepeats(false);
        reason.setVisible(false);
        value().ifPresent(text -> {
            lastSeen = text;
            component.setText(holder.kept(key).orElse(text));
            component.setCaretPosition(0);
        });
        holder.kept(key).ifPresent(typed -> attempt(typed).ifPresent(this::mark));
        listen();
    }

    private void listen() {
        Typed.in(component, this::typed);
        component.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                if (component instanceof JTextField && !event.isTemporary()) {
                    component.selectAll();
                }
            }

            @Override
            public void focusLost(FocusEvent event) {
                takeOver();
            }
        });
        component.addMouseListener(new WholeAtFirst());
        if (component instanceof JTextField line) {
            line.addActionListener(event -> {
                takeOver();
                line.selectAll();
            });
        }
        // A key listener, since a tip that is showing would keep the Escape key to itself.
        component.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                if (event.getKeyCode() == KeyEvent.VK_ESCAPE) {
                    giveUp();
                }
            }
        });
    }

    /** The click that brings the keyboard selects all, unless it drags over a part; the next one sets the caret. */
    private final class WholeAtFirst extends MouseAdapter {
        private boolean before;

        @Override
        public void mousePressed(MouseEvent event) {
            before = component.isFocusOwner();
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            boolean nothingChosen = component.getSelectionStart() == component.getSelectionEnd();
            if (!before && nothingChosen && component instanceof JTextField) {
                component.selectAll();
            }
        }
    }

    private Optional<String> value() {
        return holder.value().map(get);
    }

    private void typed() {
        if (quiet.now()) {
            return;
        }
        String text = component.getText();
        if (run == null) {
            run = new Object();
            before = lastSeen;
        }
        Optional<String> why = attempt(text);
        if (why.isEmpty()) {
            clear();
            lastSeen = value().orElse("");
            return;
        }
        takeBack();
        holder.keep(key, text);
        wrong = why;
        patience.restart();
    }

    /** The first letters may have made sense by themselves, like the 7 of “7 furlongs”. */
    private void takeBack() {
        quiet.during(() -> holder.dropRun(run));
        lastSeen = value().orElse("");
    }

    /** @return why the text can't be taken; empty if it was */
    private Optional<String> attempt(String text) {
        try {
            quiet.during(() -> holder.change(named.apply(before, text), part -> set.apply(part, text), run));
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    private void mark(String why) {
        wrong = Optional.of(why);
        showReason();
    }

    private void showReason() {
        wrong.ifPresent(why -> {
            component.putClientProperty(FlatClientProperties.OUTLINE, FlatClientProperties.OUTLINE_ERROR);
            component.getAccessibleContext().setAccessibleDescription(why);
            reason.setText(why);
            reason.setVisible(true);
            reason.revalidate();
        });
    }

    private void clear() {
        patience.stop();
        wrong = Optional.empty();
        holder.forget(key);
        component.putClientProperty(FlatClientProperties.OUTLINE, null);
        component.getAccessibleContext().setAccessibleDescription(component.getToolTipText());
        if (reason.isVisible()) {
            reason.setVisible(false);
            reason.revalidate();
        }
    }

    /** As it was before the weaver typed here. */
    private void giveUp() {
        if (run != null) {
            holder.dropRun(run);
            run = null;
        }
        clear();
        show(value().orElse(""));
    }

    @Override
    public void takeOver() {
        if (run != null) {
            run = null;
            holder.endRun();
        }
        if (wrong.isPresent()) {
            patience.stop();
            showReason();
        } else {
            value().filter(text -> !text.equals(component.getText())).ifPresent(this::show);
        }
    }

    @Override
    public void refresh() {
        if (quiet.now()) {
            return;
        }
        value().filter(text -> !text.equals(lastSeen)).ifPresent(text -> {
            clear();
            show(text);
        });
    }

    private void show(String text) {
        lastSeen = text;
        quiet.during(() -> {
            component.setText(text);
            component.setCaretPosition(0);
        });
    }
}
