package thrumwright.editor.window.classroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thrumwright.measure.Phrase;
import thrumwright.piece.ClassSet;
import thrumwright.plan.Plan;
import thrumwright.sheet.Whereabouts;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;

/**
 * Who of a class stands where, by the piece files that came back from the looms.
 *
 * @param lines first the members in their order, then files that are nobody's
 */
record Standings(List<Line> lines) {
    /**
     * @param who the member, or the file that is nobody's
     * @param standing what its file says; empty if there is none
     * @param problem why a file can't be read; empty if it can
     */
    record Line(String who, Optional<Whereabouts> standing, String problem) {}

    Standings {
        lines = List.copyOf(lines);
    }

    /**
     * @param members what they are called; one's file has the name in its own or in its piece's title
     * @param folder whose piece files are read
     * @throws FileProblem if the folder can't be read
     */
    static Standings in(Path folder, List<String> members, Locale locale) throws FileProblem {
        List<Read> files =
                files(folder).stream().map(path -> Read.of(path, locale)).toList();
        List<Line> lines = new ArrayList<>();
        List<Read> left = new ArrayList<>(files);
        for (String member : members) {
            Optional<Read> own = left.stream().filter(file -> file.isOf(member)).findFirst();
            own.ifPresent(left::remove);
            lines.add(own.map(file -> file.line(member)).orElseGet(() -> new Line(member, Optional.empty(), "")));
        }
        left.forEach(file -> lines.add(file.line(file.name())));
        return new Standings(lines);
    }

    private static List<Path> files(Path folder) throws FileProblem {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> path.toString().endsWith(FileSort.PIECE.ending()))
                    .sorted()
                    .limit(2L * ClassSet.MOST_MEMBERS)
                    .toList();
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("file.folder-unreadable", Map.of("folder", folder.toString())), e);
        }
    }

    /** @param title of the piece */
    private record Read(String name, String title, Optional<Whereabouts> standing, String problem) {
        static Read of(Path path, Locale locale) {
            String name = String.valueOf(path.getFileName());
            try {
                Plan plan = Plan.of(PieceFile.read(SafeFile.read(path)).piece());
                return new Read(name, plan.piece().title(), Optional.of(Whereabouts.of(plan, locale)), "");
            } catch (FileProblem problem) {
                return new Read(name, "", Optional.empty(), problem.getMessage());
            }
        }

        boolean isOf(String member) {
            String whose = member.strip().toLowerCase(Locale.ROOT);
            return !whose.isEmpty()
                    && (name + "\n" + title).toLowerCase(Locale.ROOT).contains(whose);
        }

        Line line(String who) {
            return new Line(who, standing, problem);
        }
    }
}
