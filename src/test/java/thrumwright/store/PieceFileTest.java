package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Habits;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Ticks;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;
import thrumwright.yarn.CountSystem;
import thrumwright.yarn.Thickness;

class PieceFileTest {
    @Test
    void whatIsWrittenReadsBackTheSame() throws FileProblem {
        RandomPieces pieces = new RandomPieces(1);
        for (int i = 0; i < Seeds.of(1000); i++) {
            Piece piece = pieces.next();
            String text = new PieceFile(piece, Unknown.none()).text();
            PieceFile read = PieceFile.read(text);
            assertThat(read.piece()).isEqualTo(piece);
            assertThat(read.unknown().isEmpty()).isTrue();
            assertThat(read.text()).isEqualTo(text);
        }
    }

    /** A sort of object is read and written by two methods: what one of them asks for, the other puts down. */
    @Test
    void everyFieldThatIsReadIsWritten() throws FileProblem {
        Map<Format<?>, Set<String>> written = new LinkedHashMap<>();
        RandomPieces pieces = new RandomPieces(2);
        for (int i = 0; i < Seeds.of(1000, 200); i++) {
            Piece piece = pieces.next();
            note(written, PieceFormats.PIECE, piece);
            note(written, LoomFormats.LOOM, piece.loom());
            note(written, LoomFormats.WARP, piece.warp());
            note(written, LoomFormats.HABITS, piece.habits());
            note(written, DesignFormats.DESIGN, piece.design());
        }

        assertThat(written)
                .hasSize(5)
                .allSatisfy((format, names) -> assertThat(names).isEqualTo(format.names()));
    }

    private static <T> void note(Map<Format<?>, Set<String>> written, Format<T> format, T value) {
        written.computeIfAbsent(format, any -> new TreeSet<>())
                .addAll(format.object(value, Unknown.none()).fields().keySet());
    }

    @Test
    void unknownFieldsSurviveWhereTheyStood() throws FileProblem {
        String text = BuiltIn.DEMO
                .text(BuiltIn.DEMO.names().get(0))
                .replace("\"title\":", "\"mood\": {\"calm\": [1, 2.50, null]},\n  \"title\":")
                .replace("\"clearance\":", "\"feet\": 4, \"clearance\":")
                .replace("\"id\": \"soumak\",", "\"id\": \"soumak\", \"humming\": true,")
                .replace("\"id\": \"tide\",", "\"id\": \"tide\", \"shelf\": \"B\",");
        PieceFile file = PieceFile.read(text);
        Piece moved = file.piece().withStart(file.piece().start().without(Set.of("stiff")));
        String written = file.with(moved).text();
        assertThat(written)
                .contains("\"calm\": [")
                .contains("2.50")
                .contains("\"feet\": 4")
                .contains("\"shelf\": \"B\"");
        assertThat(written.indexOf("\"humming\": true"))
                .isGreaterThan(written.indexOf("\"id\": \"soumak\""))
                .isLessThan(written.indexOf("\"id\": \"fold\""));
        assertThat(PieceFile.read(written).text()).isEqualTo(written);
    }

    /** Ids may look like the places of objects within others. */
    @Test
    void unknownFieldsOfASampleSurviveWhateverTheYarnsAreCalled() throws FileProblem {
        String demo = BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0));
        String yarn = "{\"id\": \"%s\", \"colour\": \"#112233\", \"fibre\": \"wool\", \"thickness\": {\"wraps\": 5,"
                + " \"in\": \"1 cm\"}, \"sample\": {\"picks\": 20, \"height\": \"2 cm\", \"x-%s\": true}},";
        String text = demo.replace(
                "\"yarns\": [",
                "\"yarns\": [" + String.format(yarn, "x", "one") + String.format(yarn, "x/sample", "two")
                        + String.format(yarn, "x#sample", "three"));
        String written = PieceFile.read(text).text();
        assertThat(written).contains("\"x-one\": true", "\"x-two\": true", "\"x-three\": true");
        assertThat(PieceFile.read(written).text()).isEqualTo(written);
    }

    @Test
    void ticksStandByTheirStepsAndSayWhatIsWrongWithThem() throws FileProblem {
        String text = BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0));
        assertThat(PieceFile.read(text).piece().ticks()).isEqualTo(Ticks.NONE);
        String ticked = text.strip()
                .replaceAll(
                        "}$",
                        ", \"done\": [{\"id\": \"start/soumak\", \"hands\": 2, "
                                + "\"rows\": [\"2026-11-28T14:05\", \"2026-11-28T14:06:30\"]}]}");
        PieceFile file = PieceFile.read(ticked);
        assertThat(file.piece().ticks().done("start/soumak")).isEqualTo(2);
        assertThat(file.piece().ticks().last("start/soumak")).contains(LocalDateTime.of(2026, 11, 28, 14, 6, 30));
        String more = file.with(file.piece()
                        .withTicks(file.piece()
                                .ticks()
                                .with("start/edge", LocalDateTime.of(2026, 11, 28, 15, 0))
                                .with("start/soumak", LocalDateTime.of(2026, 11, 28, 15, 1))))
                .text();
        assertThat(more).contains("\"hands\": 2");
        assertThat(PieceFile.read(more).text()).isEqualTo(more);
        assertThatThrownBy(() -> PieceFile.read(ticked.replace("T14:05", " 2 pm")))
                .isInstanceOf(FileProblem.class)
                .hasMessageContaining("“2026-11-28 2 pm” is no day and time; write them like “2026-11-28T14:05”");
        assertThatThrownBy(() -> PieceFile.read(ticked.replace("\"2026-11-28T14:05\", \"2026-11-28T14:06:30\"", "")))
                .isInstanceOf(FileProblem.class)
                .hasMessageContaining("“start/soumak” hasn't");
    }

    @Test
    void whatWasMeasuredStandsByItsStep() throws FileProblem {
        String measured = BuiltIn.DEMO
                .text(BuiltIn.DEMO.names().get(0))
                .strip()
                .replaceAll(
                        "}$",
                        ", \"measured\": [{\"id\": \"start/soumak\", \"with\": \"tape\", \"height\": \"3 1/2 in\"}]}");
        PieceFile file = PieceFile.read(measured);
        MeasuredStep soumak = file.piece().measures().of("start/soumak");
        assertThat(soumak.height()).contains(Length.parse("3 1/2 in"));
        String more = file.with(file.piece()
                        .withMeasures(file.piece()
                                .measures()
                                .with(soumak.withLeft(Optional.of(Length.parse("12 cm")))
                                        .made(6, 4))))
                .text();
        assertThat(more).contains("\"with\": \"tape\"", "\"3 1/2 in\"", "\"12 cm\"", "\"plannedRows\": 6");
        assertThat(PieceFile.read(more).text()).isEqualTo(more);
        assertThatThrownBy(() -> PieceFile.read(measured.replace("3 1/2 in", "high up")))
                .isInstanceOf(FileProblem.class)
                .hasMessageContaining("high up");
    }

    @Test
    void lengthsStayAsTheyWereTyped() throws FileProblem {
        String text = BuiltIn.DEMO
                .text(BuiltIn.DEMO.names().get(0))
                .replace("\"open\": \"70 cm\"", "\"open\": \"27 1/2 in\"");
        assertThat(PieceFile.read(text).text()).contains("\"open\": \"27 1/2 in\"");
    }

    /** What comes with the program is written as the program writes. */
    @Test
    void theDemoPiecesAndStructuresAreWrittenAsTheProgramWrites() throws FileProblem {
        for (String name : BuiltIn.DEMO.names()) {
            assertThat(PieceFile.read(BuiltIn.DEMO.text(name)).text()).isEqualTo(BuiltIn.DEMO.text(name));
        }
        for (String name : BuiltIn.STRUCTURES.names()) {
            String text = BuiltIn.STRUCTURES.text(name);
            assertThat(StructureFile.read(text).text()).isEqualTo(text);
        }
    }

    @Test
    void everyWayToGiveAThicknessReadsBack() throws FileProblem {
        Piece demo = demo();
        for (CountSystem system : CountSystem.values()) {
            Thickness counted = new Thickness.Counted(8.25, system.ofTheSingle() ? 3 : 1, system);
            assertReadsBack(withThickness(demo, counted));
        }
        assertReadsBack(withThickness(demo, new Thickness.Wraps(4.5, Length.parse("1 cm"))));
        assertReadsBack(withThickness(demo, new Thickness.Measured(Length.parse("1/32 in"))));
    }

    private static Piece demo() throws FileProblem {
        return PieceFile.read(BuiltIn.DEMO.text("saltmarsh-panel.json")).piece();
    }

    private static Piece withThickness(Piece piece, Thickness thickness) {
        return piece.withYarns(piece.yarns().stream()
                .map(yarn -> yarn.withThickness(thickness))
                .toList());
    }

    private static void assertReadsBack(Piece piece) throws FileProblem {
        String text = new PieceFile(piece, Unknown.none()).checkedText();
        byte[] onDisk = text.getBytes(StandardCharsets.UTF_8);
        assertThat(PieceFile.read(new String(onDisk, StandardCharsets.UTF_8)).piece())
                .isEqualTo(piece);
    }

    @Test
    void oddCharactersReadBack() throws FileProblem {
        for (String title :
                List.of("", " ", "a\nb\t\"c\"\\", "\u0000\u001f", "潮\uD83E\uDDF6 ½″", "half \uD83E", "\uDDF6 half")) {
            assertReadsBack(demo().withTitle(title));
        }
    }

    @Test
    void whatCouldNotBeReadAgainIsNotWritten() throws FileProblem {
        assertReadsBack(demo().withNote("n".repeat(10_000)));
        PieceFile file = new PieceFile(demo().withNote("n".repeat(10_001)), Unknown.none());
        assertThatThrownBy(file::checkedText)
                .isInstanceOf(FileProblem.class)
                .hasMessage("The piece can't be kept as it is. Line 4, column 11, note: "
                        + "this text is too long: 10001 characters; at most 10000 are kept.");
    }

    @Test
    void aFileMayBeginWithAByteOrderMark() throws FileProblem {
        String text = BuiltIn.DEMO.text("saltmarsh-panel.json");
        assertThat(PieceFile.read("\uFEFF" + text.replace("\n", "\r\n")).piece())
                .isEqualTo(demo());
    }

    /** All that a file written by hand needs; the rest has usual values. */
    @Test
    void aShortFileWillDo() throws FileProblem {
        Piece piece = PieceFile.read("""
                {"thrumwright": 1, "title": "Short",
                 "loom": {"open": "60 cm", "clearance": "6 cm", "workingRoom": "12 cm", "warpPerEnd": "80 cm"},
                 "warp": {"width": "20 cm", "sett": "3/cm", "yarn": "cord"},
                 "yarns": [{"id": "cord", "colour": "#e9e1cf", "fibre": "cotton", "thickness": {"diameter": "1 mm"}}],
                 "design": {"height": "25 cm", "firstStripe": "cord", "lastStripe": "cord"},
                 "start": [{"kind": "ordering cord", "id": "order", "of": "warp cord"},
                           {"kind": "twining", "id": "edge", "of": "warp cord"}]}
                """).piece();
        assertThat(piece.habits()).isEqualTo(Habits.usual(UnitSystem.METRIC));
        assertThat(piece.cordId()).isEqualTo("cord");
        assertThat(piece.end(Place.TOP).blocks()).extracting(Block::id).containsExactly("edge");
        assertReadsBack(piece);
    }

    /** A file cut off anywhere is refused with a place and a sentence, never with anything else. */
    @Test
    void everyTruncationIsRefusedInWords() {
        String whole = BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0)).stripTrailing();
        for (int length = 0; length < whole.length(); length++) {
            String cut = whole.substring(0, length);
            assertThatThrownBy(() -> PieceFile.read(cut))
                    .isInstanceOf(FileProblem.class)
                    .hasMessageMatching("(?s)Line \\d+, column \\d+.*[.]");
        }
    }

    /** Any damage is either harmless or refused in words. */
    @Test
    void damageIsHarmlessOrRefusedInWords() {
        String whole = BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(2));
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(9);
        int refused = 0;
        for (int i = 0; i < Seeds.of(4000); i++) {
            StringBuilder damaged = new StringBuilder(whole);
            for (int hits = random.nextInt(1, 4); hits > 0; hits--) {
                int at = random.nextInt(damaged.length());
                switch (random.nextInt(3)) {
                    case 0 -> damaged.deleteCharAt(at);
                    case 1 -> damaged.setCharAt(at, (char) random.nextInt(32, 127));
                    default -> damaged.insert(at, (char) random.nextInt(32, 127));
                }
            }
            try {
                PieceFile.read(damaged.toString()).text();
            } catch (FileProblem problem) {
                refused++;
                assertThat(problem.getMessage()).endsWith(".").doesNotContain("Exception");
            }
        }
        assertThat(refused).isGreaterThan(Seeds.of(1000));
    }
}
