package thrumwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thrumwright.house.SourceFigures.Type;

/** Each word of the glossary is carried by a class that there is, and each kind of block is in it. */
class GlossaryTest {
    private static final Pattern CLASS = Pattern.compile("`([A-Z]\\w*)`");

    private static List<String> named() throws IOException {
        String glossary = Files.readString(Path.of("docs/glossary.md"));
        return CLASS.matcher(glossary)
                .results()
                .map(MatchResult::group)
                .map(name -> name.replace("`", ""))
                .toList();
    }

    @Test
    void wordsAreCarriedByClasses() throws IOException {
        Set<String> types = SourceFigures.of(Path.of("src/main/java")).types().stream()
                .map(Type::name)
                .collect(Collectors.toSet());
        assertThat(named()).hasSizeGreaterThan(50).allMatch(types::contains);
    }

    @Test
    void everyKindOfBlockHasItsWord() throws IOException {
        assertThat(named()).containsAll(Kinds.names());
    }
}
