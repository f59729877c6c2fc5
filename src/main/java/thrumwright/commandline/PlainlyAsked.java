package thrumwright.commandline;

import java.util.List;
import java.util.Set;

/**
 * What is asked so plainly that nothing needs to be taken apart: the version, the help of the whole program, and plans of files
 * without an option. The parser of the command line looks at commands for longer than all of these take.
 */
final class PlainlyAsked {
    private static final Set<String> VERSION = Set.of("--version", "-V");
    private static final Set<String> HELP = Set.of("--help", "-h", "help");

    private final String[] arguments;

    PlainlyAsked(String... arguments) {
        this.arguments = arguments;
    }

    boolean version() {
        return arguments.length == 1 && VERSION.contains(arguments[0]);
    }

    boolean help() {
        return arguments.length == 1 && HELP.contains(arguments[0]);
    }

    /** Whether files are to be planned and nothing else is said; a name that begins with @ stands for more arguments. */
    boolean plans() {
        boolean plain = arguments.length > 1 && arguments[0].equals("plan");
        for (int i = 1; plain && i < arguments.length; i++) {
            String name = arguments[i];
            plain = name.equals(Output.STANDARD) || !name.isEmpty() && name.charAt(0) != '-' && name.charAt(0) != '@';
        }
        return plain;
    }

    /** The files to be planned. */
    List<String> files() {
        return List.of(arguments).subList(1, arguments.length);
    }
}
