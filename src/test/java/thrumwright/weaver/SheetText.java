package thrumwright.weaver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.block.Side;

/** A step sheet taken apart as an eye does it: headings, boxes to tick, sentences. */
final class SheetText {
    private static final Pattern STEP = Pattern.compile("☐ (\\d+) (.*)");
    private static final Pattern ROW = Pattern.compile(" {5}☐ (\\d+)(?:–(\\d+))? ([→←↔]) (.*)");

    private final List<String> lines;
    private final List<Chapter> chapters = new ArrayList<>();
    private final StringBuilder before = new StringBuilder();
    private StringBuilder words = before;
    private Optional<StringBuilder> row = Optional.empty();

    /** @param opening what stands before its first step */
    record Chapter(String title, StringBuilder opening, List<Step> steps) {}

    record Step(int number, String title, StringBuilder words, List<RowTold> rows) {
        List<String> sentences() {
            return SheetText.sentences(words.toString());
        }
    }

    /** @param from empty where several rows are told at once */
    record RowTold(int first, int last, Optional<Side> from, StringBuilder words) {}

    private SheetText(String text) {
        this.lines = text.lines().toList();
    }

    static SheetText of(String text) {
        SheetText sheet = new SheetText(text);
        for (int i = 0; i < sheet.lines.size(); i++) {
            sheet.line(i);
        }
        return sheet;
    }

    List<Chapter> chapters() {
        return chapters;
    }

    /** All that stands before the first chapter. */
    String head() {
        return before.toString();
    }

    Optional<Chapter> chapter(String title) {
        return chapters.stream()
                .filter(chapter -> chapter.title().equals(title))
                .findFirst();
    }

    private boolean heading(int i) {
        return i < lines.size() - 1
                && lines.get(i + 1).matches("-+")
                && !lines.get(i).isBlank();
    }

    private void line(int i) {
        String line = lines.get(i);
        if (heading(i)) {
            chapters.add(new Chapter(line, new StringBuilder(), new ArrayList<>()));
            words = chapters.get(chapters.size() - 1).opening();
            row = Optional.empty();
        } else if (!line.matches("[-=]+")) {
            text(line);
        }
    }

    private void text(String line) {
        Matcher step = STEP.matcher(line);
        Matcher told = ROW.matcher(line);
        if (!chapters.isEmpty() && step.matches()) {
            Step begun = new Step(
                    Integer.parseInt(step.group(1)), step.group(2).strip(), new StringBuilder(), new ArrayList<>());
            steps().add(begun);
            words = begun.words();
            row = Optional.empty();
        } else if (!chapters.isEmpty() && !steps().isEmpty() && told.matches()) {
            RowTold begun = row(told);
            steps().get(steps().size() - 1).rows().add(begun);
            row = Optional.of(begun.words());
        } else if (row.isPresent() && line.startsWith(" ".repeat(9))) {
            row.get().append(' ').append(line.strip());
        } else {
            row = Optional.empty();
            words.append(words.isEmpty() ? "" : " ").append(line.strip());
        }
    }

    private List<Step> steps() {
        return chapters.get(chapters.size() - 1).steps();
    }

    private static RowTold row(Matcher told) {
        int first = Integer.parseInt(told.group(1));
        Optional<Side> from = told.group(3).equals("↔")
                ? Optional.empty()
                : Optional.of(told.group(3).equals("→") ? Side.LEFT : Side.RIGHT);
        int last = told.group(2) == null ? first : Integer.parseInt(told.group(2));
        return new RowTold(first, last, from, new StringBuilder(told.group(4)));
    }

    /** Sentences end with a full stop before a space. What to take in hand comes first and ends with the widths. */
    static List<String> sentences(String words) {
        String work = words.replaceFirst(
                        "^.*?(?:× the width of the (?:warp|loom)|: nothing to cut; the yarn of the step “.*?” goes on) ",
                        "")
                .strip();
        List<String> sentences = new ArrayList<>();
        for (String sentence : work.split("(?<=\\.)\\s+")) {
            if (!sentence.isBlank()) {
                sentences.add(sentence.strip());
            }
        }
        return sentences;
    }
}
