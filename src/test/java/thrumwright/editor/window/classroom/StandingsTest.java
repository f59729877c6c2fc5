package thrumwright.editor.window.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.piece.Piece;
import thrumwright.piece.Ticks;
import thrumwright.sheet.Whereabouts;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;

class StandingsTest {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 11, 28, 12, 0);

    @TempDir
    Path folder;

    private void back(String name, Piece piece) throws Exception {
        Files.writeString(folder.resolve(name), new PieceFile(piece, Unknown.none()).text());
    }

    /** By the name of the file, or by the title of the piece; what is nobody's or can't be read is there too. */
    @Test
    void whoStandsWhereIsReadFromThePiecesThatCameBack() throws Exception {
        Piece panel = Pieces.panel();
        Ticks ticks = Ticks.NONE.with("start/ordering", NOON).with("start/ordering", NOON.plusMinutes(3));
        back("panel-asta.thrum", panel.withTicks(ticks));
        back("2.thrum", panel.withTitle("Panel of Bo"));
        back("zz.thrum", panel);
        Files.writeString(folder.resolve("broken.thrum"), "{");
        Files.writeString(folder.resolve("notes.txt"), "no piece");
        List<Standings.Line> lines =
                Standings.in(folder, List.of("Asta", "Bo", "Cai"), Locale.UK).lines();
        assertThat(lines)
                .extracting(Standings.Line::who)
                .containsExactly("Asta", "Bo", "Cai", "broken.thrum", "zz.thrum");
        Whereabouts asta = lines.get(0).standing().orElseThrow();
        assertThat(asta.at()).isEqualTo("1  Ordering cord, 2 of 3");
        assertThat(asta.last()).contains(NOON.plusMinutes(3));
        assertThat(lines.get(1).standing()).contains(new Whereabouts("not begun yet", Optional.empty()));
        assertThat(lines.get(2).standing()).isEmpty();
        assertThat(lines.get(3).problem()).isNotEmpty();
        assertThat(lines.get(4).standing()).isPresent();
    }
}
