package thrumwright.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import thrumwright.benchmark.start.Started;

/**
 * How long a cold start takes: whole processes, one after the other and in turn, so that a busy moment of the machine meets
 * all of them. Beside the window with the demo piece stands a bare window with the same look, beside the terminal's
 * commands a program of one line; all run from the program's one jar with the flags and the class archive that the package
 * gives it. It tells median and quartiles. Needs {@code target/thrumwright.jar}, Linux and a display.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@Fork(0)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class StartBenchmark {
    private static final int ROUNDS = Integer.getInteger("rounds", 15);
    private static final Path JAR =
            Path.of(System.getProperty("jar", "target/thrumwright.jar")).toAbsolutePath();
    private static final List<String> FLAGS = List.of("-XX:TieredStopAtLevel=1");
    private static final String BARE = "a bare window";
    private static final String WINDOW = "the demo piece";
    private static final String LINE = "a program of one line";
    private static final String SHEET = "a first sheet";
    private static final Map<String, List<String>> PROGRAMS = new LinkedHashMap<>();

    static {
        PROGRAMS.put(BARE, List.of("bare"));
        PROGRAMS.put(WINDOW, List.of("window", "--demo"));
        PROGRAMS.put(SHEET, List.of("sheet"));
        PROGRAMS.put(LINE, List.of("line"));
        PROGRAMS.put("--version", List.of("terminal", "--version"));
        PROGRAMS.put("--help", List.of("terminal", "--help"));
        PROGRAMS.put(
                "plan FILE",
                List.of(
                        "terminal",
                        "plan",
                        Path.of("demo/saltmarsh-panel.json").toAbsolutePath().toString()));
        PROGRAMS.put(
                "sheet FILE",
                List.of(
                        "terminal",
                        "sheet",
                        Path.of("demo/saltmarsh-panel.json").toAbsolutePath().toString(),
                        "--as",
                        "PDF",
                        "--to",
                        "-"));
    }

    private final Map<String, List<Double>> told = new LinkedHashMap<>();
    private Path home;
    private List<String> java;

    public static void main(String[] arguments) throws Exception {
        new StartBenchmark().starts();
    }

    @Benchmark
    public void starts() throws Exception {
        home = Files.createTempDirectory("nobody");
        Path shown = home.resolve("shown.jar");
        jar(shown);
        java = List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        String path = JAR + ":" + shown;
        archive(path);
        List<String> program = new ArrayList<>(java);
        program.addAll(FLAGS);
        program.add("-XX:SharedArchiveFile=" + home.resolve("all.jsa"));
        program.addAll(List.of("-cp", path, Started.class.getName()));
        for (int round = -1; round < ROUNDS; round++) {
            for (Map.Entry<String, List<String>> each : PROGRAMS.entrySet()) {
                Map<String, Double> came = run(program, each.getValue());
                if (round >= 0) {
                    came.forEach(
                            (what, much) -> told.computeIfAbsent(each.getKey() + ", " + what, any -> new ArrayList<>())
                                    .add(much));
                }
            }
        }
        report();
    }

    private void jar(Path file) throws IOException {
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(file))) {
            for (String part : List.of("", "$1")) {
                String name = Started.class.getName().replace('.', '/') + part + ".class";
                out.putNextEntry(new JarEntry(name));
                try (InputStream in = Started.class.getResourceAsStream("/" + name)) {
                    in.transferTo(out);
                }
                out.closeEntry();
            }
        }
    }

    /** As the package does when it is installed. */
    private void archive(String path) throws Exception {
        Set<String> classes = new LinkedHashSet<>();
        for (List<String> each : PROGRAMS.values()) {
            Path list = home.resolve("classes.txt");
            List<String> command = new ArrayList<>(java);
            command.addAll(
                    List.of("-Dstay=5000", "-XX:DumpLoadedClassList=" + list, "-cp", path, Started.class.getName()));
            run(command, each);
            classes.addAll(Files.readAllLines(list));
        }
        Path all = Files.write(home.resolve("all.txt"), classes);
        List<String> dump = new ArrayList<>(java);
        dump.addAll(List.of(
                "-Xshare:dump",
                "-XX:SharedClassListFile=" + all,
                "-XX:SharedArchiveFile=" + home.resolve("all.jsa"),
                "-cp",
                path));
        Process process = new ProcessBuilder(dump).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(said);
        }
    }

    private Map<String, Double> run(List<String> program, List<String> arguments) throws Exception {
        List<String> command = new ArrayList<>(program);
        command.addAll(arguments);
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        for (String each : List.of("XDG_STATE_HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME")) {
            builder.environment().put(each, home.toString());
        }
        double used = children();
        long begun = System.currentTimeMillis();
        Process process = builder.start();
        String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(String.join(" ", command) + " failed: " + said);
        }
        Map<String, Double> came = new LinkedHashMap<>();
        for (String line : said.lines().filter(each -> each.startsWith("told ")).toList()) {
            String[] parts = line.split(" ");
            came.put(parts[1] + " after, ms", (double) (Long.parseLong(parts[2]) - begun));
            came.put(parts[1] + ", processor, ms", Double.valueOf(parts[3]));
            came.put(parts[1] + ", memory, MB", Double.parseDouble(parts[4]) / 1024);
        }
        withoutPlanning(came);
        if (came.isEmpty()) {
            came.put("ended after, ms", (double) (System.currentTimeMillis() - begun));
            came.put("ended, processor, ms", children() - used);
        }
        return came;
    }

    /** Of a first sheet only what comes after its plan. */
    private static void withoutPlanning(Map<String, Double> came) {
        for (String much : List.of(" after, ms", ", processor, ms")) {
            Optional.ofNullable(came.remove("planned" + much))
                    .ifPresent(planned -> came.computeIfPresent("sheet" + much, (what, all) -> all - planned));
        }
        came.remove("planned, memory, MB");
    }

    /** What programs that were started from here and have ended used of the processor, ms. */
    private static double children() throws IOException {
        String[] stat = Files.readString(Path.of("/proc/self/stat"))
                .replaceFirst("^.*\\) ", "")
                .split(" ");
        return 10.0 * (Long.parseLong(stat[13]) + Long.parseLong(stat[14]));
    }

    private void report() {
        System.out.printf("%n%-44s %8s %8s %8s %8s%n", "", "quarter", "median", "quarter", "times");
        told.forEach((what, each) -> {
            double[] sorted =
                    each.stream().mapToDouble(Double::doubleValue).sorted().toArray();
            int size = sorted.length;
            System.out.printf(
                    Locale.ROOT,
                    "%-44s %8.0f %8.0f %8.0f %8.2f%n",
                    what,
                    sorted[size / 4],
                    sorted[size / 2],
                    sorted[size * 3 / 4],
                    sorted[size / 2] / beside(what));
        });
    }

    /** A first sheet, which is told without what comes before it, stands beside the whole start of the bare window. */
    private double beside(String what) {
        String other = what.contains("ended") ? LINE : BARE;
        String same = other + what.substring(what.indexOf(", ")).replace("sheet", "painted");
        double[] sorted = told.get(same).stream()
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        return sorted[sorted.length / 2];
    }
}
