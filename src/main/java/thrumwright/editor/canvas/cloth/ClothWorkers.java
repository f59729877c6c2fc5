package thrumwright.editor.canvas.cloth;

import java.awt.EventQueue;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** Paint parts of cloths beside the event thread. Only what was asked for last is done. */
final class ClothWorkers {
    private static final int MOST = 4;
    private static final long STAY_SECONDS = 5;

    private final int count = Math.max(1, Math.min(MOST, Runtime.getRuntime().availableProcessors() - 1));
    private final ThreadPoolExecutor pool;
    private final Deque<Job> asked = new ArrayDeque<>();
    private final List<Job> underWay = new ArrayList<>();
    private final Receiver receiver;
    private int running;
    private GraphicsConfiguration screen;

    /** A part to paint. */
    record Job(PaintedCloth cloth, Rectangle part) {
        boolean same(Job other) {
            return cloth == other.cloth && part.equals(other.part);
        }
    }

    /** Takes what has been painted, on the event thread. */
    @FunctionalInterface
    interface Receiver {
        void painted(PaintedCloth cloth, Rectangle part, BufferedImage image);
    }

    ClothWorkers(Receiver receiver) {
        this.receiver = receiver;
        pool = new ThreadPoolExecutor(
                count, count, STAY_SECONDS, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), ClothWorkers::thread);
        pool.allowCoreThreadTimeOut(true);
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "cloth");
        thread.setDaemon(true);
        thread.setPriority(Thread.NORM_PRIORITY - 1);
        return thread;
    }

    /** From now on only these parts are wanted, in this order. */
    synchronized void ask(List<Job> jobs, GraphicsConfiguration on) {
        screen = on;
        asked.clear();
        jobs.stream().filter(job -> underWay.stream().noneMatch(job::same)).forEach(asked::add);
        int more = Math.min(count - running, asked.size());
        running += more;
        for (int i = 0; i < more; i++) {
            pool.execute(this::work);
        }
    }

    private void work() {
        Job job = take();
        while (job != null) {
            deliver(job, paint(job));
            job = take();
        }
    }

    private synchronized Job take() {
        Job job = asked.poll();
        if (job == null) {
            running--;
        } else {
            underWay.add(job);
        }
        return job;
    }

    /** What can't be painted stays empty, or it would be tried again for ever. */
    private BufferedImage paint(Job job) {
        try {
            return job.cloth().scene().paint(job.part(), screen());
        } catch (RuntimeException | OutOfMemoryError e) {
            Thread thread = Thread.currentThread();
            thread.getUncaughtExceptionHandler().uncaughtException(thread, e);
            return new BufferedImage(job.part().width, job.part().height, BufferedImage.TYPE_INT_RGB);
        }
    }

    private synchronized GraphicsConfiguration screen() {
        return screen;
    }

    /** Until it is received, it is not asked for again. */
    private void deliver(Job job, BufferedImage image) {
        EventQueue.invokeLater(() -> {
            receiver.painted(job.cloth(), job.part(), image);
            received(job);
        });
    }

    private synchronized void received(Job job) {
        underWay.removeIf(each -> each == job);
    }
}
