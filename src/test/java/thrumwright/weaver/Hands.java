package thrumwright.weaver;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.block.Side;

/**
 * What a weaver's hands do with one yarn, as a step's sentences tell them. Every sentence must be understood: what says
 * nothing of the yarn's way is known as such.
 */
abstract class Hands {
    /** The outermost end or ends: “the left edge end”, “the outermost 2 ends at the right”; once they were “the first”. */
    static final String OUTERMOST = "(?:the (?:first(?: (\\d+))? ends?|(left|right) edge end|outermost (\\d+) ends)"
            + "(?: at the (left|right))?)";

    private static final Pattern LEANING = Pattern.compile("leans ([/\\\\]), yarn comes up (below|above)");
    private static final List<String> NOT_OF_THE_WAY = List.of(
            "This comes out again at the end\\.",
            "! .*",
            "This block is .* high\\.",
            "It lies on what is woven and adds no height\\.",
            "Its upper edge now stands .*\\.",
            "Cut it in one length, and .*\\.",
            "Don’t join it: .*\\.",
            "Beside the rows / and .*\\.",
            "When a butterfly runs out, lay in the next one .*\\.");

    private final Map<Pattern, Consumer<Matcher>> readings = new LinkedHashMap<>();
    private final int ends;
    private final List<Cloth.Tail> tails = new ArrayList<>();
    private Optional<Side> begins = Optional.empty();
    private Optional<Side> finishes = Optional.empty();
    private int rowCount = 1;

    Hands(int ends) {
        this.ends = ends;
        NOT_OF_THE_WAY.forEach(this::lets);
        when("Begin at the (left|right)(?: and leave a tail of .* hanging there)?\\.", said -> {
            begins = Optional.of(side(said.group(1)));
            if (said.group().contains("tail")) {
                tail(begins.get());
            }
        });
        when("Begin at the (left|right), with the yarn that still hangs there from the step “.*”\\.", said -> {
            begins = Optional.of(side(said.group(1)));
            tail(begins.get(), Cloth.Kept.FROM_BEFORE);
        });
        when(
                "Don’t go on with the yarn of the step “.*”: it would turn back without going round the (left|right)"
                        + " edge end, and hold nothing there\\.",
                said -> anew(side(said.group(1))));
        when(
                "Lead it outward over the (left|right) edge end first, and round it\\.",
                said -> outward(side(said.group(1))));
        when(
                "Don’t cut it: the step “.*” goes on with it\\.",
                said -> tail(finishes.orElseThrow(), Cloth.Kept.GOES_ON));
        when("Leave a tail of .* hanging there\\.", said -> tail(begins.orElseThrow()));
        when("The yarn ends at the (left|right)\\.", said -> finishes = Optional.of(side(said.group(1))));
        when("Leave a tail of .* there\\.", said -> tail(finishes.orElseThrow()));
    }

    private void outward(Side side) {
        if (side != begins() || tails.stream().noneMatch(tail -> tail.kept() == Cloth.Kept.FROM_BEFORE)) {
            throw new Unclear("The yarn that goes on hangs at the " + begins() + ", not at the " + side);
        }
    }

    private void anew(Side side) {
        if (side != begins() || tails.stream().anyMatch(tail -> tail.kept() == Cloth.Kept.FROM_BEFORE)) {
            throw new Unclear("Here a yarn of its own begins at the " + begins() + ", not at the " + side);
        }
    }

    final void when(String regex, Consumer<Matcher> does) {
        readings.put(Pattern.compile(regex), does);
    }

    /** Understood, but not of the yarn's way. */
    final void lets(String regex) {
        when(regex, said -> {});
    }

    final void hear(String sentence) {
        for (Map.Entry<Pattern, Consumer<Matcher>> reading : readings.entrySet()) {
            Matcher said = reading.getKey().matcher(sentence);
            if (said.matches()) {
                reading.getValue().accept(said);
                return;
            }
        }
        throw new Unclear("What does this mean? “" + sentence + "”");
    }

    /** The cloth of all that was heard. */
    final Cloth weave(List<SheetText.RowTold> told) {
        List<ClothRow> rows = new ArrayList<>();
        Side from = begins();
        for (int row = 1; row <= rowCount; row++) {
            Optional<SheetText.RowTold> line = line(told, row);
            Side now = from;
            line.flatMap(SheetText.RowTold::from).filter(side -> side != now).ifPresent(side -> {
                throw new Unclear("The yarn is at the " + now + ", and the row list begins at the " + side);
            });
            rows.add(row(
                    row,
                    from,
                    line.filter(each -> each.from().isPresent())
                            .map(each -> each.words().toString())));
            from = from.other();
        }
        int last = told.isEmpty() ? rowCount : told.get(told.size() - 1).last();
        if (last != rowCount) {
            throw new Unclear("The sentences say " + rowCount + " rows and the row list " + last);
        }
        Side at = from;
        finishes.filter(side -> side != at).ifPresent(side -> {
            throw new Unclear("The yarn comes out at the " + at + " and is to end at the " + side);
        });
        return new Cloth(rows, tails);
    }

    private static Optional<SheetText.RowTold> line(List<SheetText.RowTold> told, int row) {
        Optional<SheetText.RowTold> line = told.stream()
                .filter(each -> each.first() <= row && row <= each.last())
                .findFirst();
        if (line.isEmpty()) {
            throw new Unclear("The row list lacks row " + row);
        }
        if (line.get().from().isEmpty() && !line.get().words().toString().equals("go on by turns, as rows 1 and 2")) {
            throw new Unclear("What does this mean? “" + line.get().words() + "”");
        }
        return line;
    }

    /** @param told what the row list says of it, if it says so for this row alone */
    abstract ClothRow row(int number, Side from, Optional<String> told);

    final int ends() {
        return ends;
    }

    /** The warp end at a place counted from 0 at the side where a row begins. */
    final int end(Side from, int index) {
        return from == Side.LEFT ? index : ends - 1 - index;
    }

    final Side begins() {
        return begins.orElseThrow(() -> new Unclear("Nothing says at which side to begin"));
    }

    final void begin(Side side) {
        begins = Optional.of(side);
    }

    final void finish(Side side) {
        finishes = Optional.of(side);
    }

    final Side finishes() {
        return finishes.orElseThrow(() -> new Unclear("Nothing says at which side the yarn ends"));
    }

    final void rowCount(String count) {
        rowCount = Integer.parseInt(count);
    }

    private void tail(Side side) {
        tail(side, Cloth.Kept.HANGING);
    }

    final void tail(Side side, Cloth.Kept kept) {
        tails.add(new Cloth.Tail(side, kept));
    }

    static Side side(String word) {
        return word.equals("left") ? Side.LEFT : Side.RIGHT;
    }

    static ClothRow.ComesUp comesUp(String word) {
        return word.equals("below") ? ClothRow.ComesUp.BELOW : ClothRow.ComesUp.ABOVE;
    }

    /**
     * How many outermost ends are meant, of those at the side where a row begins.
     *
     * @param at the first of the groups of {@link #OUTERMOST}
     */
    final int outermost(Matcher said, int at, Side from) {
        for (int named : new int[] {at + 1, at + 3}) {
            String word = said.group(named);
            if (word != null && side(word) != from) {
                throw new Unclear("The row begins at the " + from + ": “" + said.group() + "”");
            }
        }
        String several = said.group(at) == null ? said.group(at + 2) : said.group(at);
        return several == null ? 1 : Integer.parseInt(several);
    }

    /** “end” or “2 ends”. */
    static int count(String words) {
        return words.matches("\\d+ ends?") ? Integer.parseInt(words.substring(0, words.indexOf(' '))) : 1;
    }

    /** The row list says of a row what the sentences say. */
    static void agree(Side from, ClothRow.ComesUp up, String line) {
        Matcher said = LEANING.matcher(line);
        if (!said.matches()) {
            throw new Unclear("What does this mean? “" + line + "”");
        } else if (comesUp(said.group(2)) != up) {
            throw new Unclear("The sentences say that yarn comes up " + up + ", and the row list “" + line + "”");
        }
        agreeLean(from, up, said.group(1));
    }

    /** A stitch that rises along its way leans up to the side where it goes. */
    static void agreeLean(Side from, ClothRow.ComesUp up, String leans) {
        boolean toTheRight = leans.equals("right") || leans.equals("/") || leans.equals("Z");
        boolean rises = up == ClothRow.ComesUp.BELOW;
        if (toTheRight != (rises == (from == Side.LEFT))) {
            throw new Unclear("Yarn that comes up " + up + ", beginning at the " + from + ", doesn't lean " + leans);
        }
    }
}
