package thrumwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import thrumwright.piece.Structure;

/** The folder of the weaver's own structures: one file each. Those kept here are named after their ids; those put in by hand may be called anything. */
public final class OwnStructures {
    private final Path folder;

    /** @param folder which need not be there yet */
    public OwnStructures(Path folder) {
        this.folder = Objects.requireNonNull(folder);
    }

    /**
     * The file that holds the own structure of that id, whatever it is called; of several the one that shows. Where there is none,
     * the file that it would get: named after its id, but never one that is there already, whatever it holds.
     */
    public Path file(String id) {
        return holding(id).reduce((before, after) -> after).orElseGet(() -> free(id));
    }

    /** Whether there is an own structure of that id. */
    public boolean has(String id) {
        return holding(id).findAny().isPresent();
    }

    /**
     * As it lies in its file, with what this version doesn't know of it.
     *
     * @throws FileProblem if there is none, or it can't be read
     */
    public StructureFile read(String id) throws FileProblem {
        return StructureFile.read(SafeFile.read(file(id)));
    }

    private Stream<Path> holding(String id) {
        return Structures.files(folder, new ArrayList<>()).stream().filter(file -> id.equals(idIn(file)));
    }

    /** Empty for a file that can't be read: nobody knows what it holds, so nothing takes its place. */
    private static String idIn(Path file) {
        try {
            return StructureFile.read(SafeFile.read(file)).structure().id();
        } catch (FileProblem e) {
            return "";
        }
    }

    private Path free(String id) {
        Path file = folder.resolve(id + FileSort.STRUCTURE.ending());
        for (int i = 2; Files.exists(file); i++) {
            file = folder.resolve(id + "-" + i + FileSort.STRUCTURE.ending());
        }
        return file;
    }

    /**
     * Keeps a structure, in the place of an own one with the same id. What an older file held besides is kept too.
     *
     * @throws FileProblem if that can't be done; the old file is then as it was
     */
    public void keep(Structure structure) throws FileProblem {
        Unknown before = old(structure.id()).map(StructureFile::unknown).orElse(Unknown.none());
        keep(new StructureFile(structure, before));
    }

    /** As {@link #keep(Structure)}, with what this version didn't know of it. */
    public void keep(StructureFile file) throws FileProblem {
        String text = file.checkedText();
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new FileProblem("file.structures-unmade", Map.of("folder", folder), e);
        }
        SafeFile.write(file(file.structure().id()), text);
    }

    private Optional<StructureFile> old(String id) throws FileProblem {
        return has(id) ? Optional.of(read(id)) : Optional.empty();
    }

    /**
     * Takes an own structure away; a built-in one of the same id shows again.
     *
     * @throws FileProblem if that can't be done
     */
    public void remove(String id) throws FileProblem {
        for (Path file : holding(id).toList()) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                throw new FileProblem("file.not-removed", Map.of("file", file), e);
            }
        }
    }
}
