package thrumwright.commandline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import thrumwright.sheet.ClassSheet;
import thrumwright.sheet.ClassText;
import thrumwright.store.JsonText;

@Command(name = "plan", mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
    private final RootCommand commands;

    @Mixin
    private final InputFiles files;

    @Mixin
    private final AsJson json = new AsJson();

    PlanCommand(RootCommand commands) {
        this(commands, List.of());
    }

    /** @param names of the files, as far as they are known before the parser tells more */
    PlanCommand(RootCommand commands, List<String> names) {
        this.commands = commands;
        this.files = new InputFiles(names);
    }

    @Override
    public Integer call() {
        List<Object> plans = new ArrayList<>();
        int code = files.each(commands.console(), (name, work) -> {
            plans.add(json.wanted() ? json(work) : text(work));
            return RootCommand.DONE;
        });
        commands.console().out().print(json.wanted() ? json(plans) : text(plans));
        return code;
    }

    /** One plan stands for itself, several in a list. */
    private String json(List<Object> plans) {
        if (plans.isEmpty()) {
            return "";
        }
        return JsonText.of(files.several() ? plans : plans.get(0));
    }

    private static String text(List<Object> plans) {
        return plans.stream().map(Object::toString).collect(Collectors.joining(System.lineSeparator()));
    }

    private static Map<String, Object> json(Loaded work) {
        return work instanceof Loaded.OfClass some
                ? ClassJson.of(some.plan())
                : PlanJson.of(((Loaded.OfPiece) work).plan());
    }

    private static String text(Loaded work) {
        return work instanceof Loaded.OfClass some
                ? ClassText.of(ClassSheet.of(some.plan(), Locale.UK), Locale.UK)
                : PlanText.of(((Loaded.OfPiece) work).plan());
    }
}
