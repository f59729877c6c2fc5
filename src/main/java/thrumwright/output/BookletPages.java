package thrumwright.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.SewnPicture;
import thrumwright.measure.Phrases;
import thrumwright.output.page.EvenPages;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Pages;
import thrumwright.output.page.Part;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Type;
import thrumwright.output.part.KindPart;
import thrumwright.output.part.KindPictures;
import thrumwright.output.part.KindWords;
import thrumwright.output.part.PartMaker;
import thrumwright.output.part.SpacePart;
import thrumwright.output.part.TogetherPart;
import thrumwright.plan.Plan;
import thrumwright.sheet.Booklet;
import thrumwright.sheet.BookletEntry;
import thrumwright.sheet.StageWords;

/**
 * Lays a booklet out: one part for each kind of block.
 *
 * @param plan whose blocks are drawn
 * @param title at its head and at the foot of its pages
 */
record BookletPages(Booklet booklet, Plan plan, String title, PageSetup setup, Palette palette, Locale locale) {
    private static final double SPACE = 6;
    /** Few entries go on over a page; more do where that saves a page or fills one. */
    private static final List<Parting> PARTINGS =
            List.of(new Parting(0.6, Double.MAX_VALUE), new Parting(0.42, 0.5), new Parting(0.25, 0.5));

    /**
     * What of an entry is set in parts of their own, as shares of a page, more than 0.
     *
     * @param words higher than this its words go on below it
     * @param pictures higher than this with all that its words can give away, right and wrong go on below its pictures
     */
    private record Parting(double words, double pictures) {
        Parting of(Pages pages) {
            return new Parting(words * pages.height(), pictures * pages.height());
        }
    }

    SheetPages laidOut(Fonts fonts) {
        SheetPages best = Densities.best(setup, fonts, type -> pages(type, PARTINGS.get(0)));
        for (Parting more : PARTINGS.subList(1, PARTINGS.size())) {
            if (best.halfEmpty() > 0 || best.aPageToSpare()) {
                SheetPages parted = Densities.best(setup, fonts, type -> pages(type, more));
                best = Densities.saves(parted, best) ? parted : best;
            }
        }
        return best;
    }

    private SheetPages pages(Type type, Parting parting) {
        PartMaker make = new PartMaker(type, palette, Phrases.of("thrumwright.sheet.steps", locale));
        Pages pages = new Pages(setup, Densities.FOOTER);
        pages.addTogether(List.of(
                make.section(make.phrases().say("booklet.title")),
                make.body(make.phrases().say("booklet.about")),
                make.body(make.phrases().say("caution.hands"))));
        EvenPages even = new EvenPages(pages);
        booklet.entries().forEach(entry -> even.add(parts(entry, make, pages.width(), parting.of(pages))));
        return new SheetPages(setup, title, type, palette, even.placed());
    }

    private List<Part> parts(BookletEntry entry, PartMaker make, double width, Parting parting) {
        KindWords words = new KindWords(pictures(entry, make), words(entry, make));
        int all = words.words().size();
        int least = Math.max(1, words.besideSlips(width));
        int beside = all;
        while (beside > least && whole(entry, make, words.first(beside)).height(width) > parting.words()) {
            beside--;
        }
        List<Part> parts = new ArrayList<>(head(entry, make, words.first(beside), width, parting.pictures()));
        for (int i = beside; i < all; i++) {
            Part line = words.words().get(i);
            parts.add(i == all - 1 ? new TogetherPart(List.of(line, new SpacePart(SPACE))) : line);
        }
        return parts;
    }

    /** In one; what stands beside right and wrong is a part of its own where it would be too high below the pictures. */
    private static List<Part> head(BookletEntry entry, PartMaker make, KindWords words, double width, double highest) {
        Part whole = whole(entry, make, words);
        return words.besideSlips(width) > 0 && whole.height(width) > highest
                ? List.of(new KindPart(heads(entry), words.pictures(), Optional.empty(), make), words)
                : List.of(whole);
    }

    private static Part whole(BookletEntry entry, PartMaker make, KindWords words) {
        return new KindPart(heads(entry), words.pictures(), Optional.of(words), make);
    }

    private static List<String> heads(BookletEntry entry) {
        return entry.heads().stream()
                .map(head -> head.numbers() + "  " + head.title())
                .toList();
    }

    private static List<Part> words(BookletEntry entry, PartMaker make) {
        List<Part> words = new ArrayList<>();
        entry.sentences().forEach(sentence -> words.add(make.body(sentence)));
        entry.cautions().forEach(caution -> words.add(make.caution(caution)));
        return words;
    }

    private KindPictures pictures(BookletEntry entry, PartMaker make) {
        return entry.sewn()
                .map(sewn -> KindPictures.of(new SewnPicture(plan, sewn, sewn.says(locale)), make))
                .orElseGet(() -> KindPictures.of(plan, new StageWords(plan, locale), entry.pictures(), make));
    }
}
