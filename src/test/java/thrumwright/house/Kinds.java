package thrumwright.house;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.block.Block;

/** The kinds of blocks, as the sealed family has them. */
final class Kinds {
    private Kinds() {}

    /** Simple names of all kinds and of the sorts above them, {@code Block} aside. */
    static Set<String> namesOfAll() {
        return below(Block.class).map(Class::getSimpleName).collect(Collectors.toSet());
    }

    /** Simple names of the kinds alone. */
    static Set<String> names() {
        return below(Block.class)
                .filter(kind -> !kind.isSealed())
                .map(Class::getSimpleName)
                .collect(Collectors.toSet());
    }

    private static Stream<Class<?>> below(Class<?> sort) {
        return sort.isSealed()
                ? Arrays.stream(sort.getPermittedSubclasses())
                        .flatMap(each -> Stream.concat(Stream.of(each), below(each)))
                : Stream.empty();
    }
}
