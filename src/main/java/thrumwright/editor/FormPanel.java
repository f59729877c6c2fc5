package thrumwright.editor;

import java.awt.event.ItemEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import thrumwright.measure.Phrases;

/**
 * Rows of a label and a field. Each field knows how to read its value from the piece and how to take over what is
 * entered, so that the whole form can be brought up to date at any time.
 */
final class FormPanel extends JPanel implements javax.swing.Scrollable {
    private static final long serialVersionUID = 1L;

    private final transient Phrases phrases;
    private final transient List<Runnable> refreshers = new ArrayList<>();
    private boolean refreshing;

    FormPanel(Phrases phrases) {
        super(new MigLayout("fillx, wrap 2, insets 10, hidemode 3", "[][60::, grow, fill]", ""));
        this.phrases = phrases;
    }

    /** A heading over the rows that follow. */
    void heading(String key) {
        JLabel heading = new JLabel(phrases.say(key));
        heading.putClientProperty("FlatLaf.styleClass", "h4");
        add(heading, "span 2, gaptop " + (getComponentCount() == 0 ? 0 : 12));
    }

    /** A row of plain text over the whole width, brought up to date. */
    JLabel text(String name, Supplier<String> value) {
        JLabel label = new JLabel();
        label.setName(name);
        refreshers.add(() -> label.setText(Html.lines(250, value.get())));
        add(label, "span 2, growx");
        return label;
    }

    /**
     * A row with a text field.
     *
     * @param key of the label in the bundle, and name of the field
     */
    EntryField field(String key, Supplier<String> value, Consumer<String> taker) {
        EntryField field = new EntryField(key, taker);
        label(key, field);
        add(field);
        add(field.reason(), "skip, growx");
        refreshers.add(() -> field.show(value.get()));
        return field;
    }

    /** A row with a choice between named values. */
    <T> void choice(String key, Supplier<Map<T, String>> values, Supplier<T> value, Consumer<T> taker) {
        JComboBox<Option<T>> box = new JComboBox<>();
        box.setName(key);
        label(key, box);
        add(box, "wmin 60");
        box.addItemListener(event -> {
            if (event.getStateChange() == ItemEvent.SELECTED && !refreshing) {
                @SuppressWarnings("unchecked")
                Option<T> chosen = (Option<T>) event.getItem();
                taker.accept(chosen.value());
            }
        });
        refreshers.add(() -> {
            List<Option<T>> options = new ArrayList<>();
            values.get().forEach((each, name) -> options.add(new Option<>(each, name)));
            DefaultComboBoxModel<Option<T>> model = new DefaultComboBoxModel<>();
            model.addAll(options);
            options.stream()
                    .filter(option -> Objects.equals(option.value(), value.get()))
                    .findFirst()
                    .ifPresent(model::setSelectedItem);
            box.setModel(model);
        });
    }

    /** A value of a choice with its name. */
    record Option<T>(T value, String name) {
        @Override
        public String toString() {
            return name;
        }
    }

    /** A row with a box to tick. */
    void tick(String key, Supplier<Boolean> value, Consumer<Boolean> taker) {
        JCheckBox box = new JCheckBox(phrases.say(key));
        box.setName(key);
        box.addActionListener(event -> taker.accept(box.isSelected()));
        add(box, "skip");
        refreshers.add(() -> box.setSelected(value.get()));
    }

    private void label(String key, JComponent component) {
        JLabel label = new JLabel(phrases.say(key));
        label.setLabelFor(component);
        String tip = key + ".tip";
        if (phrases.has(tip)) {
            label.setToolTipText(phrases.say(tip));
            component.setToolTipText(phrases.say(tip));
        }
        add(label);
    }

    /** Something else over the whole width. */
    void wide(JComponent component) {
        add(component, "span 2, growx");
    }

    /** Shows all values as they now are. */
    void refresh() {
        refreshing = true;
        try {
            refreshers.forEach(Runnable::run);
        } finally {
            refreshing = false;
        }
    }

    /** Named values of an enum, in its order. */
    static <E extends Enum<E>> Map<E, String> named(Class<E> type, java.util.function.Function<E, String> name) {
        Map<E, String> named = new LinkedHashMap<>();
        for (E value : type.getEnumConstants()) {
            named.put(value, name.apply(value));
        }
        return named;
    }

    @Override
    public java.awt.Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(java.awt.Rectangle visible, int orientation, int direction) {
        return 16;
    }

    @Override
    public int getScrollableBlockIncrement(java.awt.Rectangle visible, int orientation, int direction) {
        return visible.height - 16;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
