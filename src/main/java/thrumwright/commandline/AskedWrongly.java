package thrumwright.commandline;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import thrumwright.store.Spelling;

/** What was asked wrongly, in a sentence that says what would be right; the whole help is a command away. */
final class AskedWrongly implements IParameterExceptionHandler {
    @Override
    public int handleParseException(ParameterException problem, String[] arguments) {
        CommandLine line = problem.getCommandLine();
        line.getErr().println(sentence(problem));
        String command = line.getCommandSpec().qualifiedName();
        line.getErr().println(Said.of("asked.help", "command", command));
        return RootCommand.ASKED_WRONGLY;
    }

    private static String sentence(ParameterException problem) {
        if (problem instanceof UnmatchedArgumentException unmatched) {
            return unknown(unmatched);
        } else if (problem instanceof MissingParameterException missing) {
            return missing(missing);
        } else if (problem instanceof OverwrittenOptionException twice) {
            return Said.of("asked.twice", "option", name(twice.getOverwritten()));
        }
        return problem.getArgSpec() == null ? problem.getMessage() : wrong(problem);
    }

    private static String wrong(ParameterException problem) {
        ArgSpec asked = problem.getArgSpec();
        if (asked.type().isEnum()) {
            return Said.of(
                    "asked.choice",
                    Map.of("option", name(asked), "typed", problem.getValue(), "choices", choices(asked.type())));
        } else if (asked.type() == int.class) {
            return Said.of("asked.number", Map.of("option", name(asked), "typed", problem.getValue()));
        }
        Throwable why = problem.getCause() == null ? problem : problem.getCause();
        return Said.of("asked.value", Map.of("option", name(asked), "why", why.getMessage()));
    }

    private static String choices(Class<?> type) {
        return Stream.of(type.getEnumConstants())
                .map(each -> each.toString().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
    }

    private static String missing(MissingParameterException problem) {
        ArgSpec first = problem.getMissing().get(0);
        return first.isOption()
                ? Said.of("asked.follows", Map.of("option", name(first), "what", first.paramLabel()))
                : Said.of("asked.missing", "what", name(first));
    }

    /** As it stands in the help: an option's longest name, or what a place on the line is called. */
    private static String name(ArgSpec asked) {
        return asked instanceof OptionSpec option ? option.longestName() : asked.paramLabel();
    }

    private static String unknown(UnmatchedArgumentException problem) {
        CommandSpec command = problem.getCommandLine().getCommandSpec();
        String word = problem.getUnmatched().get(0);
        boolean first = command.parent() == null && !problem.isUnknownOption();
        String key = problem.isUnknownOption() ? "asked.option" : first ? "asked.command" : "asked.more";
        return Said.of(key, Map.of("word", word, "command", command.qualifiedName())) + meant(word, known(command));
    }

    private static List<String> known(CommandSpec command) {
        List<String> known = new ArrayList<>(command.subcommands().keySet());
        command.options().forEach(option -> known.addAll(List.of(option.names())));
        return known;
    }

    /** A question to go behind a sentence, if there is a word that is likely meant. */
    static String meant(String word, Collection<String> known) {
        Optional<String> likely = Spelling.likely(word, known);
        return likely.map(each -> " " + Said.of("asked.meant", "word", each)).orElse("");
    }
}
