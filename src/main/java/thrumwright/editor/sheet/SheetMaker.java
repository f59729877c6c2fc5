package thrumwright.editor.sheet;

import java.awt.EventQueue;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import thrumwright.drawing.Fonts;
import thrumwright.output.SheetLook;
import thrumwright.output.WrittenAt;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;

/**
 * Lays sheets out beside the event thread, one after the other. Of several wishes that wait, only the latest is fulfilled, and
 * those that somebody needs.
 */
public final class SheetMaker {
    private final Fonts fonts;
    private final Locale locale;
    private final Consumer<SheetMade> ready;
    private final ExecutorService worker = Workers.one("sheet layout");
    private volatile Wish latest;

    private static final class Wish {
        final CompletableFuture<SheetPages> pages = new CompletableFuture<>();
        volatile boolean needed;
    }

    /** @param ready is given the sheet, on the event thread */
    public SheetMaker(Fonts fonts, Locale locale, Consumer<SheetMade> ready) {
        this.fonts = fonts;
        this.locale = locale;
        this.ready = ready;
    }

    /** Wants a plan's sheet to look so. */
    public void want(Plan plan, SheetLook look) {
        Wish wish = new Wish();
        latest = wish;
        worker.execute(() -> {
            if (wish == latest || wish.needed) {
                fulfil(wish, plan, look);
            }
        });
    }

    private void fulfil(Wish wish, Plan plan, SheetLook look) {
        try {
            SheetMade made = SheetMade.of(look.written(WrittenAt.now()), plan, fonts, locale);
            EventQueue.invokeLater(() -> ready.accept(made));
            wish.pages.complete(made.pages());
        } catch (RuntimeException | Error fault) {
            wish.pages.completeExceptionally(fault);
            throw fault;
        }
    }

    /**
     * The pages that were wanted last, made even if others are wanted meanwhile.
     *
     * @throws IllegalStateException if none were ever wanted, or no more are made
     */
    public Future<SheetPages> needed() {
        Wish wish = latest;
        if (wish == null) {
            throw new IllegalStateException("no sheet is wanted");
        }
        wish.needed = true;
        return wish.pages;
    }

    /** Makes no more. */
    public void close() {
        latest = null;
        worker.shutdown();
    }
}
