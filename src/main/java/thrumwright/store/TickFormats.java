package thrumwright.store;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Amount;
import thrumwright.measure.Phrase;
import thrumwright.piece.Meant;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Ticks;

/**
 * How far a piece is woven, as it stands in a file: the steps that were begun, each with when its rows were done; and what was
 * measured of them, and what is meant as it is.
 */
final class TickFormats {
    static final ValueType<List<Ticks.Stepped>> TICKS =
            Types.list(step(), "step", Ticks.MOST, Optional.of(Ticks.Stepped::step));

    static final ValueType<List<MeasuredStep>> MEASURES =
            Types.list(measured(), "step", Ticks.MOST, Optional.of(MeasuredStep::step));

    static final ValueType<List<Meant.Told>> MEANT = Types.list(told(), "meant", Ticks.MOST, Optional.empty());

    private TickFormats() {}

    private static Format<Meant.Told> told() {
        var told = new Declared<Meant.Told>();
        var finding = told.needed("finding", Types.id("like.text"), Meant.Told::finding);
        var step = told.needed("id", Types.id("like.step"), Meant.Told::step);
        return told.as(in -> new Meant.Told(finding.of(in), step.of(in)));
    }

    private static Format<MeasuredStep> measured() {
        var step = new Declared<MeasuredStep>();
        var id = step.needed("id", Types.id("like.step"), MeasuredStep::step);
        var height = step.optional("height", Types.LENGTH, MeasuredStep::height);
        var width = step.optional("width", Types.LENGTH, MeasuredStep::width);
        var left = step.optional("left", Types.LENGTH, MeasuredStep::left);
        var planned = step.optional("plannedRows", Types.whole(1, Amount.MOST_ROWS), MeasuredStep::planned);
        return step.as(in -> new MeasuredStep(id.of(in), height.of(in), width.of(in), left.of(in), planned.of(in)));
    }

    private static Format<Ticks.Stepped> step() {
        var step = new Declared<Ticks.Stepped>();
        var id = step.needed("id", Types.id("like.step"), Ticks.Stepped::step);
        var rows = step.needed("rows", new Times(), Ticks.Stepped::rows);
        return step.as(in -> new Ticks.Stepped(id.of(in), rows.of(in)));
    }

    /** Days and times in a list, as clocks on the wall show them there. */
    private record Times() implements ValueType<List<LocalDateTime>> {
        @Override
        public Phrase like() {
            return new Phrase("like.times");
        }

        @Override
        public List<LocalDateTime> read(Fields in, String name) throws FileProblem {
            List<LocalDateTime> times = new ArrayList<>();
            for (String text : in.texts(name)) {
                try {
                    times.add(LocalDateTime.parse(text));
                } catch (DateTimeParseException e) {
                    throw in.problem(name, new Phrase("file.time", Map.of("typed", text)), e);
                }
            }
            return times;
        }

        @Override
        public Node node(List<LocalDateTime> times, Unknown around, String name) {
            return Node.Arr.of(times.stream()
                    .<Node>map(time -> Node.Text.of(time.toString()))
                    .toList());
        }
    }
}
