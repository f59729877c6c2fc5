package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.testing.RandomClasses;
import thrumwright.testing.Seeds;

class ClassFileTest {
    private static final String DEMO = BuiltIn.DEMO.text("class/tuesday-class.json");
    private static final ClassFile.PieceSource PIECES = ClassFile.PieceSource.in(Path.of("demo", "class"));
    private static final ClassFile.PieceSource NOWHERE = name -> {
        throw new AssertionError("no file is needed, yet " + name + " was asked for");
    };

    @Test
    void whatIsWrittenReadsBackTheSame() throws FileProblem {
        RandomClasses classes = new RandomClasses(3);
        for (int i = 0; i < Seeds.of(500); i++) {
            ClassSet set = classes.next();
            String text = ClassFile.fresh(set).checkedText();
            ClassFile read = ClassFile.read(text, NOWHERE);
            assertThat(read.set()).isEqualTo(set);
            assertThat(read.unknown().isEmpty()).isTrue();
            assertThat(read.text()).isEqualTo(text);
        }
    }

    @Test
    void theDemoClassIsWrittenAsTheProgramWrites() throws FileProblem {
        assertThat(ClassFile.read(DEMO, PIECES).text()).isEqualTo(DEMO);
    }

    @Test
    void aClassIsKnownByItsMark() {
        assertThat(ClassFile.isClass(DEMO)).isTrue();
        assertThat(ClassFile.isClass(BuiltIn.DEMO.text("saltmarsh-panel.json"))).isFalse();
        assertThat(ClassFile.isClass("{\"title\": \"thrumwrightClass\"}")).isFalse();
        assertThat(ClassFile.isClass("{")).isFalse();
        assertThat(ClassFile.isClass("[]")).isFalse();
    }

    @Test
    void thePieceIsFoundBesideTheClassOrStandsInIt(@TempDir Path folder) throws IOException, FileProblem {
        Path inner = Files.createDirectories(folder.resolve("class"));
        Files.writeString(folder.resolve("saltmarsh-panel.json"), BuiltIn.DEMO.text("saltmarsh-panel.json"));
        Path file = Files.writeString(inner.resolve("tuesday.json"), DEMO);
        ClassFile named = ClassFile.read(file);
        assertThat(named.pieceName()).contains("../saltmarsh-panel.json");
        ClassFile inside = ClassFile.read(named.withPieceInside().checkedText(), NOWHERE);
        assertThat(inside.pieceName()).isEmpty();
        assertThat(inside.set()).isEqualTo(named.set());
    }

    @Test
    void unknownFieldsStayWithTheirPlaceAndWithTheirMember() throws FileProblem {
        String inside = ClassFile.read(DEMO, PIECES).withPieceInside().text();
        String text = inside.replace("\"title\": \"Tuesday", "\"term\": \"spring\", \"title\": \"Tuesday")
                .replace("\"clearance\":", "\"feet\": 4, \"clearance\":")
                .replace("\"name\": \"Bo\"", "\"name\": \"Bo\", \"id\": \"b\"")
                .replace("\"name\": \"Fenna\"", "\"name\": \"Fenna\", \"age\": 9")
                .replace("\"diameter\": \"16 mm\"", "\"diameter\": \"16 mm\", \"wood\": \"ash\"");
        ClassFile file = ClassFile.read(text, NOWHERE);
        String kept = file.text();
        assertThat(kept)
                .contains("\"term\": \"spring\"", "\"feet\": 4", "\"age\": 9", "\"wood\": \"ash\"", "\"id\": \"b\"");
        assertThat(ClassFile.read(kept, NOWHERE).text()).isEqualTo(kept);

        ClassSet fewer = file.set().without(2);
        ClassSet changed = fewer.with(0, fewer.members().get(0).withName("Astrid"));
        ClassFile after = file.with(fewer).with(changed);
        ClassMember fenna = changed.members().get(4);
        assertThat(fenna.name()).isEqualTo("Fenna");
        assertThat(after.text())
                .containsPattern(
                        "\"firstStripe\": \"sea-lavender\",\\s+\"lastStripe\": \"sea-lavender\",\\s+\"age\": 9");
        assertThat(file.with(file.set().without(5)).text())
                .doesNotContain("\"age\"", "\"wood\"")
                .contains("\"id\": \"b\"");
        assertThat(file.with(file.set().withMore(0, ClassMember.named("Zoë"))).text())
                .containsPattern("\"name\": \"Bo\",\\s+\"loom\": \"Pipe loom by the stove\",\\s+\"id\": \"b\"");
    }

    @Test
    void whatIsWrongInThePiecesOwnFileIsToldWithItsName() {
        String broken = BuiltIn.DEMO.text("saltmarsh-panel.json").replace("\"3/cm\"", "\"three\"");
        assertThatThrownBy(() -> ClassFile.read(DEMO, name -> broken))
                .isInstanceOf(FileProblem.class)
                .hasMessage("Line 4, column 12, piece: in “../saltmarsh-panel.json”: Line 19, column 13, warp › sett: "
                        + "“three” is not a sett; write it like “3/cm”, “8/in” or “30/10 cm”.");
    }

    @Test
    void everyTruncationIsRefusedInWords() {
        for (int length = 0; length < DEMO.stripTrailing().length(); length++) {
            String cut = DEMO.substring(0, length);
            assertThatThrownBy(() -> ClassFile.read(cut, PIECES))
                    .isInstanceOf(FileProblem.class)
                    .hasMessageMatching("(?s)Line \\d+, column \\d+.*[.]");
        }
    }
}
