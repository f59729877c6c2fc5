import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Gathers what the libraries ask to be told: a heading for each, below it its notice and its licence, each text once.
 *
 * <p>Run by the build: {@code java Notices.java FOLDER CLASSPATH OUT [HEADING FILE]…}. The folder holds texts for libraries whose
 * files carry none, named after how the library's file name begins. A library without any licence ends the build.
 */
final class Notices {
    private final StringBuilder told = new StringBuilder();
    private final Map<String, String> before = new HashMap<>();
    private final Path own;

    private Notices(Path own) {
        this.own = own;
    }

    public static void main(String[] arguments) throws IOException {
        Notices notices = new Notices(Path.of(arguments[0]));
        notices.told.append("What travels along with Thrumwright, and under which terms\n");
        for (Path jar : jars(arguments[1])) {
            notices.add(jar.getFileName().toString().replaceAll("\\.jar$", ""), texts(jar));
        }
        for (int i = 3; i + 1 < arguments.length; i += 2) {
            notices.add(arguments[i], List.of(Files.readString(Path.of(arguments[i + 1]))));
        }
        Path out = Path.of(arguments[2]);
        Files.createDirectories(out.getParent());
        Files.writeString(out, notices.told);
    }

    private static List<Path> jars(String classpath) {
        return Stream.of(classpath.split(File.pathSeparator))
                .filter(each -> each.endsWith(".jar"))
                .map(Path::of)
                .sorted(Comparator.comparing(Path::getFileName))
                .toList();
    }

    /** Notices first, as they are short. */
    private static List<String> texts(Path jar) throws IOException {
        List<String> texts = new ArrayList<>();
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            List<? extends ZipEntry> entries = zip.stream()
                    .filter(each -> each.getName().matches("META-INF/[^/]*(LICENSE|NOTICE)[^/]*"))
                    .sorted(Comparator.comparing((ZipEntry each) -> !each.getName().contains("NOTICE"))
                            .thenComparing(ZipEntry::getName))
                    .toList();
            for (ZipEntry each : entries) {
                texts.add(new String(zip.getInputStream(each).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return texts;
    }

    private void add(String name, List<String> texts) throws IOException {
        told.append("\n\n").append("=".repeat(72)).append('\n').append(name).append('\n').append("=".repeat(72));
        for (String text : texts.isEmpty() ? List.of(written(name)) : texts) {
            String known = before.putIfAbsent(text.replaceAll("\\s+", " ").strip(), name);
            told.append("\n\n").append(known == null ? text.strip() : "The same text as for " + known + ".").append('\n');
        }
    }

    private String written(String name) throws IOException {
        try (Stream<Path> files = Files.list(own)) {
            Path file = files.filter(each -> name.startsWith(each.getFileName().toString().replace(".txt", "")))
                    .findFirst()
                    .orElseThrow(() -> new IOException(name + " has no licence: put its text into " + own));
            return Files.readString(file);
        }
    }
}
