package thrumwright.editor.library;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import thrumwright.measure.Phrase;
import thrumwright.piece.Structure;
import thrumwright.store.FileProblem;
import thrumwright.store.OwnStructures;
import thrumwright.store.SafeFile;
import thrumwright.store.StructureFile;
import thrumwright.store.Structures;

/** All structures to choose from, with the weaver's own among them. */
public final class Library {
    private final Optional<Path> folder;
    private Optional<Structures> read;

    private Library(Optional<Path> folder, Optional<Structures> read) {
        this.folder = folder;
        this.read = read;
    }

    /** With the own structures of a folder, which need not be there. All are read when they are first asked for. */
    public static Library of(Path folder) {
        return new Library(Optional.of(folder), Optional.empty());
    }

    /** Those structures and no folder to keep others in. */
    public static Library fixed(List<Structure> structures) {
        return new Library(Optional.empty(), Optional.of(new Structures(structures, List.of())));
    }

    /** Any thread may be the first. */
    private synchronized Structures structures() {
        if (read.isEmpty()) {
            read = folder.map(Structures::with);
        }
        return read.orElseThrow();
    }

    public List<Structure> all() {
        return structures().all();
    }

    /** A sentence for each file that couldn't be read. */
    public List<String> problems() {
        return structures().problems();
    }

    /** Whether one of that id is the weaver's own. */
    public boolean own(String id) {
        return folder.map(OwnStructures::new).map(own -> own.has(id)).orElse(false);
    }

    public Optional<Structure> byId(String id) {
        return structures().byId(id);
    }

    /** An id that no structure has, made from a name: {@code marsh-edge}, {@code marsh-edge-2} … */
    public String freeId(String name) {
        String stem = Structure.idFrom(name);
        String id = stem;
        for (int i = 2; byId(id).isPresent(); i++) {
            id = stem + "-" + i;
        }
        return id;
    }

    /**
     * A structure to hand on, with whatever its file held besides if it is one of the weaver's own.
     *
     * @throws FileProblem if its file can't be read
     */
    public StructureFile toHandOn(Structure structure) throws FileProblem {
        boolean here = own(structure.id()) && byId(structure.id()).equals(Optional.of(structure));
        return here ? ownFolder().read(structure.id()) : StructureFile.of(structure);
    }

    /** @throws FileProblem if it can't be kept */
    public void keep(Structure structure) throws FileProblem {
        ownFolder().keep(structure);
        reload();
    }

    /** Keeps a structure that came from elsewhere, with whatever its file held besides. */
    public void keep(StructureFile file) throws FileProblem {
        ownFolder().keep(file);
        reload();
    }

    /** @throws FileProblem if it can't be taken away */
    public void remove(String id) throws FileProblem {
        ownFolder().remove(id);
        reload();
    }

    private OwnStructures ownFolder() throws FileProblem {
        return new OwnStructures(
                folder.orElseThrow(() -> SafeFile.problem(new Phrase("file.no-own-structures"), null)));
    }

    private synchronized void reload() {
        read = Optional.empty();
    }
}
