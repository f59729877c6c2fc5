package thrumwright.editor.sheet;

import java.awt.EventQueue;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import thrumwright.drawing.Fonts;
import thrumwright.output.SheetLook;
import thrumwright.output.SheetPages;
import thrumwright.plan.Plan;

/** Lays sheets out beside the event thread. Of several wishes that wait, only the latest is fulfilled. */
public final class SheetMaker {
    private final Fonts fonts;
    private final Locale locale;
    private final Consumer<SheetPages> ready;
    private final ExecutorService worker = Workers.one("sheet layout");
    private final AtomicReference<Wish> latest = new AtomicReference<>();

    private record Wish(Plan plan, SheetLook look) {}

    /** @param ready is given the pages, on the event thread */
    public SheetMaker(Fonts fonts, Locale locale, Consumer<SheetPages> ready) {
        this.fonts = fonts;
        this.locale = locale;
        this.ready = ready;
    }

    /** Wants a plan's sheet to look so. */
    public void want(Plan plan, SheetLook look) {
        Wish wish = new Wish(plan, look);
        latest.set(wish);
        worker.execute(() -> {
            if (latest.get() == wish) {
                SheetPages pages = look.layOut(plan, fonts, locale);
                EventQueue.invokeLater(() -> ready.accept(pages));
            }
        });
    }

    /** Makes no more. */
    public void close() {
        latest.set(null);
        worker.shutdown();
    }
}
