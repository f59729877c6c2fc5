package thrumwright.store;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrase;
import thrumwright.piece.Structure;

/**
 * All structures that there are: those built in, then the weaver's own, which take the place of built-in ones with the
 * same id.
 *
 * @param all in the order in which to show them
 * @param problems one sentence for each file that couldn't be read; the others are there all the same
 */
public record Structures(List<Structure> all, List<String> problems) {
    public Structures {
        all = List.copyOf(all);
        problems = List.copyOf(problems);
    }

    public Optional<Structure> byId(String id) {
        return all.stream().filter(structure -> structure.id().equals(id)).findFirst();
    }

    public static Structures builtIn() {
        Map<String, Structure> found = new LinkedHashMap<>();
        for (String file : BuiltIn.STRUCTURES.names()) {
            try {
                Structure structure =
                        StructureFile.read(BuiltIn.STRUCTURES.text(file)).structure();
                found.put(structure.id(), structure);
            } catch (FileProblem e) {
                throw new IllegalStateException("the built-in structure " + file + " is damaged: " + e.getMessage(), e);
            }
        }
        return new Structures(List.copyOf(found.values()), List.of());
    }

    /** The built-in ones and those in a folder, which need not be there. */
    public static Structures with(Path folder) {
        Map<String, Structure> found = new LinkedHashMap<>();
        builtIn().all().forEach(structure -> found.put(structure.id(), structure));
        List<String> problems = new ArrayList<>();
        for (Path file : files(folder, problems)) {
            try {
                Structure structure = StructureFile.read(SafeFile.read(file)).structure();
                found.put(structure.id(), structure);
            } catch (FileProblem e) {
                problems.add(new Phrase("file.in-structures", Map.of("file", file.getFileName(), "why", e.why()))
                        .toString());
            }
        }
        return new Structures(List.copyOf(found.values()), problems);
    }

    /** The structure files in a folder, in the order in which they are read. */
    static List<Path> files(Path folder, List<String> problems) {
        List<Path> files = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> each = Files.newDirectoryStream(folder, Structures::isMeant)) {
                each.forEach(files::add);
            } catch (IOException | DirectoryIteratorException e) {
                problems.add(new Phrase("file.structures-unread", Map.of("folder", folder)).toString());
            }
        }
        files.sort(null);
        return files;
    }

    private static boolean isMeant(Path file) {
        return FileSort.isOurs(String.valueOf(file.getFileName())) && Files.isRegularFile(file);
    }
}
