package thrumwright.editor.form;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Column;
import thrumwright.editor.look.Prose;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Length;
import thrumwright.measure.Shown;
import thrumwright.measure.UnitSystem;
import thrumwright.plan.words.Advice;

/** Fields one under the other, with their labels beside them and, where it is needed, a reason under them. */
class FieldColumn extends Column {
    private static final long serialVersionUID = 1L;

    /** The history has room for so many letters of what changed. */
    private static final int MOST_TOLD = 40;

    private final transient Texts texts;
    private final transient Supplier<UnitSystem> units;
    private final String names;
    private final transient List<Field> fields = new ArrayList<>();

    /** @param units of a length that is typed without one */
    FieldColumn(Texts texts, Supplier<UnitSystem> units) {
        this(texts, units, "field.");
    }

    /** @param names what the names of its fields begin with */
    FieldColumn(Texts texts, Supplier<UnitSystem> units, String names) {
        super(new MigLayout(
                "insets 10 12 12 12, wrap 2, hidemode 3, fillx", "[70:pref:]8[grow, fill, 90:100:]", "[]6[]"));
        this.texts = texts;
        this.units = units;
        this.names = names;
    }

    /** What the fields about one thing are added to. */
    <T> Section<T> about(Holder<T> holder) {
        return new Section<>(holder);
    }

    void heading(String key) {
        JLabel heading = new JLabel(texts.say(key));
        // by its class, so that it stays a heading in another look
        heading.putClientProperty(FlatClientProperties.STYLE_CLASS, "h3");
        add(heading, "span 2, gaptop " + (getComponentCount() == 0 ? 0 : 12));
    }

    /** A heading that follows the piece. */
    void heading(Supplier<String> text) {
        Prose heading = Prose.heading(text.get());
        heading.setName("heading");
        addFollowing(heading, text);
    }

    /** A sentence that follows the piece; nothing where it is empty. */
    void prose(Supplier<String> sentence) {
        Prose prose = new Prose(sentence.get()).in("Thrumwright.quiet");
        addFollowing(prose, sentence);
    }

    /** What is recommended, a sentence a line; where it comes from is shown when somebody asks. */
    void advice(Supplier<List<Advice>> all) {
        prose(() -> lines(all.get(), Advice::sentence));
        JToggleButton ask = new JToggleButton(texts.say("advice.sources"));
        ask.setName("sources");
        ask.putClientProperty("JButton.buttonType", "toolBarButton");
        ask.setToolTipText(texts.say("advice.sources.tip"));
        Prose sources = new Prose("").in("Thrumwright.quiet");
        Field follow = () -> {
            sources.setText(lines(all.get(), Advice::source));
            ask.setVisible(!sources.getText().isEmpty());
            sources.setVisible(ask.isVisible() && ask.isSelected());
        };
        ask.addActionListener(event -> follow.refresh());
        add(ask, "span 2, left");
        add(sources, "span 2, growx, wmin 40");
        fields.add(follow);
        follow.refresh();
    }

    private static String lines(List<Advice> all, Function<Advice, String> part) {
        return all.stream().map(part).distinct().collect(Collectors.joining("\n"));
    }

    private void addFollowing(Prose prose, Supplier<String> sentence) {
        prose.setVisible(!prose.getText().isEmpty());
        add(prose, "span 2, growx, wmin 40");
        fields.add(() -> {
            String text = sentence.get();
            if (!text.equals(prose.getText())) {
                prose.setText(text);
                prose.setVisible(!text.isEmpty());
            }
        });
    }

    /** What is added so is seen only while that is so. */
    void shownWhile(BooleanSupplier seen, Runnable add) {
        int before = getComponentCount();
        add.run();
        List<Component> added = List.of(getComponents()).subList(before, getComponentCount()).stream()
                .filter(component -> !(component instanceof Prose))
                .toList();
        Field follow = () -> added.forEach(component -> component.setVisible(seen.getAsBoolean()));
        follow.refresh();
        fields.add(follow);
    }

    void wide(JComponent component) {
        add(component, "span 2, growx");
    }

    /** Under the field before, at its right edge, as wide as it need be. */
    void underField(JComponent component) {
        add(component, "span 2, right");
    }

    /** Whatever else follows the piece. */
    void follow(Field field) {
        fields.add(field);
    }

    void refresh() {
        fields.forEach(Field::refresh);
    }

    void takeOver() {
        fields.forEach(Field::takeOver);
    }

    /** Its tip stands beside the form. It is as wide for one text as for another. */
    private static final class LineField extends JTextField {
        private static final long serialVersionUID = 1L;
        private boolean told;

        LineField() {
            super(8);
        }

        @Override
        public void setText(String text) {
            told = true;
            super.setText(text);
            told = false;
        }

        /** Another text moves nothing that stands round the field. */
        @Override
        public void revalidate() {
            if (!told) {
                super.revalidate();
            }
        }

        @Override
        public Point getToolTipLocation(MouseEvent event) {
            return BesideTip.of(this, event);
        }
    }

    /** As {@link LineField}. */
    private static final class FieldLabel extends JLabel {
        private static final long serialVersionUID = 1L;

        FieldLabel(String text) {
            super(text);
        }

        @Override
        public Point getToolTipLocation(MouseEvent event) {
            return BesideTip.of(this, event);
        }
    }

    /** Adds fields about one thing. */
    final class Section<T> {
        private final Holder<T> holder;
        private final String number;

        private Section(Holder<T> holder) {
            this(holder, "");
        }

        private Section(Holder<T> holder, String number) {
            this.holder = holder;
            this.number = number;
        }

        /** The same for fields of which the form has several alike. */
        Section<T> numbered(int n) {
            return new Section<>(holder, "." + n);
        }

        JTextField text(String key, Function<T, String> get, BiFunction<T, String, T> set) {
            JTextField field = new LineField();
            typed(key, field, field, get, set);
            return field;
        }

        /** As {@link #text}, for numbers: with the decimal sign that is usual here, whichever was typed. */
        JTextField measure(String key, Function<T, String> get, BiFunction<T, String, T> set) {
            return text(key, get.andThen(Shown::here), set);
        }

        /** A whole number. */
        Section<T> whole(String key, Function<T, Integer> get, BiFunction<T, Integer, T> set) {
            text(key, get.andThen(String::valueOf), (part, typed) -> set.apply(part, new Typing(texts).whole(typed)));
            return this;
        }

        Section<T> percent(String key, Function<T, Double> get, BiFunction<T, Double, T> set) {
            measure(
                    key,
                    get.andThen(Typing::percent),
                    (part, typed) -> set.apply(part, new Typing(texts).percent(typed)));
            return this;
        }

        Section<T> length(String key, Function<T, Length> get, BiFunction<T, Length, T> set) {
            measure(
                    key,
                    get.andThen(Length::text),
                    (part, typed) -> set.apply(part, Typing.length(typed, units.get())));
            return this;
        }

        /** A length that may be missing; the field is empty then. */
        JTextField lengthOrNone(String key, Function<T, Optional<Length>> get, BiFunction<T, Optional<Length>, T> set) {
            return measure(
                    key,
                    part -> get.apply(part).map(Length::text).orElse(""),
                    (part, typed) -> set.apply(part, Typing.lengthOrNone(typed, units.get())));
        }

        JTextArea lines(String key, Function<T, String> get, BiFunction<T, String, T> set) {
            JTextArea area = new JTextArea(3, 8);
            area.setLineWrap(true);
            area.setWrapStyleWord(true);
            area.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
            javax.swing.JScrollPane scroll = new javax.swing.JScrollPane(area);
            typed(key, area, scroll, get, set);
            return area;
        }

        private void typed(
                String key,
                JTextComponent field,
                JComponent shown,
                Function<T, String> get,
                BiFunction<T, String, T> set) {
            String label = labelled(key, field, shown);
            Prose reason = new Prose("").in("Thrumwright.reason");
            reason.setName(field.getName() + ".reason");
            add(reason, "skip 1, growx, wmin 40");
            fields.add(new TypedField<>(holder, key, change(label), get, set, field, reason));
            tip(key, field);
        }

        /** What the history calls a change: from what to what, where both are short. */
        private BinaryOperator<String> change(String label) {
            return (was, is) -> was.length() + is.length() > MOST_TOLD || is.contains("\n") || was.contains("\n")
                    ? label
                    : texts.say("field.from-to", Map.of("field", label, "was", told(was), "is", told(is)));
        }

        private String told(String text) {
            return text.isBlank() ? texts.say("field.empty") : text.strip();
        }

        /** Examples in it are in the piece's units. */
        private void tip(String key, JComponent field) {
            String tip = "field." + key + ".tip";
            String inches = tip + ".inches";
            if (!texts.phrases().has(tip)) {
                return;
            }
            field.setToolTipText(texts.phrases().unfilled(tip));
            if (texts.phrases().has(inches)) {
                Field follow = () ->
                        field.setToolTipText(texts.phrases().unfilled(units.get() == UnitSystem.INCHES ? inches : tip));
                follow.refresh();
                fields.add(follow);
            }
        }

        private String labelled(String key, JComponent field, JComponent shown) {
            String text = texts.say("field." + key);
            JLabel label = new FieldLabel(text);
            label.setLabelFor(field);
            tip(key, label);
            field.setName(names + key + number);
            add(label);
            add(shown, "growx");
            return text;
        }

        <V> JComboBox<Choice<V>> choice(
                String key, Supplier<List<Choice<V>>> choices, Function<T, V> get, BiFunction<T, V, T> set) {
            JComboBox<Choice<V>> box = new ChoiceBox<>();
            String label = labelled(key, box, box);
            fields.add(new ChoiceField<>(holder, change(label), choices, get, set, box));
            tip(key, box);
            return box;
        }

        /** A choice of an enum's values, with their names under a key. */
        <V extends Enum<V>> Section<T> oneOf(
                String key, String names, V[] values, Function<T, V> get, BiFunction<T, V, T> set) {
            choice(key, () -> named(names, values), get, set);
            return this;
        }

        /** As {@link #oneOf}, with none of them as a choice too. */
        <V extends Enum<V>> Section<T> oneOrNone(
                String key,
                String names,
                String none,
                V[] values,
                Function<T, Optional<V>> get,
                BiFunction<T, Optional<V>, T> set) {
            choice(
                    key,
                    () -> {
                        List<Choice<Optional<V>>> all = new ArrayList<>();
                        all.add(Choice.of(Optional.empty(), texts.say(none)));
                        named(names, values)
                                .forEach(choice -> all.add(Choice.of(Optional.of(choice.value()), choice.text())));
                        return all;
                    },
                    get,
                    set);
            return this;
        }

        private <V extends Enum<V>> List<Choice<V>> named(String names, V[] values) {
            List<Choice<V>> all = new ArrayList<>();
            for (V value : values) {
                all.add(Choice.of(value, texts.name(names, value)));
            }
            return all;
        }

        Section<T> flag(String key, Predicate<T> get, BiFunction<T, Boolean, T> set) {
            flag(key, texts.say("field." + key), get, set);
            return this;
        }

        /** @return what stands beside the box, which may be told otherwise later */
        Prose flag(String key, String text, Predicate<T> get, BiFunction<T, Boolean, T> set) {
            JCheckBox box = new JCheckBox();
            box.setName(names + key);
            box.getAccessibleContext().setAccessibleName(text);
            JPanel both = new JPanel(new MigLayout("insets 0, fillx", "[]4[grow, fill, 40:60:]"));
            both.setOpaque(false);
            both.add(box, "aligny top");
            Prose words = beside(box, text);
            both.add(words, "wmin 40, aligny center");
            add(both, "span 2, growx, wmin 60");
            fields.add(new FlagField<>(holder, text, get, set, box));
            tip(key, box);
            return words;
        }

        /** What a box is for, in as many lines as that takes; a click on it counts like one on the box. */
        private Prose beside(JCheckBox box, String text) {
            Prose words = new Prose(text);
            words.addMouseListener(new MouseAdapter() {
                @Override
                public void mouseClicked(MouseEvent event) {
                    box.requestFocusInWindow();
                    box.doClick();
                }
            });
            return words;
        }
    }
}
