import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import thrumwright.commandline.RootCommand;

/**
 * The manual page, and what completes a command line, both from the commands themselves.
 * {@code java -cp thrumwright.jar Manual.java VERSION MAN_PAGE COMPLETION}
 */
final class Manual {
    private final StringBuilder page = new StringBuilder();

    private Manual() {}

    public static void main(String[] arguments) throws IOException {
        CommandLine all = RootCommand.all(arguments[0]);
        Manual manual = new Manual();
        manual.write(all, arguments[0]);
        write(arguments[1], manual.page.toString());
        write(arguments[2], AutoComplete.bash("thrumwright", all));
    }

    private static void write(String name, String text) throws IOException {
        Files.createDirectories(Path.of(name).getParent());
        Files.writeString(Path.of(name), text);
    }

    private void write(CommandLine all, String version) {
        CommandSpec root = all.getCommandSpec();
        page.append(".TH THRUMWRIGHT 1 \"\" \"Thrumwright ").append(version).append("\" \"User Commands\"\n");
        String[] about = root.usageMessage().description();
        section("NAME", "thrumwright \\- " + plain(about[0]));
        page.append(".SH SYNOPSIS\n.B thrumwright\n[\\fIFILE\\fR]\n.br\n.B thrumwright\n\\fICOMMAND\\fR …\n");
        section("DESCRIPTION", lines(about));
        options(root);
        page.append(".SH COMMANDS\n");
        all.getSubcommands().values().forEach(each -> command(each.getCommandSpec()));
        section("SEE ALSO", lines(root.usageMessage().footer()));
    }

    private void command(CommandSpec command) {
        page.append(".SS ").append(plain(synopsis(command))).append('\n');
        page.append(lines(command.usageMessage().description())).append('\n');
        options(command);
    }

    private static String synopsis(CommandSpec command) {
        return command.name()
                + command.positionalParameters().stream().map(each -> " " + each.paramLabel()).collect(Collectors.joining());
    }

    private void options(CommandSpec command) {
        for (PositionalParamSpec each : command.positionalParameters()) {
            entry("\\fI" + plain(each.paramLabel()) + "\\fR", each);
        }
        for (OptionSpec each : command.options()) {
            String names = List.of(each.names()).stream().map(name -> "\\fB" + plain(name) + "\\fR").collect(Collectors.joining(", "));
            entry(each.arity().max() > 0 ? names + " \\fI" + plain(each.paramLabel()) + "\\fR" : names, each);
        }
    }

    private void entry(String head, ArgSpec argument) {
        if (!argument.hidden()) {
            page.append(".TP\n").append(head).append('\n').append(lines(argument.renderedDescription())).append('\n');
        }
    }

    private void section(String name, String text) {
        page.append(".SH \"").append(name).append("\"\n").append(text).append('\n');
    }

    private static String lines(String... texts) {
        return List.of(texts).stream()
                .map(text -> Help.Ansi.OFF.string(String.format(text)))
                .map(Manual::plain)
                .filter(text -> !text.isBlank())
                .collect(Collectors.joining("\n.br\n"));
    }

    /** Hyphens are hyphens that can be copied, and no line begins with a sign that means something else. */
    private static String plain(String text) {
        String safe = text.strip().replace("\\", "\\e").replace("-", "\\-");
        return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
    }
}
