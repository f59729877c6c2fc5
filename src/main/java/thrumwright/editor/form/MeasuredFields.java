package thrumwright.editor.form;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JButton;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.RepairEdits;
import thrumwright.editor.text.Texts;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Shown;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Piece;
import thrumwright.plan.HeightRange;
import thrumwright.plan.StepMeasure;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.words.FindingWords;
import thrumwright.plan.words.RepairWords;

/** The fields of what was measured of a step on the loom, what it means, and a button where there is one right thing to do. */
record MeasuredFields(Desk desk, FieldPanel panel, String step) {
    private static final Set<Code> MEANINGS = EnumSet.of(
            Code.HEIGHT_UNLIKELY,
            Code.NO_ROOM_LEFT,
            Code.HEM_COMES_DEEPER,
            Code.HEM_COMES_SHALLOWER,
            Code.COMES_HIGHER,
            Code.COMES_LOWER,
            Code.WIDTH_DIFFERS,
            Code.YARN_LEFT);

    void add() {
        Texts texts = desk.texts();
        StepMeasure planned = now();
        FieldPanel.Section<MeasuredStep> measured = panel.about(new Subject<>(
                "measured/" + step,
                texts.say("heading.measured"),
                piece -> Optional.of(piece.measures().of(step)),
                (piece, other) -> piece.withMeasures(piece.measures().with(other))));
        if (planned.reach().isPresent()) {
            measured.lengthOrNone("measured.height", MeasuredStep::height, this::withHeight);
        }
        measured.lengthOrNone("measured.width", MeasuredStep::width, MeasuredStep::withWidth);
        if (planned.cut() > 0) {
            measured.lengthOrNone("measured.left", MeasuredStep::left, this::withLeft);
        }
        panel.prose(this::beside);
        panel.prose(this::meaning);
        addButton();
    }

    private Piece piece() {
        return desk.session().shown();
    }

    private StepMeasure now() {
        return StepMeasure.of(desk.session().plan(), step);
    }

    private MeasuredStep withHeight(MeasuredStep part, Optional<Length> height) {
        HeightRange range = HeightRange.of(piece(), step);
        if (height.filter(reached -> !range.holds(reached.mm())).isPresent()) {
            Shown shown = piece().shown();
            throw new BadMeasure(
                    "measured.height",
                    Map.of("above", shown.height(range.above()), "most", shown.height(range.upTo())));
        }
        return part.withHeight(height);
    }

    private MeasuredStep withLeft(MeasuredStep part, Optional<Length> left) {
        double cut = now().cut();
        if (left.filter(rest -> rest.mm() > cut).isPresent()) {
            throw new BadMeasure("measured.left", Map.of("cut", piece().shown().cut(cut)));
        }
        return part.withLeft(left);
    }

    /** Planned and measured beside each other. */
    private String beside() {
        Shown shown = piece().shown();
        return now().reach()
                .map(planned -> {
                    double over = piece().measures().height(step).orElse(planned) - planned;
                    String key =
                            Math.abs(over) < 0.5 ? "measured.planned" : over > 0 ? "measured.over" : "measured.under";
                    return desk.texts()
                            .say(key, Map.of("planned", shown.height(planned), "by", shown.height(Math.abs(over))));
                })
                .orElse("");
    }

    private List<Finding> findings() {
        return desk.session().findings().all().stream()
                .filter(finding -> MEANINGS.contains(finding.code()))
                .filter(this::here)
                .toList();
    }

    private boolean here(Finding finding) {
        return finding.blockId()
                .flatMap(id -> finding.place().map(place -> place.step(id).equals(step)))
                .orElseGet(() -> piece().measures().of(step).height().isPresent());
    }

    private String meaning() {
        FindingWords words = FindingWords.of(piece(), desk.texts().locale());
        return findings().stream().map(words::say).collect(Collectors.joining("\n"));
    }

    private Optional<Edit> repair() {
        RepairEdits repairs =
                new RepairEdits(desk.edits(), new RepairWords(desk.texts().locale()));
        return findings().stream()
                .flatMap(finding -> repairs.of(desk.session().plan(), finding).stream())
                .findFirst();
    }

    private void addButton() {
        JButton button = new JButton();
        button.setName("measured.repair");
        button.addActionListener(event -> {
            desk.takeOver();
            repair().ifPresent(desk.session()::edit);
        });
        panel.add(button, "span 2, growx 0, wmin 0");
        Field follow = () -> {
            Optional<Edit> edit = repair();
            button.setVisible(edit.isPresent());
            String name = edit.map(Edit::name).map(Texts::capitalised).orElse("");
            button.setText(name);
            button.setToolTipText(name.isEmpty() ? null : desk.texts().say("findings.repair", Map.of("repair", name)));
        };
        follow.refresh();
        panel.follow(follow);
    }
}
