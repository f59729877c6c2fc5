package thrumwright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertAll;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Which package may use which. The order of the packages is the order in which the program thinks: numbers first, then
 * cords, yarns and blocks, then the piece, its plan and its sheet, and only then pictures, paper and windows.
 */
@AnalyzeClasses(packages = "thrumwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** Each package may use those before it. */
    private static final List<String> ORDER =
            List.of("measure", "cord", "yarn", "block", "piece", "plan", "sheet", "drawing", "output");

    private static final String STORE = "store";
    private static final String EDITOR = "editor";
    private static final String COMMAND_LINE = "commandline";
    private static final String APP = "app";

    private static final Map<String, Set<String>> ALSO_IN_THE_ORDER = Map.of(
            STORE, upTo("piece"),
            EDITOR, with(upTo("output"), STORE),
            COMMAND_LINE, with(upTo("output"), STORE),
            APP, with(upTo("output"), STORE, EDITOR, COMMAND_LINE));

    @ArchTest
    static final ArchRule EVERYTHING_HAS_ITS_PLACE = classes()
            .should()
            .resideInAnyPackage(packages(allPackages().stream()))
            .because("only these packages are in the order");

    @ArchTest
    static void eachPackageOnlyUsesThoseBeforeIt(JavaClasses program) {
        assertAll(allPackages().stream()
                .map(one -> () -> onlyUsesThoseBeforeIt(one).check(program)));
    }

    private static ArchRule onlyUsesThoseBeforeIt(String one) {
        Set<String> allowed = with(usableBy(one), one);
        return noClasses()
                .that()
                .resideInAPackage(packageOf(one))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages(allPackages().stream().filter(other -> !allowed.contains(other))))
                .because(one + " comes before them")
                .allowEmptyShould(true);
    }

    @ArchTest
    static void roomsOfDrawingOnlyUseThoseBeforeThem(JavaClasses program) {
        roomsInOrder(program, "drawing", "drawing.yarn", "drawing.edge drawing.hem", "drawing.step drawing.piece");
    }

    @ArchTest
    static void roomsOfOutputOnlyUseThoseBeforeThem(JavaClasses program) {
        roomsInOrder(
                program,
                "output.page",
                "output.vector",
                "output.part output.svg",
                "output.card",
                "output.pdf output.html",
                "output");
    }

    /** @param levels from the first to the last; rooms of one level don't use each other */
    private static void roomsInOrder(JavaClasses program, String... levels) {
        Set<String> later = Stream.of(levels)
                .flatMap(level -> Stream.of(level.split(" ")))
                .collect(Collectors.toCollection(TreeSet::new));
        for (String level : levels) {
            List<String> rooms = List.of(level.split(" "));
            for (String room : rooms) {
                Set<String> others = new TreeSet<>(later);
                others.remove(room);
                noClasses()
                        .that()
                        .resideInAPackage("thrumwright." + room)
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(others.stream()
                                .map(other -> "thrumwright." + other)
                                .toArray(String[]::new))
                        .check(program);
            }
            rooms.forEach(later::remove);
        }
    }

    @ArchTest
    static final ArchRule NO_CYCLES =
            slices().matching("thrumwright.(*)..").should().beFreeOfCycles();

    /** Numbers first, then what differs, then what is amiss, and only then how it is said. */
    @ArchTest
    static void eachRoomOfThePlanOnlyUsesThoseBeforeIt(JavaClasses program) {
        layeredArchitecture()
                .consideringOnlyDependenciesInAnyPackage("thrumwright.plan..")
                .layer("plan")
                .definedBy("thrumwright.plan")
                .layer("comparison")
                .definedBy("thrumwright.plan.comparison..")
                .layer("finding")
                .definedBy("thrumwright.plan.finding..")
                .layer("words")
                .definedBy("thrumwright.plan.words..")
                .whereLayer("plan")
                .mayNotAccessAnyLayer()
                .whereLayer("comparison")
                .mayOnlyAccessLayers("plan")
                .whereLayer("finding")
                .mayOnlyAccessLayers("plan", "comparison")
                .ensureAllClassesAreContainedInArchitectureIgnoring(describe(
                        "outside the plan", one -> !one.getPackageName().startsWith("thrumwright.plan")))
                .check(program);
    }

    /** The rooms of the editor; each may use those before it. The last is where it is started. */
    private static final List<String> EDITOR_ROOMS = Stream.of(
                    "text..",
                    "look..",
                    "help..",
                    "edit..",
                    "sheet..",
                    "form..",
                    "library..",
                    "settings..",
                    "files..",
                    "canvas..",
                    "shelf..",
                    "view..",
                    "loom..",
                    "window",
                    "window.sheet..",
                    "window.classroom..",
                    "window.piece..",
                    "")
            .map(room -> room.isEmpty() ? "thrumwright.editor" : "thrumwright.editor." + room)
            .toList();

    @ArchTest
    static final ArchRule EVERYTHING_IN_THE_EDITOR_HAS_ITS_ROOM = classes()
            .that()
            .resideInAPackage(packageOf(EDITOR))
            .should()
            .resideInAnyPackage(EDITOR_ROOMS.toArray(String[]::new));

    @ArchTest
    static void eachRoomOfTheEditorOnlyUsesThoseBeforeIt(JavaClasses program) {
        assertAll(IntStream.range(0, EDITOR_ROOMS.size() - 1)
                .mapToObj(i -> () -> noClasses()
                        .that()
                        .resideInAPackage(EDITOR_ROOMS.get(i))
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(
                                EDITOR_ROOMS.subList(i + 1, EDITOR_ROOMS.size()).toArray(String[]::new))
                        .because(EDITOR_ROOMS.get(i) + " comes before them")
                        .check(program)));
    }

    @ArchTest
    static final ArchRule EDITS_KNOW_NO_COMPONENT = noClasses()
            .that()
            .resideInAPackage("thrumwright.editor.edit..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.swing..", "java.awt..", "com.formdev..", "net.miginfocom..");

    @ArchTest
    static final ArchRule ONLY_THE_STORE_KNOWS_JSON = only(STORE).mayUse("com.fasterxml..");

    @ArchTest
    static final ArchRule ONLY_OUTPUT_KNOWS_PDF =
            only("output").mayUse("org.apache.pdfbox..", "org.apache.fontbox..", "de.rototor..");

    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_LINE_PARSES_OPTIONS =
            only(COMMAND_LINE, APP).mayUse("picocli..");

    @ArchTest
    static final ArchRule ONLY_THE_EDITOR_HAS_COMPONENTS =
            only(EDITOR, APP).mayUse("javax.swing..", "com.formdev..", "net.miginfocom..", "com.github.weisj..");

    @ArchTest
    static final ArchRule PICTURES_BEGIN_WITH_DRAWING = only("drawing", "output", EDITOR, COMMAND_LINE, APP)
            .mayUse("java.awt..", "javax.imageio..", "javax.print..", "sun..");

    @ArchTest
    static final ArchRule NO_FILES_UP_TO_THE_SHEET = noClasses()
            .that()
            .resideInAnyPackage(packages(upTo("sheet").stream()))
            .should()
            .dependOnClassesThat(describe("open files", ArchitectureTest::opensFiles))
            .because("what is computed has to be the same wherever the piece came from");

    @ArchTest
    static final ArchRule NOTHING_STATIC_CHANGES = fields().that()
            .areStatic()
            .should()
            .beFinal()
            .because("what the program knows is passed along, not kept in a common place");

    @ArchTest
    static final ArchRule NO_PUBLIC_CONSTANT_CAN_BE_WRITTEN_INTO = noFields()
            .that()
            .areStatic()
            .and()
            .areNotPrivate()
            .and()
            .doNotHaveModifier(JavaModifier.SYNTHETIC)
            .should()
            .haveRawType(describe("an array or a modifiable collection", ArchitectureTest::isModifiable))
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule ONLY_THE_EDGES_PRINT_TO_THE_TERMINAL = noClasses()
            .that()
            .resideOutsideOfPackages(packages(Stream.of(COMMAND_LINE, APP)))
            .should(ACCESS_STANDARD_STREAMS)
            .orShould()
            .dependOnClassesThat()
            .resideInAPackage("java.util.logging..");

    @ArchTest
    static final ArchRule NOBODY_PRINTS_A_STACK_TRACE = noClasses()
            .should()
            .accessTargetWhere(target(owner(assignableTo(Throwable.class))).and(target(name("printStackTrace"))))
            .because("an error is a plain sentence");

    @ArchTest
    static final ArchRule ONLY_THE_APP_ENDS_THE_PROGRAM = noClasses()
            .that()
            .resideOutsideOfPackages(packageOf(APP))
            .should()
            .accessTargetWhere(target(owner(assignableTo(System.class).or(assignableTo(Runtime.class))))
                    .and(target(name("exit").or(name("halt")))));

    /** The rooms of the canvas: each may use those before it, the canvas itself all of them, and the shelf the canvas. */
    private static final List<String> CANVAS_ROOMS = Stream.concat(
                    Stream.of("seen", "cloth", "painted", "gesture", "label", "heard")
                            .map(room -> "thrumwright.editor.canvas." + room),
                    Stream.of("thrumwright.editor.canvas", "thrumwright.editor.shelf"))
            .toList();

    @ArchTest
    static void eachRoomOfTheCanvasOnlyUsesThoseBeforeIt(JavaClasses program) {
        for (int i = 0; i < CANVAS_ROOMS.size() - 1; i++) {
            String[] later = CANVAS_ROOMS.subList(i + 1, CANVAS_ROOMS.size()).toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage(CANVAS_ROOMS.get(i))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(later)
                    .check(program);
        }
    }

    @ArchTest
    static final ArchRule WHAT_IS_SEEN_KNOWS_NO_COMPONENT = noClasses()
            .that()
            .resideInAPackage("thrumwright.editor.canvas.seen")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.swing..")
            .because("a test can hold it without a window");

    private static boolean opensFiles(JavaClass used) {
        return used.getPackageName().startsWith("java.nio.file")
                || used.getPackageName().startsWith("java.nio.channels")
                || used.getPackageName().equals("java.io")
                        && (used.getSimpleName().startsWith("File")
                                || used.getSimpleName().equals("RandomAccessFile"));
    }

    private static boolean isModifiable(JavaClass type) {
        return type.isArray()
                || type.getPackageName().startsWith("java.util")
                        && !type.isInterface()
                        && (type.isAssignableTo(Iterable.class) || type.isAssignableTo(Map.class));
    }

    private static Only only(String... allowed) {
        return new Only(packages(Stream.of(allowed)));
    }

    private record Only(String[] allowed) {
        ArchRule mayUse(String... used) {
            return noClasses()
                    .that()
                    .resideOutsideOfPackages(allowed)
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(used);
        }
    }

    private static Set<String> usableBy(String one) {
        return ALSO_IN_THE_ORDER.containsKey(one) ? ALSO_IN_THE_ORDER.get(one) : upTo(one);
    }

    private static List<String> allPackages() {
        return Stream.concat(ORDER.stream(), ALSO_IN_THE_ORDER.keySet().stream())
                .toList();
    }

    /** The packages of the order up to and including this one. */
    private static Set<String> upTo(String last) {
        return Set.copyOf(ORDER.subList(0, ORDER.indexOf(last) + 1));
    }

    private static Set<String> with(Set<String> some, String... more) {
        List<String> all = new ArrayList<>(some);
        all.addAll(List.of(more));
        return Set.copyOf(all);
    }

    private static String[] packages(Stream<String> names) {
        return names.map(ArchitectureTest::packageOf).toArray(String[]::new);
    }

    private static String packageOf(String name) {
        return "thrumwright." + name + "..";
    }
}
