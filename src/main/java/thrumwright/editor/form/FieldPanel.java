package thrumwright.editor.form;

/** Fields about the piece, one under the other. */
final class FieldPanel extends FieldColumn {
    private static final long serialVersionUID = 1L;

    private final transient Desk desk;

    FieldPanel(Desk desk) {
        this(desk, "");
    }

    /** @param where before the names of its fields, where others have the same */
    FieldPanel(Desk desk, String where) {
        super(desk.texts(), () -> desk.session().piece().habits().units(), "field." + where);
        this.desk = desk;
    }

    /** What the fields of one subject are added to. */
    <T> Section<T> about(Subject<T> subject) {
        return about(desk.holder(subject));
    }
}
