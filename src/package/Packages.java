import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipFile;

/**
 * Makes what a weaver installs: everywhere a plain application folder with its own Java runtime; on Linux a Debian
 * package, on Windows an installer, on macOS a disk image. The last two were never tried.
 *
 * <p>{@code java -cp thrumwright.jar Packages.java VERSION TARGET}, from the project's folder. Needs a JDK with jlink
 * and jpackage; for the Debian package dpkg-deb, for the Windows installer WiX 3.
 */
final class Packages {
    private static final String NAME = "thrumwright";
    /** jdk.unsupported: PDFBox gives its buffers back through it. jdk.localedata: numbers and words of all places. */
    private static final String MODULES = "java.desktop,java.logging,java.prefs,jdk.unsupported,jdk.accessibility,jdk.localedata";

    /** The first compiler is enough: the second takes a third of the start's work and makes long work no faster. */
    private static final String QUICK = "-XX:TieredStopAtLevel=1";

    /** What the program loads when it starts. */
    private static final String CLASSES = "classes.txt";

    private static final Path SOURCE = Path.of("src", "package");

    /** With digits and points only, as Windows and macOS want it. */
    private final String version;

    private final Path jar;
    private final Path bill;
    private final Path packages;
    private final Path work;

    private Packages(String version, Path target) {
        this.version = version.replaceAll("[^0-9.].*", "");
        this.jar = target.resolve("thrumwright.jar");
        this.bill = target.resolve("thrumwright-bom.json");
        this.packages = target.resolve("packages");
        this.work = target.resolve("packaging");
    }

    public static void main(String[] arguments) throws Exception {
        new Packages(arguments[0], Path.of(arguments[1])).make();
    }

    private void make() throws Exception {
        delete(packages);
        delete(work);
        Files.createDirectories(packages);
        java("Icons.java", work.resolve("icons"));
        String system = System.getProperty("os.name");
        if (system.startsWith("Windows")) {
            folder("thrumwright.ico");
            installer("msi", "--win-menu", "--win-shortcut", "--win-per-user-install");
        } else if (system.startsWith("Mac")) {
            folder("thrumwright.icns");
            installer("dmg", "--mac-package-name", "Thrumwright");
        } else {
            folder("512x512/thrumwright.png");
            if (Files.isExecutable(Path.of("/usr/bin/dpkg-deb"))) {
                debianPackage();
            }
        }
        try (Stream<Path> made = Files.list(packages)) {
            made.sorted().forEach(each -> System.out.println("Made: " + each));
        }
    }

    private void folder(String icon) throws Exception {
        Path input = Files.createDirectories(work.resolve("input"));
        Files.copy(jar, input.resolve("thrumwright.jar"));
        papers(input);
        Path runtime = work.resolve("runtime");
        tool("jlink", "--add-modules", MODULES, "--strip-java-debug-attributes", "--no-header-files", "--no-man-pages",
                "--compress", "2", "--output", runtime.toString());
        java("Archive.java", runtime, input.resolve(CLASSES));
        tool("jpackage", "--type", "app-image", "--name", NAME, "--app-version", version, "--vendor", "Thrumwright",
                "--runtime-image", runtime.toString(), "--input", input.toString(), "--main-jar", "thrumwright.jar",
                "--java-options", QUICK,
                "--main-class", "thrumwright.app.Main", "--icon", work.resolve("icons").resolve(icon).toString(),
                "--dest", packages.toString());
    }

    /** Licence, notices and the bill of materials, to be read without opening the jar. */
    private void papers(Path folder) throws IOException {
        Files.createDirectories(folder);
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            for (String each : List.of("LICENSE", "NOTICE", "THIRD-PARTY.txt")) {
                try (InputStream in = zip.getInputStream(zip.getEntry("META-INF/" + each))) {
                    Files.copy(in, folder.resolve(each));
                }
            }
        }
        if (Files.exists(bill)) {
            Files.copy(bill, folder.resolve("thrumwright-bom.json"));
        }
    }

    /** Windows and macOS; never tried. Both want a first number above 0. */
    private void installer(String type, String... more) throws Exception {
        List<String> arguments = new ArrayList<>(List.of("--type", type, "--name", "Thrumwright", "--app-image",
                packages.resolve(type.equals("dmg") ? NAME + ".app" : NAME).toString(), "--app-version",
                version.replaceFirst("^0\\.", "1."), "--dest", packages.toString(), "--license-file",
                work.resolve("input").resolve("LICENSE").toString()));
        for (Path each : associations()) {
            arguments.addAll(List.of("--file-associations", each.toString()));
        }
        arguments.addAll(List.of(more));
        tool("jpackage", arguments.toArray(String[]::new));
    }

    private List<Path> associations() throws IOException {
        Properties endings = new Properties();
        try (InputStream in = Files.newInputStream(SOURCE.resolve("files.properties"))) {
            endings.load(in);
        }
        List<Path> files = new ArrayList<>();
        for (String ending : new TreeSet<>(endings.stringPropertyNames())) {
            files.add(Files.writeString(work.resolve(ending + ".properties"), "extension=" + ending + "\nmime-type="
                    + endings.getProperty(ending) + "\ndescription=Thrumwright\n"));
        }
        return files;
    }

    /**
     * Everything lies where the system looks for it and is put in its lists by its own triggers. All that runs is what
     * lays the classes ready, and it is taken away again.
     */
    private void debianPackage() throws Exception {
        Path root = work.resolve("debian");
        copy(packages.resolve(NAME), root.resolve("usr/lib").resolve(NAME));
        Path share = root.resolve("usr/share");
        put(SOURCE.resolve("linux/thrumwright.desktop"), share.resolve("applications/thrumwright.desktop"));
        put(SOURCE.resolve("linux/thrumwright.xml"), share.resolve("mime/packages/thrumwright.xml"));
        put(SOURCE.resolve("linux/copyright"), share.resolve("doc/thrumwright/copyright"));
        papers(share.resolve("doc/thrumwright"));
        icons(share.resolve("icons/hicolor"));
        layReady(root);
        Path page = share.resolve("man/man1/thrumwright.1");
        java("Manual.java", version, page, share.resolve("bash-completion/completions/thrumwright"));
        run("gzip", "-9n", page);
        Files.createDirectories(root.resolve("usr/bin"));
        Files.createSymbolicLink(root.resolve("usr/bin/thrumwright"), Path.of("../lib/thrumwright/bin/thrumwright"));
        String architecture = run("dpkg", "--print-architecture").strip();
        control(root, architecture);
        plainRights(root);
        run("dpkg-deb", "--root-owner-group", "-Zxz", "-z1", "--build", root, packages.resolve(NAME + "_" + version + "_" + architecture + ".deb"));
    }

    /** Once it lies where it will be started from, its classes are laid ready there; if that fails, it starts more slowly. */
    private void layReady(Path root) throws IOException {
        Path app = root.resolve("usr/lib").resolve(NAME).resolve("lib/app");
        if (Files.exists(app.resolve(CLASSES))) {
            String options = "java-options=-XX:SharedArchiveFile=$APPDIR/thrumwright.jsa\n";
            Files.writeString(app.resolve(NAME + ".cfg"), options, StandardOpenOption.APPEND);
            put(SOURCE.resolve("linux/postinst"), root.resolve("DEBIAN/postinst"));
            put(SOURCE.resolve("linux/prerm"), root.resolve("DEBIAN/prerm"));
        }
    }

    private void icons(Path theme) throws IOException {
        try (Stream<Path> sizes = Files.list(work.resolve("icons"))) {
            for (Path size : sizes.filter(Files::isDirectory).toList()) {
                Path folder = theme.resolve(size.getFileName().toString());
                put(size.resolve("thrumwright.png"), folder.resolve("apps/thrumwright.png"));
                put(size.resolve("thrumwright-file.png"), folder.resolve("mimetypes/thrumwright-file.png"));
            }
        }
        Path drawn = Path.of("src/main/resources/thrumwright/editor/icons");
        put(drawn.resolve("thrumwright.svg"), theme.resolve("scalable/apps/thrumwright.svg"));
        put(drawn.resolve("thrumwright-file.svg"), theme.resolve("scalable/mimetypes/thrumwright-file.svg"));
    }

    private void control(Path root, String architecture) throws Exception {
        String text = Files.readString(SOURCE.resolve("linux/control"));
        Map<String, String> values = Map.of("version", version, "architecture", architecture, "size",
                Long.toString(size(root) / 1024), "depends", String.join(", ", depends(root)));
        for (Map.Entry<String, String> each : values.entrySet()) {
            text = text.replace("@" + each.getKey() + "@", each.getValue());
        }
        Files.createDirectories(root.resolve("DEBIAN"));
        Files.writeString(root.resolve("DEBIAN/control"), text);
    }

    /** The packages whose libraries the runtime asks for, and what Java looks for by itself: the list of fonts, and a font. */
    private static Set<String> depends(Path root) throws Exception {
        Set<String> libraries = new TreeSet<>();
        for (Path each : files(root)) {
            if (each.toString().matches(".*\\.so|.*/bin/thrumwright|.*/jspawnhelper")) {
                run("ldd", each).lines()
                        .filter(line -> line.contains("=> /") && !line.contains(root.getFileName() + "/usr/lib/" + NAME))
                        .forEach(line -> libraries.add(line.replaceAll(".*=> (\\S+) .*", "$1")));
            }
        }
        Set<String> packages = new TreeSet<>(Set.of("fontconfig", "fonts-dejavu-core | ttf-bitstream-vera", "libfontconfig1"));
        for (String each : libraries) {
            packages.add(owner(each));
        }
        return packages;
    }

    /** Since /lib is /usr/lib, a package may know its library by either name. */
    private static String owner(String library) throws Exception {
        for (String name : List.of(library, "/usr" + library, library.replaceFirst("^/usr", ""))) {
            Process asked = new ProcessBuilder("dpkg", "-S", name).redirectErrorStream(true).start();
            String answer = new String(asked.getInputStream().readAllBytes());
            if (asked.waitFor() == 0) {
                return answer.replaceAll("(?s):.*", "");
            }
        }
        throw new IOException("no package has " + library);
    }

    private static long size(Path root) throws IOException {
        long size = 0;
        for (Path each : files(root)) {
            size += Files.size(each);
        }
        return size;
    }

    private static List<Path> files(Path root) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }

    /** Whatever the umask was here: everybody may read, only the owner may write. */
    private static void plainRights(Path root) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            for (Path each : all.filter(path -> !Files.isSymbolicLink(path)).toList()) {
                boolean runs = Files.isDirectory(each) || Files.isExecutable(each);
                Files.setPosixFilePermissions(each, PosixFilePermissions.fromString(runs ? "rwxr-xr-x" : "rw-r--r--"));
            }
        }
    }

    private static void put(Path from, Path to) throws IOException {
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to.getParent());
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Files.copy(each, to.resolve(from.relativize(each)), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
    }

    private static void tool(String name, String... arguments) throws IOException {
        ToolProvider tool = ToolProvider.findFirst(name)
                .orElseThrow(() -> new IOException("this Java has no " + name + "; a JDK is needed"));
        if (tool.run(System.out, System.err, arguments) != 0) {
            throw new IOException(name + " failed");
        }
    }

    private void java(String program, Object... arguments) throws Exception {
        List<Object> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java"),
                "-Djava.awt.headless=true", "-cp", jar, SOURCE.resolve(program)));
        command.addAll(List.of(arguments));
        run(command.toArray());
    }

    /** What a program said; it must have done its work. */
    private static String run(Object... command) throws Exception {
        List<String> words = Stream.of(command).map(Object::toString).collect(Collectors.toList());
        Process process = new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String said = new String(process.getInputStream().readAllBytes());
        if (process.waitFor() != 0) {
            throw new IOException(String.join(" ", words) + " failed: " + said);
        }
        return said;
    }
}
