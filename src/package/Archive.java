import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Notes which classes a start with the demo piece needs, and lays those of Java ready in its runtime, which then starts in a
 * fraction of the time. A list of the program's own goes along, so that whoever installs can lay those ready too, once it
 * is known where they will lie.
 *
 * <p>{@code java -cp thrumwright.jar Archive.java RUNTIME LIST}. Needs a display or xvfb-run; without either Java's own
 * list is all there is, and nothing is written to LIST.
 */
final class Archive {
    private static final long PATIENCE = TimeUnit.SECONDS.toMillis(180);

    private final Path runtime;
    private final Path list;

    private Archive(Path runtime, Path list) {
        this.runtime = runtime;
        this.list = list;
    }

    public static void main(String[] arguments) throws Exception {
        new Archive(Path.of(arguments[0]), Path.of(arguments[1])).make();
    }

    private void make() throws Exception {
        List<String> dump = new ArrayList<>(List.of(runtime.resolve("bin/java").toString(), "-Xshare:dump"));
        if (screen().isPresent()) {
            Set<String> loaded = new LinkedHashSet<>(start(screen().get()));
            loaded.addAll(terminal("plan", "demo/saltmarsh-panel.json"));
            loaded.addAll(terminal("sheet", "demo/saltmarsh-panel.json", "--as", "PDF", "--to", "-"));
            loaded.addAll(terminal("--help"));
            Files.write(list, loaded);
            Path javas = Files.createTempFile("classes", ".txt");
            Files.write(javas, loaded.stream().filter(Archive::ofJava).toList());
            dump.add("-XX:SharedClassListFile=" + javas);
        }
        Process process = new ProcessBuilder(dump).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        if (process.waitFor() != 0) {
            throw new IOException(String.join(" ", dump) + " failed: " + said);
        }
    }

    /** What a window needs in front of the command that opens it; nothing where it can't be opened. */
    private static Optional<List<String>> screen() {
        boolean here = System.getenv("DISPLAY") != null || !System.getProperty("os.name").equals("Linux");
        boolean made = Files.isExecutable(Path.of("/usr/bin/xvfb-run"));
        return here
                ? Optional.of(List.of())
                : made ? Optional.of(List.of("xvfb-run", "-a")) : Optional.empty();
    }

    /** Starts the program as for somebody who never had it, and ends it once nothing more is loaded. */
    private static List<String> start(List<String> screen) throws Exception {
        Path list = Files.createTempFile("window", ".txt");
        List<String> command = new ArrayList<>(screen);
        command.addAll(program(list, "--demo"));
        ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
        Path home = Files.createTempDirectory("nobody");
        for (String each : List.of("XDG_STATE_HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME")) {
            builder.environment().put(each, home.toString());
        }
        Process started = builder.start();
        try {
            waitUntilQuiet(started, list);
        } finally {
            started.descendants().forEach(ProcessHandle::destroy);
            started.destroy();
            started.waitFor();
        }
        return Files.readAllLines(list);
    }

    /** What the terminal needs for that. A sheet takes as much from the window. */
    private static List<String> terminal(String... arguments) throws Exception {
        Path list = Files.createTempFile("terminal", ".txt");
        ProcessBuilder builder = new ProcessBuilder(program(list, arguments));
        if (builder.redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor() != 0) {
            throw new IOException(String.join(" ", arguments) + " failed");
        }
        return Files.readAllLines(list);
    }

    private static List<String> program(Path list, String... arguments) {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:DumpLoadedClassList=" + list, "-cp", System.getProperty("java.class.path"), "thrumwright.app.Main"));
        command.addAll(List.of(arguments));
        return command;
    }

    private static void waitUntilQuiet(Process started, Path list) throws Exception {
        long end = System.currentTimeMillis() + PATIENCE;
        long size = -1;
        int quiet = 0;
        while (quiet < 5 && System.currentTimeMillis() < end) {
            if (started.waitFor(2, TimeUnit.SECONDS)) {
                throw new IOException("the program ended by itself");
            }
            long now = Files.size(list);
            quiet = now > 0 && now == size ? quiet + 1 : 0;
            size = now;
        }
    }

    private static boolean ofJava(String line) {
        String name = line.replaceFirst("^@lambda-proxy ", "");
        return line.startsWith("@lambda-form") || Stream.of("java/", "javax/", "sun/", "jdk/", "com/sun/").anyMatch(name::startsWith);
    }
}
