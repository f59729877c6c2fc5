package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.plan.finding.Findings;

/**
 * Cases in readable files. A general case is a piece and what its plan must say; a robust case is a change to the demo
 * piece that must be refused, and the sentence. Lines that begin with # say how a figure was come by.
 */
class CaseFilesTest {
    /** Each case: a line “what : instead”, then lines of the expected sentence, then an empty line. */
    @TestFactory
    Stream<DynamicTest> robust() throws IOException {
        return refused("robust/refusals.txt", "saltmarsh-panel.json", PieceFile::read);
    }

    @TestFactory
    Stream<DynamicTest> robustClasses() throws IOException {
        ClassFile.PieceSource pieces = ClassFile.PieceSource.in(Path.of("demo", "class"));
        return refused("robust/class-refusals.txt", "class/tuesday-class.json", text -> ClassFile.read(text, pieces));
    }

    /** Reads a text, or refuses it. */
    private interface Reader {
        Object read(String text) throws FileProblem;
    }

    private static Stream<DynamicTest> refused(String cases, String demo, Reader reader) throws IOException {
        String whole = BuiltIn.DEMO.text(demo);
        return cases(cases).stream()
                .map(lines -> DynamicTest.dynamicTest(lines.get(0), () -> {
                    String[] swap = (lines.get(0) + " ").split(" ==> ", 2);
                    swap[1] = swap[1].strip();
                    assertThat(whole).contains(swap[0]);
                    String broken = whole.replace(swap[0], swap[1]);
                    FileProblem problem = catchThrowableOfType(FileProblem.class, () -> reader.read(broken));
                    assertThat(problem).as("must be refused").isNotNull();
                    assertThat(problem.getMessage()).isEqualTo(String.join(" ", lines.subList(1, lines.size())));
                }));
    }

    @TestFactory
    Stream<DynamicTest> general() throws IOException, URISyntaxException {
        Path folder = Path.of(CaseFilesTest.class.getResource("general").toURI());
        return files(folder).stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
                    Plan plan = Plan.of(PieceFile.read(Files.readString(file)).piece());
                    assertThat(told(plan)).isEqualToIgnoringWhitespace(wanted(file));
                }));
    }

    /** A class, and what each of its looms and all of them together must say. */
    @TestFactory
    Stream<DynamicTest> generalClasses() throws IOException, URISyntaxException {
        Path folder = Path.of(CaseFilesTest.class.getResource("general/classes").toURI());
        return files(folder).stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
                    ClassPlan plan = ClassPlan.of(ClassFile.read(file).set());
                    StringBuilder told = new StringBuilder();
                    plan.plans().forEach(each -> told.append(told(each)));
                    for (YarnTotal total : plan.totals()) {
                        told.append(total.yarn().id())
                                .append(" warp ")
                                .append(rounded(total.inWarp()))
                                .append(" ends ")
                                .append(rounded(total.inEnds()))
                                .append('\n');
                    }
                    assertThat(told.toString()).isEqualToIgnoringWhitespace(wanted(file));
                }));
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> files = all.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
            assertThat(files).isNotEmpty();
            return files;
        }
    }

    private static Path expected(Path file) {
        return file.resolveSibling(file.getFileName().toString().replace(".json", ".expected"));
    }

    private static String wanted(Path file) throws IOException {
        try (Stream<String> lines = Files.lines(expected(file))) {
            return lines.filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"));
        }
    }

    private static String told(Plan plan) {
        StringBuilder told = new StringBuilder();
        told.append("ends ").append(plan.piece().warp().ends()).append('\n');
        for (var end : List.of(plan.start(), plan.top())) {
            told.append(end.place()).append(' ').append(rounded(end.height()));
            end.hem().map(Hem::depth).ifPresent(depth -> told.append(" hem ").append(rounded(depth)));
            told.append('\n');
            for (var block : end.blocks()) {
                told.append("  ").append(block.block().id()).append(' ').append(rounded(block.height()));
                block.work()
                        .ifPresent(work -> told.append(" exact ")
                                .append(rounded(work.cut().exact()))
                                .append(work.toCut()
                                        .map(cut -> " cut " + rounded(cut.length()))
                                        .orElse(" goes on"))
                                .append(' ')
                                .append(work.begins())
                                .append('-')
                                .append(work.ends()));
                told.append('\n');
            }
        }
        Findings.of(plan).all().forEach(finding -> told.append(finding.code()).append('\n'));
        return told.toString();
    }

    private static String rounded(double mm) {
        return String.valueOf(Math.round(mm * 1000) / 1000.0);
    }

    private static List<List<String>> cases(String name) throws IOException {
        try (InputStream in = CaseFilesTest.class.getResourceAsStream(name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            List<List<String>> cases = new ArrayList<>();
            for (String part : text.split("\n\\s*\n")) {
                List<String> lines =
                        part.lines().filter(line -> !line.startsWith("#")).toList();
                if (!lines.isEmpty()) {
                    cases.add(lines);
                }
            }
            assertThat(cases).isNotEmpty();
            return cases;
        }
    }
}
