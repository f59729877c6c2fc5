package thrumwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command of the program that the docs give does what it is given for. */
class DocsCommandsTest {
    private static final Pattern BLOCK = Pattern.compile("```sh\n(.*?)```", Pattern.DOTALL);
    private static final Pattern CALL = Pattern.compile("(?:java -jar target/thrumwright\\.jar|thrumwright) (.*)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    Path all;

    /** Of one document. */
    private Path folder;

    @Test
    void allCommandsOfTheDocsRun() throws IOException {
        int run = 0;
        for (Path document : documents()) {
            folder = Files.createDirectories(all.resolve(document));
            String text = Files.readString(document);
            Matcher block = BLOCK.matcher(text);
            while (block.find()) {
                for (String line : block.group(1).lines().toList()) {
                    Matcher call = CALL.matcher(line);
                    if (call.matches()) {
                        run++;
                        written(call.group(1), text);
                        run(document, call.group(1));
                    }
                }
            }
        }
        assertThat(run).as("commands in the docs").isGreaterThan(12);
    }

    /** What is checked without having been begun is the file of its sort that the docs show. */
    private void written(String line, String text) throws IOException {
        Matcher checked = Pattern.compile("check ([\\w-]+\\.thrumstructure)").matcher(line);
        Matcher shown = Pattern.compile("```json\n(\\{\\s*\"thrumwrightStructure\".*?)```", Pattern.DOTALL)
                .matcher(text);
        if (checked.matches() && shown.find()) {
            Files.writeString(folder.resolve(checked.group(1)), shown.group(1));
        }
    }

    private static List<Path> documents() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("docs"))) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    private void run(Path document, String line) throws IOException {
        String[] parts = line.split(" < ");
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(parts[0]);
        while (word.find()) {
            words.add(word.group(1) == null ? here(word.group(2)) : word.group(1));
        }
        InputStream in = parts.length > 1
                ? Files.newInputStream(Path.of(here(parts[1].strip())))
                : new ByteArrayInputStream(new byte[0]);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        int code = RootCommand.run(words.toArray(String[]::new), in, out, out, folder.resolve("own"), "1");
        assertThat(code)
                .as(document + ": " + line + "\n" + said.toString(StandardCharsets.UTF_8))
                .isZero();
    }

    /** Files that a command writes, and others read after it, lie in a folder of the test. */
    private String here(String word) throws IOException {
        boolean file = word.matches("[\\w/.-]+\\.(thrum|thrumstructure|pdf|html|json)") && !Files.exists(Path.of(word));
        if (!file) {
            return word;
        }
        Path there = folder.resolve(word);
        Files.createDirectories(there.getParent());
        return there.toString();
    }
}
