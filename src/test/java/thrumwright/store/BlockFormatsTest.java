package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;

/** Every kind of block can stand in a file, in the same words as ever. */
class BlockFormatsTest {
    private static Stream<Class<?>> kinds(Class<?> sort) {
        return sort.isSealed()
                ? Stream.of(sort.getPermittedSubclasses()).flatMap(BlockFormatsTest::kinds)
                : Stream.of(sort);
    }

    private static String everyKind() throws IOException {
        try (InputStream in = BlockFormatsTest.class.getResourceAsStream("every-kind.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void everyKindIsDeclaredOnce() {
        List<Class<?>> all = kinds(Block.class).distinct().toList();

        assertThat(all).hasSizeGreaterThan(12);
        assertThat(BlockFormats.kinds().stream().map(BlockKind::key)).doesNotHaveDuplicates();
        assertThat(BlockFormats.kinds().stream().<Class<?>>map(BlockKind::sort).toList())
                .containsExactlyInAnyOrderElementsOf(all);
    }

    /** A file that earlier programs wrote, with each kind in each of its ways: it is written again to the byte. */
    @Test
    void whatWasWrittenIsWrittenAgain() throws IOException, FileProblem {
        String written = everyKind();

        assertThat(PieceFile.read(written).text()).isEqualTo(written);
    }

    @Test
    void everyKindAndFieldStandsInThatFile() throws IOException {
        String written = everyKind();

        assertThat(BlockFormats.kinds()).allSatisfy(kind -> {
            assertThat(written).contains("\"kind\": \"" + kind.key() + "\"");
            assertThat(kind.names()).allSatisfy(name -> assertThat(written).contains("\"" + name + "\": "));
        });
    }

    /** The sample of a yarn “reed” and a yarn “reed/sample” are different places. */
    @Test
    void unknownFieldsStayApartWhateverTheIds() throws IOException, FileProblem {
        String written = everyKind()
                .replace("\"mud\"", "\"reed/sample\"")
                .replace("\"height\": \"2 cm\"\n      }", "\"height\": \"2 cm\",\n        \"moon\": \"full\"\n      }")
                .replace("\"firmness\": \"medium\"", "\"firmness\": \"medium\",\n      \"stars\": \"many\"");

        assertThat(written).contains("moon", "stars", "reed/sample");
        assertThat(PieceFile.read(written).text()).isEqualTo(written);
    }
}
