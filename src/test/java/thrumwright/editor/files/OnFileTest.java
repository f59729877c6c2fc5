package thrumwright.editor.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.settings.Workplace;
import thrumwright.store.BuiltIn;
import thrumwright.testing.Seeds;

/** Two documents and somebody outside at one file, in any order: nobody's work is written over without a question. */
class OnFileTest {
    private static final int DEEDS = 25;

    @TempDir
    private Path home;

    private Path file;
    private String demo;

    private int overwritten;
    private int asked;
    private int copies;

    @Test
    @Timeout(value = 15, unit = TimeUnit.MINUTES)
    void nobodysWorkIsWrittenOverUnasked() throws Exception {
        demo = BuiltIn.DEMO.text("saltmarsh-panel.json");
        int runs = Seeds.costly(1000, 20);
        Workplace one = ProgramAtFile.place(home.resolve("state"));
        Workplace other = ProgramAtFile.place(home.resolve("state"));
        for (int run = 0; run < runs; run++) {
            file = Files.writeString(home.resolve("piece-" + run + ".json"), demo);
            interleaved(new Random(run), one, other);
        }
        assertThat(asked).isGreaterThan(runs / 10);
        assertThat(overwritten).isPositive();
        assertThat(copies).isPositive();
    }

    private void interleaved(Random random, Workplace one, Workplace other) throws Exception {
        List<ProgramAtFile> programs = new ArrayList<>(List.of(
                new ProgramAtFile(file, 1, one, random).begun(), new ProgramAtFile(file, 2, other, random).begun()));
        for (int i = 0; i < DEEDS; i++) {
            int who = random.nextInt(2);
            ProgramAtFile program = programs.get(who);
            switch (random.nextInt(7)) {
                case 0, 1 -> program.edit();
                case 2, 3 -> save(program);
                case 4 -> program.look();
                case 5 -> Files.writeString(file, demo + " ".repeat(random.nextInt(50)));
                default -> {
                    program.close();
                    if (!Files.exists(file)) {
                        Files.writeString(file, demo);
                    }
                    Workplace place = who == 0 ? one : other;
                    programs.set(who, new ProgramAtFile(file, who, place, random).begun());
                }
            }
        }
        programs.forEach(each -> each.close());
    }

    private void save(ProgramAtFile program) throws IOException {
        String before = Files.readString(file);
        ProgramAtFile.Saving saving = program.save();
        boolean others = saving.wrote().isPresent() && !before.equals(saving.knew());
        assertThat(!others || saving.asked())
                .as("somebody else's work was written over unasked")
                .isTrue();
        assertThat(file).hasContent(saving.wrote().orElse(before));
        overwritten += others ? 1 : 0;
        asked += saving.asked() ? 1 : 0;
        copies += saving.copied() ? 1 : 0;
    }
}
