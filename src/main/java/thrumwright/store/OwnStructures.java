package thrumwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import thrumwright.piece.Structure;

/** The folder of the weaver's own structures: one file each, named after its id. */
public final class OwnStructures {
    private final Path folder;

    /** @param folder which need not be there yet */
    public OwnStructures(Path folder) {
        this.folder = Objects.requireNonNull(folder);
    }

    public Path file(String id) {
        return folder.resolve(id + ".json");
    }

    /** Whether there is an own structure of that id in a file named after it. */
    public boolean has(String id) {
        return Files.isRegularFile(file(id));
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
            throw new FileProblem("The folder for your own structures, " + folder + ", can't be made.", e);
        }
        SafeFile.write(file(file.structure().id()), text);
    }

    /** A damaged file holds nothing worth keeping beside what takes its place. */
    private Optional<StructureFile> old(String id) {
        if (!has(id)) {
            return Optional.empty();
        }
        try {
            return Optional.of(StructureFile.read(SafeFile.read(file(id))));
        } catch (FileProblem e) {
            return Optional.empty();
        }
    }

    /**
     * Takes an own structure away; a built-in one of the same id shows again.
     *
     * @throws FileProblem if that can't be done
     */
    public void remove(String id) throws FileProblem {
        try {
            Files.deleteIfExists(file(id));
        } catch (IOException e) {
            throw new FileProblem(file(id) + " can't be taken away.", e);
        }
    }
}
