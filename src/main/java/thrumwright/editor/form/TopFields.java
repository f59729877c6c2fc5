package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import net.miginfocom.swing.MigLayout;
import thrumwright.block.Block;
import thrumwright.piece.Piece;
import thrumwright.piece.Top;

/** How the top comes about: it follows the start, without some blocks, or stands on its own. */
final class TopFields {
    private final Desk desk;
    private final JRadioButton follows;
    private final JRadioButton own;
    private final JPanel repeated = new JPanel(new MigLayout("insets 0 20 0 0, wrap 1, gapy 2"));
    private List<Block> shownBlocks = List.of();
    private final List<JCheckBox> boxes = new ArrayList<>();

    TopFields(Desk desk) {
        this.desk = desk;
        follows = new JRadioButton(desk.texts().say("field.top.follows"));
        follows.setName("field.top.follows");
        follows.setToolTipText(desk.texts().say("field.top.follows.tip"));
        own = new JRadioButton(desk.texts().say("field.top.own"));
        own.setName("field.top.own");
        own.setToolTipText(desk.texts().say("field.top.own.tip"));
        ButtonGroup group = new ButtonGroup();
        group.add(follows);
        group.add(own);
        follows.addActionListener(event ->
                desk.session().edit(desk.edits().topFollows(desk.session().piece())));
        own.addActionListener(event -> desk.session().edit(desk.edits().topOnItsOwn()));
    }

    void addTo(FieldPanel panel) {
        panel.wide(follows);
        panel.wide(repeated);
        panel.wide(own);
        panel.follow(this::refresh);
        refresh();
    }

    private void refresh() {
        Piece piece = desk.session().shown();
        follows.setSelected(piece.topFollows());
        own.setSelected(!piece.topFollows());
        repeated.setVisible(piece.topFollows());
        if (!piece.start().blocks().equals(shownBlocks)) {
            rebuild(piece.start().blocks());
        }
        if (piece.top() instanceof Top.FollowsStart top) {
            check(top);
        }
    }

    private void check(Top.FollowsStart top) {
        for (int i = 0; i < boxes.size(); i++) {
            boxes.get(i).setSelected(!top.leftOut().contains(shownBlocks.get(i).id()));
        }
    }

    private void rebuild(List<Block> blocks) {
        shownBlocks = blocks;
        repeated.removeAll();
        boxes.clear();
        for (Block block : blocks) {
            String name = desk.texts().words().name(block);
            JCheckBox box = new JCheckBox(desk.texts().say("field.top.with", Map.of("block", name)));
            box.setName("field.top.with." + block.id());
            box.setToolTipText(desk.texts().say("field.top.with.tip"));
            box.addActionListener(event ->
                    desk.session().edit(desk.edits().leaveOut(desk.session().piece(), block.id(), !box.isSelected())));
            boxes.add(box);
            repeated.add(box);
        }
        repeated.revalidate();
        repeated.repaint();
    }
}
