package thrumwright.editor.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

/** What follows changes does so once for many of them, after what they paint, and is never forgotten. */
class FollowingTest {
    private final List<String> done = new ArrayList<>();
    private final Following following = new Following(() -> done.add("followed"));

    private static void event(Runnable run) throws Exception {
        EventQueue.invokeAndWait(run);
    }

    @Test
    void itComesOnceAfterWhatIsOnItsWay() throws Exception {
        event(() -> {
            EventQueue.invokeLater(() -> done.add("painted"));
            following.soon(false);
            following.soon(false);
            assertThat(following.isDue()).isTrue();
        });
        event(() -> {});

        assertThat(done).containsExactly("painted", "followed");
        assertThat(following.isDue()).isFalse();
    }

    @Test
    void itComesInThePauseOfManyChanges() throws Exception {
        CountDownLatch paused = new CountDownLatch(1);
        Following one = new Following(paused::countDown);
        for (int i = 0; i < 5; i++) {
            event(() -> one.soon(true));
        }
        event(() -> assertThat(one.isDue() || paused.getCount() == 0).isTrue());

        paused.await();
        event(() -> assertThat(one.isDue()).isFalse());
    }

    @Test
    void theLastChangeWaitsForNoPause() throws Exception {
        event(() -> {
            following.soon(true);
            following.soon(false);
        });
        event(() -> {});

        assertThat(done).containsExactly("followed");
    }

    @Test
    void whatHasFollowedAtOnceDoesNotFollowAgain() throws Exception {
        event(() -> {
            following.soon(true);
            following.now(false);
            assertThat(following.isDue()).isFalse();
            following.soon(false);
            following.now(false);
        });
        event(() -> {});

        assertThat(done).containsExactly("followed", "followed");
    }
}
