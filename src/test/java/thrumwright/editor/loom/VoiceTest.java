package thrumwright.editor.loom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.settings.Settings;

/** Speech is the system's own, only where somebody wants it, and needed by nothing. */
class VoiceTest {
    @TempDir
    Path folder;

    private final Settings settings = new Settings(Optional.empty());

    /** A voice that writes down what it hears. */
    private Optional<Voice> voice() throws Exception {
        Assumptions.assumeTrue(File.separatorChar == '/', "the voice in this test is a shell script");
        Path program = folder.resolve("espeak-ng");
        Files.writeString(
                program,
                "#!/bin/sh\ncat > " + folder.resolve("part") + "\nmv " + folder.resolve("part") + " "
                        + folder.resolve("heard") + "\n");
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr--r--"));
        return Voice.in("/nowhere" + File.pathSeparator + folder);
    }

    private String heard() throws Exception {
        Path heard = folder.resolve("heard");
        long until = System.nanoTime() + 20_000_000_000L;
        while (!Files.exists(heard) && System.nanoTime() < until) {
            Thread.onSpinWait();
        }
        String text = Files.readString(heard);
        Files.delete(heard);
        return text;
    }

    @Test
    void eachRowIsSaidOnceAndOnlyIfItIsWanted() throws Exception {
        Speech speech = new Speech(settings, voice());
        assertThat(speech.possible()).isTrue();
        assertThat(speech.wanted()).as("at first").isFalse();
        speech.say(List.of("not this"));
        speech.choose(true);
        speech.say(List.of("2  Twining", "row 1 of 2", "→ over the left edge end"));
        assertThat(heard()).isEqualTo("2  Twining. row 1 of 2.  over the left edge end");
        speech.say(List.of("2  Twining", "row 1 of 2", "→ over the left edge end"));
        speech.say(List.of("next"));
        assertThat(heard()).isEqualTo("next");
        speech.choose(false);
        speech.say(List.of("silent"));
        assertThat(folder.resolve("heard")).doesNotExist();
    }

    @Test
    void whereThereIsNoVoiceNothingIsSaid() {
        assertThat(Voice.in(folder.toString())).isEmpty();
        Speech speech = new Speech(settings, Optional.empty());
        speech.choose(true);
        speech.say(List.of("nobody hears this"));
        assertThat(speech.wanted()).isFalse();
    }
}
