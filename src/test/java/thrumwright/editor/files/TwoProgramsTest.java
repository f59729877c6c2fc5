package thrumwright.editor.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.settings.Workplace;
import thrumwright.store.BuiltIn;
import thrumwright.testing.Seeds;

/**
 * Two programs, each a process of its own, do something at one file at the same moment, again and again; somebody replaces it between.
 * Whoever writes over what he hasn't seen must have been asked.
 */
class TwoProgramsTest {
    private static final int MOMENTS = 25;
    private static final String NOTHING = "-";

    @TempDir
    private Path home;

    private String demo;
    private int asked;
    private int copies;

    /** A program in which things are done on demand, seen from here. */
    private record Far(Process process, PrintStream deeds, BufferedReader answers) implements AutoCloseable {
        static Far begun(int number, Path state) throws IOException {
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-Djava.awt.headless=true",
                            "-cp",
                            System.getProperty("java.class.path"),
                            Near.class.getName(),
                            Integer.toString(number),
                            state.toString())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            return new Far(
                    process,
                    new PrintStream(process.getOutputStream(), true, StandardCharsets.UTF_8),
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)));
        }

        Saved answer() throws IOException {
            String line = answers.readLine();
            assertThat(line).as("the program has ended").isNotNull();
            String[] parts = line.split(" ");
            return new Saved(parts[0], Boolean.parseBoolean(parts[1]), parts[2], Boolean.parseBoolean(parts[3]));
        }

        @Override
        public void close() {
            process.destroyForcibly();
        }
    }

    /**
     * What a deed did to the file.
     *
     * @param knew a mark of what the program had last seen there
     * @param wrote a mark of what it wrote there, or nothing
     */
    private record Saved(String knew, boolean asked, String wrote, boolean copied) {
        boolean changed() {
            return !wrote.equals(NOTHING);
        }
    }

    @Test
    @Timeout(value = 30, unit = TimeUnit.MINUTES)
    void nobodysWorkIsWrittenOverUnasked() throws Exception {
        demo = BuiltIn.DEMO.text("saltmarsh-panel.json");
        int runs = Seeds.costly(1000, 10);
        Path state = home.resolve("state");
        try (Far one = Far.begun(1, state);
                Far other = Far.begun(2, state)) {
            for (int run = 0; run < runs; run++) {
                interleaved(new Random(run), home.resolve("piece-" + run + ".json"), List.of(one, other));
            }
        }
        assertThat(asked).isPositive();
        assertThat(copies).isPositive();
    }

    private void interleaved(Random random, Path file, List<Far> programs) throws IOException {
        Files.writeString(file, demo);
        together(programs, "begin " + file, "begin " + file);
        for (int i = 0; i < MOMENTS; i++) {
            if (random.nextInt(7) == 0) {
                Files.writeString(file, demo + " ".repeat(random.nextInt(50)));
            }
            String before = mark(Files.readString(file));
            List<Saved> saved = together(programs, deed(random, file), deed(random, file));
            nothingLost(before, saved, mark(Files.readString(file)));
        }
        together(programs, "close", "close");
    }

    private static String deed(Random random, Path file) {
        return switch (random.nextInt(6)) {
            case 0, 1 -> "edit";
            case 2, 3 -> "save";
            case 4 -> "look";
            default -> "begin " + file;
        };
    }

    private List<Saved> together(List<Far> programs, String one, String other) throws IOException {
        programs.get(0).deeds().println(one);
        programs.get(1).deeds().println(other);
        List<Saved> saved = List.of(programs.get(0).answer(), programs.get(1).answer());
        asked += (int) saved.stream().filter(Saved::asked).count();
        copies += (int) saved.stream().filter(Saved::copied).count();
        return saved;
    }

    /** Who wrote last is seen in the file; whoever wrote before has found there what was there before. */
    private static void nothingLost(String before, List<Saved> saved, String after) {
        List<Saved> wrote =
                new ArrayList<>(saved.stream().filter(Saved::changed).toList());
        if (wrote.size() == 2 && wrote.get(0).wrote().equals(after)) {
            wrote.add(wrote.remove(0));
        }
        String there = before;
        for (Saved each : wrote) {
            assertThat(each.asked() || each.knew().equals(there))
                    .as("what was there was written over unasked")
                    .isTrue();
            there = each.wrote();
        }
        assertThat(after).isEqualTo(there);
    }

    /** Of a text that is there. */
    private static String mark(String text) {
        return Integer.toHexString(text.hashCode()) + "/" + text.length();
    }

    /** The program itself: does what it reads, a line each, and tells what that did. */
    static final class Near {
        private final Workplace place;
        private final int number;
        private final Random random;
        private Optional<ProgramAtFile> program = Optional.empty();

        private Near(int number, Path state) {
            this.number = number;
            this.place = ProgramAtFile.place(state);
            this.random = new Random(number);
        }

        public static void main(String[] arguments) throws Exception {
            Near near = new Near(Integer.parseInt(arguments[0]), Path.of(arguments[1]));
            BufferedReader deeds = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            for (String deed = deeds.readLine(); deed != null; deed = deeds.readLine()) {
                System.out.println(near.done(deed.split(" ", 2)));
            }
        }

        private String done(String[] deed) throws Exception {
            switch (deed[0]) {
                case "begin" -> begin(Path.of(deed[1]));
                case "edit" -> program.orElseThrow().edit();
                case "look" -> program.orElseThrow().look();
                case "close" -> end();
                default -> {
                    return said(program.orElseThrow().save());
                }
            }
            return NOTHING + " false " + NOTHING + " false";
        }

        private void begin(Path file) throws Exception {
            end();
            program = Optional.of(new ProgramAtFile(file, number, place, random).begun());
        }

        private void end() {
            program.ifPresent(ProgramAtFile::close);
            program = Optional.empty();
        }

        private static String said(ProgramAtFile.Saving saving) {
            return mark(saving.knew()) + " " + saving.asked() + " "
                    + saving.wrote().map(TwoProgramsTest::mark).orElse(NOTHING) + " " + saving.copied();
        }
    }
}
