package thrumwright.editor.form;

import java.util.function.BiFunction;
import java.util.function.Predicate;
import javax.swing.JCheckBox;

/** A field that is so or not. */
final class FlagField<T> implements Field {
    private final Desk desk;
    private final Subject<T> subject;
    private final Predicate<T> get;
    private final JCheckBox component;

    FlagField(Desk desk, Subject<T> subject, Predicate<T> get, BiFunction<T, Boolean, T> set, JCheckBox component) {
        this.desk = desk;
        this.subject = subject;
        this.get = get;
        this.component = component;
        refresh();
        component.addActionListener(event ->
                desk.change(subject, component.getText(), part -> set.apply(part, component.isSelected()), null));
    }

    @Override
    public void refresh() {
        component.setSelected(
                subject.in().apply(desk.session().shown()).filter(get).isPresent());
    }
}
