package thrumwright.editor.form;

import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.text.JTextComponent;
import thrumwright.editor.text.Texts;

/** Offers the places that a wording may have, with what stands in each now, and puts the chosen one where the caret is. */
final class PlaceButton extends JButton {
    private static final long serialVersionUID = 1L;

    private final transient Texts texts;
    private final transient Supplier<Map<String, String>> places;
    private final JTextComponent wording;

    /** @param places names, each with what the plan puts there, in the order in which to offer them */
    PlaceButton(Texts texts, Supplier<Map<String, String>> places, JTextComponent wording) {
        super(texts.say("words.put-in"));
        this.texts = texts;
        this.places = places;
        this.wording = wording;
        setName("putInPlace");
        setToolTipText(texts.say("words.put-in.tip"));
        addActionListener(event -> popup().show(this, 0, getHeight()));
    }

    JPopupMenu popup() {
        JPopupMenu popup = new JPopupMenu();
        places.get().forEach((name, value) -> {
            String place = "{" + name + "}";
            JMenuItem item = new JMenuItem(texts.say("words.place", Map.of("place", place, "value", value)));
            item.setName("place." + name);
            item.addActionListener(event -> put(place));
            popup.add(item);
        });
        return popup;
    }

    private void put(String place) {
        wording.replaceSelection(place);
        wording.requestFocusInWindow();
    }
}
