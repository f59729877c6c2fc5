package thrumwright.output.card;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thrumwright.sheet.card.CardRow;
import thrumwright.sheet.card.CardWay;

/** The large words of a row, in lines. */
record RowWords(CardRow row, double width, CardStyle style) {
    private static final int NAME_LINES = 3;

    private LargeWord word(String text, String says) {
        return LargeWord.of(text, style.word(), says, style);
    }

    /** A long name takes some lines and no more; the sheet has all of it. */
    private List<LargeWord> name() {
        List<LargeWord> lines =
                LargeWord.of(row.name(), style.name(), "", style).broken(width, style);
        int most = style.form().bare() ? 1 : NAME_LINES;
        return lines.size() <= most ? lines : shortened(lines.subList(0, most));
    }

    private List<LargeWord> shortened(List<LargeWord> lines) {
        int last = lines.size() - 1;
        List<LargeWord> shown = new ArrayList<>(lines.subList(0, last));
        String cut = style.widths().shortened(lines.get(last).text() + " …", style.name(), width);
        shown.add(LargeWord.of(cut, style.name(), "", style));
        return shown;
    }

    private Optional<LargeWord> reach() {
        return row.reach().map(reach -> word(reach.shown(), reach.says()).atEnd());
    }

    private Optional<LargeWord> count() {
        return row.count().map(count -> word(count.shown(), count.says()));
    }

    /** The first row; what is heard is the second too. */
    private List<LargeWord> ways() {
        String all = row.ways().stream().map(CardWay::says).collect(Collectors.joining(". "));
        return row.ways().stream()
                .limit(row.twoWays() ? 2 : 1)
                .map(way -> word(way.arrow() + " " + way.brief(), row.twoWays() ? way.says() : all))
                .toList();
    }

    private List<LargeWord> work() {
        List<LargeWord> words = new ArrayList<>();
        row.large().forEach(text -> words.add(word(text, text)));
        words.addAll(ways());
        count().ifPresent(words::add);
        return words;
    }

    LargeLines one() {
        List<LargeWord> words = new ArrayList<>(name());
        words.addAll(work());
        reach().ifPresent(words::add);
        return LargeLines.of(words, width, style);
    }

    /** The name, with the height at the end of its line if that fits; below it how it is worked. */
    LargeLines twoOrMore() {
        LargeLines name = LargeLines.of(name(), width, style);
        List<LargeWord> first = new ArrayList<>(name());
        reach().ifPresent(first::add);
        LargeLines withReach = LargeLines.of(first, width, style);
        if (withReach.lines().size() == name.lines().size()) {
            return withReach.and(LargeLines.of(work(), width, style));
        }
        List<LargeWord> second = work();
        reach().ifPresent(second::add);
        return name.and(LargeLines.of(second, width, style));
    }

    /** Whether a capital of the name has an accent, which stands out of its line. */
    boolean accented() {
        return row.name()
                .codePoints()
                .filter(Character::isUpperCase)
                .anyMatch(letter -> Normalizer.normalize(Character.toString(letter), Normalizer.Form.NFD)
                                .length()
                        > 1);
    }
}
