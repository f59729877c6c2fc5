package thrumwright.store;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Phrase;
import thrumwright.piece.Meant;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Ticks;

/**
 * How far a piece is woven, as it stands in a file: the steps that were begun, each with when its rows were done; and what was
 * measured of them, and what is meant as it is.
 */
final class TickFormats {
    private static final Format<Ticks.Stepped> STEP = new Declared<>() {
        private final Entry<String> id = needed("id", Types.id("like.step"));
        private final Entry<List<LocalDateTime>> rows = needed("rows", new Times());

        @Override
        public Ticks.Stepped make(Fields in) throws FileProblem {
            return new Ticks.Stepped(id.of(in), rows.of(in));
        }

        @Override
        public void write(Ticks.Stepped step, Writing out) {
            out.put(id, step.step()).put(rows, step.rows());
        }
    };

    static final ValueType<List<Ticks.Stepped>> TICKS = new Listed.ById<>(STEP, "step", Ticks.MOST) {
        @Override
        String id(Ticks.Stepped step) {
            return step.step();
        }
    };

    private static final Format<MeasuredStep> MEASURED = new Declared<>() {
        private final Entry<String> id = needed("id", Types.id("like.step"));
        private final Entry<Optional<Length>> height = optional("height", Types.LENGTH);
        private final Entry<Optional<Length>> width = optional("width", Types.LENGTH);
        private final Entry<Optional<Length>> left = optional("left", Types.LENGTH);
        private final Entry<Optional<Integer>> planned = optional("plannedRows", BlockParts.ROWS);

        @Override
        public MeasuredStep make(Fields in) throws FileProblem {
            return new MeasuredStep(id.of(in), height.of(in), width.of(in), left.of(in), planned.of(in));
        }

        @Override
        public void write(MeasuredStep step, Writing out) {
            out.put(id, step.step()).put(height, step.height()).put(width, step.width());
            out.put(left, step.left()).put(planned, step.planned());
        }
    };

    static final ValueType<List<MeasuredStep>> MEASURES = new Listed.ById<>(MEASURED, "step", Ticks.MOST) {
        @Override
        String id(MeasuredStep step) {
            return step.step();
        }
    };

    private static final Format<Meant.Told> TOLD = new Declared<>() {
        private final Entry<String> finding = needed("finding", Types.id("like.text"));
        private final Entry<String> step = needed("id", Types.id("like.step"));

        @Override
        public Meant.Told make(Fields in) throws FileProblem {
            return new Meant.Told(finding.of(in), step.of(in));
        }

        @Override
        public void write(Meant.Told told, Writing out) {
            out.put(finding, told.finding()).put(step, told.step());
        }
    };

    static final ValueType<List<Meant.Told>> MEANT = new Listed<>(TOLD, "meant", Ticks.MOST);

    private TickFormats() {}

    /** Days and times in a list, as clocks on the wall show them there. */
    private record Times() implements ValueType<List<LocalDateTime>> {
        @Override
        public Phrase like() {
            return new Phrase("like.times");
        }

        @Override
        public List<LocalDateTime> read(Fields in, String name, Node there) throws FileProblem {
            List<LocalDateTime> times = new ArrayList<>();
            for (String text : in.texts(name, there)) {
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
