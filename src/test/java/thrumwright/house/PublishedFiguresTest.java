package thrumwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The table of published figures in docs/method.md names for each its source and a test that is there. */
class PublishedFiguresTest {
    private static final Pattern TEST = Pattern.compile("`(\\w+)#(\\w+)`");

    private static List<List<String>> rows() throws IOException {
        String method = Files.readString(Path.of("docs", "method.md"));
        String section =
                method.split("## Published figures against the program\n")[1].split("\n## ")[0];
        return section.lines()
                .filter(line -> line.startsWith("| "))
                .skip(1)
                .map(line -> Arrays.stream(line.substring(1, line.length() - 1).split("\\|"))
                        .map(String::strip)
                        .toList())
                .toList();
    }

    private static String source(String testClass) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "test", "java"))) {
            return Files.readString(files.filter(file -> file.endsWith(testClass + ".java"))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no test " + testClass)));
        }
    }

    @Test
    void everyFigureHasItsSourceAndATestThatIsThere() throws IOException {
        List<List<String>> rows = rows();
        assertThat(rows).hasSizeGreaterThanOrEqualTo(25).doesNotHaveDuplicates();
        for (List<String> row : rows) {
            assertThat(row).hasSize(5).noneMatch(String::isEmpty);
            Matcher test = TEST.matcher(row.get(4));
            assertThat(test.matches()).as("%s", row).isTrue();
            String[] parts = source(test.group(1)).split("void " + test.group(2) + "\\(");
            assertThat(parts).as("%s", row).hasSize(2);
            String before = parts[0].substring(parts[0].lastIndexOf("\n    }\n") + 1);
            assertThat(before).as("%s", row).containsPattern("@(Test|ParameterizedTest)\\b");
        }
    }

    /** Sources in brackets are listed at the end of the same file. */
    @Test
    void everySourceInBracketsIsListed() throws IOException {
        String sources = Files.readString(Path.of("docs", "method.md")).split("## Sources\n")[1];
        for (List<String> row : rows()) {
            Matcher named = Pattern.compile("\\[(\\w+)]").matcher(row.get(3));
            while (named.find()) {
                assertThat(sources).contains("[" + named.group(1) + "]");
            }
        }
    }
}
