package thrumwright.editor.sheet;

import java.awt.EventQueue;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.IntConsumer;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.SheetPages;

/** Pictures of pages, painted beside the event thread in the order in which they are wanted. For the event thread. */
final class PageImages {
    /** Pixels of all pictures that are kept though they aren't wanted just now. */
    private static final long MOST_PIXELS = 16_000_000;

    private final ExecutorService painter = Workers.one("sheet painting");
    private final Map<Integer, Painted> painted = new LinkedHashMap<>(16, 0.75f, true);
    private final IntConsumer arrived;
    private List<Wanted> needed = List.of();
    private List<Wanted> wanted = List.of();
    private boolean painting;

    /**
     * A picture that is wanted.
     *
     * @param scale dots in a point
     * @param part of the page, dots
     */
    record Wanted(SheetPages pages, int page, double scale, Rectangle part) {
        boolean covers(Wanted other) {
            return pages == other.pages && page == other.page && scale == other.scale && part.contains(other.part);
        }
    }

    /** A picture that there is. */
    record Painted(Wanted of, BufferedImage image) {}

    /** @param arrived is told the page of which there is a new picture */
    PageImages(IntConsumer arrived) {
        this.arrived = arrived;
    }

    /** The latest picture of a page, though it may show it as it was, or at another scale. */
    Optional<Painted> of(int page) {
        return Optional.ofNullable(painted.get(page));
    }

    /** Wants these pictures, the first one first, and no others any more. */
    void want(List<Wanted> now) {
        List<Wanted> missing = new ArrayList<>();
        for (Wanted each : now) {
            if (of(each.page()).filter(there -> there.of().covers(each)).isEmpty()) {
                missing.add(each);
            }
        }
        needed = List.copyOf(now);
        wanted = missing;
        next();
    }

    private void next() {
        if (painting || wanted.isEmpty() || painter.isShutdown()) {
            return;
        }
        painting = true;
        Wanted first = wanted.get(0);
        wanted = wanted.subList(1, wanted.size());
        painter.execute(() -> paint(first));
    }

    private void paint(Wanted what) {
        Optional<BufferedImage> image = Optional.empty();
        try {
            image = Optional.of(PngFile.picture(what.pages(), what.page(), what.scale(), what.part()));
        } finally {
            Optional<BufferedImage> made = image;
            EventQueue.invokeLater(() -> take(what, made));
        }
    }

    private void take(Wanted what, Optional<BufferedImage> image) {
        painting = false;
        image.ifPresent(made -> {
            painted.put(what.page(), new Painted(what, made));
            dropOldest();
            arrived.accept(what.page());
        });
        next();
    }

    private void dropOldest() {
        long pixels = painted.values().stream()
                .mapToLong(each -> (long) each.image().getWidth() * each.image().getHeight())
                .sum();
        Iterator<Painted> oldest = painted.values().iterator();
        while (pixels > MOST_PIXELS && oldest.hasNext()) {
            Painted each = oldest.next();
            if (needed.stream().noneMatch(wish -> wish.page() == each.of().page())) {
                pixels -= (long) each.image().getWidth() * each.image().getHeight();
                oldest.remove();
            }
        }
    }

    /** Paints no more. */
    void close() {
        wanted = List.of();
        painter.shutdownNow();
    }
}
