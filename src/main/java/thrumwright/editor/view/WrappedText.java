package thrumwright.editor.view;

import javax.swing.SizeRequirements;
import javax.swing.text.AbstractDocument;
import javax.swing.text.Element;
import javax.swing.text.ParagraphView;
import javax.swing.text.StyledEditorKit;
import javax.swing.text.View;
import javax.swing.text.ViewFactory;

/**
 * Styled text that is always as wide as the window and asks for no width of its own. To find how narrow it could be, a
 * paragraph would look at each word that it could be broken at: about half of all the time that a long text takes.
 */
final class WrappedText extends StyledEditorKit {
    private static final long serialVersionUID = 1L;

    @Override
    public ViewFactory getViewFactory() {
        ViewFactory usual = super.getViewFactory();
        return element -> AbstractDocument.ParagraphElementName.equals(element.getName())
                ? new Paragraph(element)
                : usual.create(element);
    }

    private static final class Paragraph extends ParagraphView {
        Paragraph(Element element) {
            super(element);
        }

        @Override
        protected SizeRequirements calculateMinorAxisRequirements(int axis, SizeRequirements before) {
            SizeRequirements any = before == null ? new SizeRequirements() : before;
            any.minimum = 0;
            any.preferred = 0;
            any.maximum = Integer.MAX_VALUE;
            any.alignment = axis == View.X_AXIS ? 0.5f : 0;
            return any;
        }
    }
}
