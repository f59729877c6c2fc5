package thrumwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.testing.HostileFiles;
import thrumwright.testing.Seeds;

/** No small file exhausts the machine: in 500 MB everything is answered, or refused in a sentence. */
class HostileFilesTest {
    private static final String MEMORY = "-Xmx500m";

    /** What is asked of each file; the last word is what is written, where a sheet is. */
    private static final List<List<String>> WORDS =
            List.of(List.of("plan"), List.of("check"), List.of("plan", "--json"), List.of("sheet", "txt"));

    private static final List<List<String>> DRAWN = List.of(List.of("sheet", "html"), List.of("sheet", "pdf"));

    /** A class that isn't even read. */
    private static final String TOO_LARGE = "The looms of a class have at most";

    /** In a short run only so many files are drawn. */
    private static final int FEW = 1;

    /** In the long run each answer is timed, generously: ten seconds on a machine that has nothing else to do. */
    private static final long LONG_RUN_SECONDS = 40;

    @TempDir
    private Path folder;

    @Test
    @Timeout(value = 60, unit = TimeUnit.MINUTES)
    void everySmallFileIsAnsweredInFewMegabytes() throws Exception {
        Map<String, String> files = new LinkedHashMap<>(HostileFiles.all());
        IntStream.range(0, Seeds.costly(100, 2)).forEach(seed -> files.put("seed " + seed, HostileFiles.seeded(seed)));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                MEMORY,
                "-XX:+UseSerialGC",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                HostileFilesTest.class.getName(),
                folder.toString()));
        for (Map.Entry<String, String> file : files.entrySet()) {
            assertThat(file.getValue()).as(file.getKey()).hasSizeLessThan(10_000);
            Path path = folder.resolve(file.getKey().replaceAll("\\W+", "-") + ".json");
            Files.writeString(path, file.getValue());
            command.add(path.toString());
        }
        if (!whole()) {
            command.add(1, "-XX:TieredStopAtLevel=1");
        }
        int drawn = whole() ? files.size() : FEW;
        command.add(command.indexOf(folder.toString()) + 1, Integer.toString(drawn));
        Process child = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(child.waitFor()).as(said).isZero();
        List<String> answers =
                said.lines().filter(line -> line.startsWith("answer ")).toList();
        int asked = whole() ? WORDS.size() : 2;
        assertThat(answers).as(said).hasSize(files.size() * asked + drawn * DRAWN.size());
        for (String answer : answers) {
            String[] parts = answer.split(" ", 4);
            boolean refused = answer.contains(TOO_LARGE);
            assertThat(Integer.parseInt(parts[1]))
                    .as(answer)
                    .isIn(refused ? List.of(3) : List.of(RootCommand.DONE, 1, 2));
            if (longRun()) {
                assertThat(Long.parseLong(parts[2])).as(answer).isLessThan(LONG_RUN_SECONDS * 1000);
            }
        }
    }

    /** Whether everything is asked of each file. */
    private static boolean whole() {
        return Seeds.costly(1, 0) > 0;
    }

    private static boolean longRun() {
        return Seeds.of(100) >= 100;
    }

    /** The child: asks for everything of every file, and tells the exit code, how long it took and what was said. */
    public static void main(String... arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        int drawn = Integer.parseInt(arguments[1]);
        List<String> files = List.of(arguments).subList(2, arguments.length);
        for (int i = 0; i < files.size(); i++) {
            for (List<String> form : drawn < files.size() ? someWords(i) : WORDS) {
                ask(folder, files.get(i), form);
            }
            for (List<String> form : i < drawn ? DRAWN : List.<List<String>>of()) {
                ask(folder, files.get(i), form);
            }
        }
    }

    /** In a short run each file is asked for half, and its neighbours for the other. */
    private static List<List<String>> someWords(int file) {
        return List.of(WORDS.get(file % 2), WORDS.get(2 + file / 2 % 2));
    }

    private static void ask(Path folder, String file, List<String> form) throws IOException {
        List<String> asked = new ArrayList<>(List.of(form.get(0), file));
        boolean sheet = form.get(0).equals("sheet");
        Path out = folder.resolve("sheet." + form.get(form.size() - 1));
        asked.addAll(sheet ? List.of("-o", out.toString()) : form.subList(1, form.size()));
        ByteArrayOutputStream errors = new ByteArrayOutputStream();
        long before = System.nanoTime();
        int code = RootCommand.run(
                asked.toArray(String[]::new),
                InputStream.nullInputStream(),
                new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(errors, true, StandardCharsets.UTF_8),
                folder,
                "0");
        long millis = (System.nanoTime() - before) / 1_000_000;
        Files.deleteIfExists(out);
        System.out.println("answer " + code + " " + millis + " " + form + " " + file + " "
                + errors.toString(StandardCharsets.UTF_8).replace('\n', ' '));
    }
}
