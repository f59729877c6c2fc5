package thrumwright.store.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.store.FileProblem;

class JournalsTest {
    private static final Instant NOW = Instant.parse("2026-05-04T18:30:00Z");

    @TempDir
    private Path home;

    private Path folder;

    @BeforeEach
    void folder() {
        folder = home.resolve("state").resolve("journals");
    }

    private static Unsaved unsaved(String text) {
        return new Unsaved(Optional.of(Path.of("/reeds/a=b\nc.json")), Optional.of(Fingerprint.of("old")), NOW, text);
    }

    @Test
    void whatWasKeptIsLeftWhenTheProgramEndsWithoutSaving() throws Exception {
        Journals died = new Journals(folder);
        Journal journal = died.begin();
        journal.keep(unsaved("first"));
        journal.keep(unsaved("second\n\nwith a gap"));
        assertThat(died.left()).as("what is open is not left").isEmpty();
        letGo(journal);
        assertThat(new Journals(folder).left())
                .extracting(Journals.Left::unsaved)
                .containsExactly(unsaved("second\n\nwith a gap"));
    }

    /** As the system does when a process ends. */
    private static void letGo(Journal journal) throws IOException {
        journal.abandon();
    }

    @Test
    void whatIsSavedOrClosedIsNotLeft() throws FileProblem, IOException {
        Journals before = new Journals(folder);
        Journal saved = before.begin();
        saved.keep(unsaved("one"));
        saved.clear();
        letGo(saved);
        Journal closed = before.begin();
        closed.keep(unsaved("two"));
        closed.close();
        assertThat(new Journals(folder).left()).isEmpty();
    }

    @Test
    void aDocumentThatIsNowhereOnFileIsKeptToo() throws Exception {
        Journal journal = new Journals(folder).begin();
        Unsaved untitled = new Unsaved(Optional.empty(), Optional.empty(), NOW, "{}");
        journal.keep(untitled);
        letGo(journal);
        assertThat(new Journals(folder).left())
                .extracting(Journals.Left::unsaved)
                .containsExactly(untitled);
    }

    @Test
    void forgottenIsForgotten() throws Exception {
        Journal journal = new Journals(folder).begin();
        journal.keep(unsaved("one"));
        letGo(journal);
        Journals after = new Journals(folder);
        after.forget(after.left().get(0).id());
        assertThat(after.left()).isEmpty();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void whatNobodyCameBackForGoesAfterAMonth() throws Exception {
        Journal journal = new Journals(folder).begin();
        journal.keep(unsaved("one"));
        letGo(journal);
        Journals after = new Journals(folder);
        after.sweep(NOW.plus(Duration.ofDays(30)));
        assertThat(after.left()).hasSize(1);
        after.sweep(NOW.plus(Duration.ofDays(32)));
        assertThat(after.left()).isEmpty();
    }

    @Test
    void halfAJournalIsNone() {
        String whole = unsaved("a piece").journal();
        assertThat(Unsaved.read(whole)).contains(unsaved("a piece"));
        for (int length = 0; length < whole.length(); length++) {
            assertThat(Unsaved.read(whole.substring(0, length))).isEmpty();
            String zeroed = whole.substring(0, length) + "\0".repeat(whole.length() - length);
            assertThat(Unsaved.read(zeroed)).isEmpty();
        }
    }
}
