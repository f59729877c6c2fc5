package thrumwright.editor.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Work in parts leaves room for other events, and none for what comes after it. */
class OneByOneTest {
    private final List<String> done = new ArrayList<>();

    private Runnable part(String name) {
        return () -> done.add(name);
    }

    private static void event(Runnable run) throws Exception {
        EventQueue.invokeAndWait(run);
    }

    @Test
    void whatIsAskedForLaterComesAfterTheWhole() throws Exception {
        event(() -> {
            EventQueue.invokeLater(part("before"));
            OneByOne.begin(List.of(part("first"), part("second")));
            EventQueue.invokeLater(part("after"));
            part("asked").run();
        });
        event(() -> {});

        assertThat(done).containsExactly("asked", "before", "first", "second", "after");
    }

    @Test
    void eachPartIsAnEventOfItsOwn() throws Exception {
        List<Object> events = new ArrayList<>();
        Runnable part = () -> events.add(EventQueue.getCurrentEvent());

        event(() -> OneByOne.begin(List.of(part, part, part)));
        event(() -> {});

        assertThat(events).hasSize(3).doesNotHaveDuplicates();
    }

    @Test
    void whatIsFinishedAtOnceIsDoneOnce() throws Exception {
        event(() -> {
            OneByOne work = OneByOne.begin(List.of(part("first"), part("second")));
            work.finish();
            assertThat(done).containsExactly("first", "second");
        });
        event(() -> {});

        assertThat(done).containsExactly("first", "second");
    }

    @Test
    void whatIsDroppedIsNeverDone() throws Exception {
        event(() -> OneByOne.begin(List.of(part("first"), part("second"))).drop());
        event(() -> {});

        assertThat(done).isEmpty();
    }
}
