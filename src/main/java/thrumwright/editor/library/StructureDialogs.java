package thrumwright.editor.library;

import java.awt.Component;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JOptionPane;
import thrumwright.drawing.Palette;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;

/**
 * Asks about structures in dialogs.
 *
 * @param work does what is asked for here
 */
public record StructureDialogs(Component parent, Texts texts, Supplier<Palette> palette, Library library, Handing work)
        implements StructureQuestions {
    @Override
    public Optional<Chosen> choose(Piece piece, Place place) {
        Handing asking = new Handing() {
            @Override
            public void write(Structure structure) {
                work.write(structure);
            }

            @Override
            public void reword(Structure structure) {
                describe(structure).ifPresent(work::reword);
            }

            @Override
            public void remove(Structure structure) {
                if (asked("remove", structure, "yes", "no") == 0) {
                    work.remove(structure);
                }
            }
        };
        return new UseDialog(parent, texts, palette.get(), library, asking, piece, place).ask();
    }

    @Override
    public Optional<Samples> samples(Piece piece) {
        return new SamplesDialog(parent, texts, palette.get(), library.all(), piece).ask();
    }

    @Override
    public Optional<Structure> describe(Structure draft) {
        return new DescribeDialog(parent, texts, draft).ask();
    }

    @Override
    public Clash clash(Structure coming, Structure there) {
        return switch (asked("clash", there, "replace", "both", "leave")) {
            case 0 -> Clash.REPLACE;
            case 1 -> Clash.BOTH;
            default -> Clash.LEAVE;
        };
    }

    /** @return which answer was taken, from 0; −1 for none */
    private int asked(String key, Structure about, String... answers) {
        Object[] said = Stream.of(answers)
                .map(answer -> texts.say("structure." + key + "." + answer))
                .toArray();
        return JOptionPane.showOptionDialog(
                parent,
                texts.say("structure." + key + ".question", Map.of("name", about.name())),
                texts.say("structure." + key + ".title"),
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                said,
                said[said.length - 1]);
    }
}
