package thrumwright.house;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.InstanceOfTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.PrimitiveTypeTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.lang.model.type.TypeKind;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** What the program's source looks like, in numbers: sizes, parameters, fields and what its Javadoc says. */
final class SourceFigures {
    /** A type declared at the top of a file. */
    record Type(String room, String name, int lines) {}

    /** A method or constructor with a body; the components of a record don't count as parameters. */
    record Method(String where, int lines, int parameters) {}

    /** A method that others call, with a {@code double} in it, and its Javadoc; the empty text where there is none. */
    record Measured(String where, String says) {}

    /** A question for the kind of something. */
    record Asked(String room, String where, String kind) {}

    private final List<Type> types = new ArrayList<>();
    private final List<String> nested = new ArrayList<>();
    private final List<Method> methods = new ArrayList<>();
    private final List<Measured> measured = new ArrayList<>();
    private final List<Asked> asked = new ArrayList<>();
    private int finalFields;
    private int changingFields;

    private SourceFigures() {}

    /** All that lies under a source folder, parsed but not compiled. */
    static SourceFigures of(Path sources) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        SourceFigures figures = new SourceFigures();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
                Stream<Path> all = Files.walk(sources)) {
            List<Path> java = all.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.endsWith("package-info.java"))
                    .toList();
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(java));
            DocTrees trees = DocTrees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                figures.new Reader(trees, unit).scan(unit, null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return figures;
    }

    List<Type> types() {
        return List.copyOf(types);
    }

    /** Simple names of the types that are declared within others and can be seen from outside these. */
    List<String> nested() {
        return List.copyOf(nested);
    }

    List<Method> methods() {
        return List.copyOf(methods);
    }

    List<Measured> measured() {
        return List.copyOf(measured);
    }

    List<Asked> asked() {
        return List.copyOf(asked);
    }

    /** How many of the instance fields are final, from 0 to 1; components of records count. */
    double finalFields() {
        return (double) finalFields / (finalFields + changingFields);
    }

    private final class Reader extends TreePathScanner<Void, Void> {
        private final DocTrees trees;
        private final SourcePositions positions;
        private final CompilationUnitTree unit;
        private final String room;

        Reader(DocTrees trees, CompilationUnitTree unit) {
            this.trees = trees;
            this.positions = trees.getSourcePositions();
            this.unit = unit;
            this.room = unit.getPackageName().toString();
        }

        private int lines(Tree tree) {
            long from = unit.getLineMap().getLineNumber(positions.getStartPosition(unit, tree));
            long to = unit.getLineMap().getLineNumber(positions.getEndPosition(unit, tree));
            return (int) (to - from + 1);
        }

        private ClassTree owner() {
            return (ClassTree) getCurrentPath().getParentPath().getLeaf();
        }

        private String where(Object member) {
            return room + "." + owner().getSimpleName() + "." + member;
        }

        @Override
        public Void visitClass(ClassTree tree, Void nothing) {
            Tree outside = getCurrentPath().getParentPath().getLeaf();
            if (outside instanceof CompilationUnitTree) {
                types.add(new Type(room, tree.getSimpleName().toString(), lines(tree)));
            } else if (outside instanceof ClassTree
                    && !tree.getModifiers().getFlags().contains(Modifier.PRIVATE)) {
                nested.add(tree.getSimpleName().toString());
            }
            return super.visitClass(tree, nothing);
        }

        @Override
        public Void visitVariable(VariableTree tree, Void nothing) {
            Set<Modifier> flags = tree.getModifiers().getFlags();
            boolean field = getCurrentPath().getParentPath().getLeaf() instanceof ClassTree owner
                    && owner.getKind() != Tree.Kind.INTERFACE
                    && !flags.contains(Modifier.STATIC);
            if (field && flags.contains(Modifier.FINAL)) {
                finalFields++;
            } else if (field) {
                changingFields++;
            }
            return super.visitVariable(tree, nothing);
        }

        @Override
        public Void visitInstanceOf(InstanceOfTree tree, Void nothing) {
            if (tree.getType() != null) {
                String kind = tree.getType().toString();
                asked.add(new Asked(room, unit.getSourceFile().getName(), kind));
            }
            return super.visitInstanceOf(tree, nothing);
        }

        @Override
        public Void visitMethod(MethodTree tree, Void nothing) {
            // what the compiler adds by itself has no place in the source
            if (tree.getBody() != null && positions.getEndPosition(unit, tree) >= 0) {
                methods.add(new Method(where(tree.getName()), lines(tree), isCanonical(tree) ? 0 : parameters(tree)));
            }
            if (canBeCalled(tree) && hasDouble(tree)) {
                // a record says at its head what its components are
                TreePath said = isCanonical(tree) ? getCurrentPath().getParentPath() : getCurrentPath();
                String says = Objects.toString(trees.getDocComment(said), "");
                measured.add(new Measured(where(tree.getName()), says));
            }
            return super.visitMethod(tree, nothing);
        }

        private int parameters(MethodTree tree) {
            return tree.getParameters().size();
        }

        /** Whether it is the constructor that takes the components of a record, one by one. */
        private boolean isCanonical(MethodTree tree) {
            long components = owner().getMembers().stream()
                    .filter(member -> member instanceof VariableTree field
                            && !field.getModifiers().getFlags().contains(Modifier.STATIC))
                    .count();
            return owner().getKind() == Tree.Kind.RECORD
                    && tree.getReturnType() == null
                    && parameters(tree) == components;
        }

        private boolean canBeCalled(MethodTree tree) {
            boolean overrides = tree.getModifiers().getAnnotations().stream()
                    .anyMatch(note -> note.getAnnotationType().toString().equals("Override"));
            return !overrides && isPublic(tree) && allPublic(getCurrentPath().getParentPath());
        }

        private boolean isPublic(MethodTree tree) {
            Set<Modifier> flags = tree.getModifiers().getFlags();
            return flags.contains(Modifier.PUBLIC)
                    || owner().getKind() == Tree.Kind.INTERFACE && !flags.contains(Modifier.PRIVATE);
        }

        private boolean allPublic(TreePath path) {
            for (Tree tree : path) {
                if (tree instanceof ClassTree type
                        && !type.getModifiers().getFlags().contains(Modifier.PUBLIC)) {
                    return false;
                }
            }
            return true;
        }

        private boolean hasDouble(MethodTree tree) {
            return isDouble(tree.getReturnType())
                    || tree.getParameters().stream().anyMatch(parameter -> isDouble(parameter.getType()));
        }

        private boolean isDouble(Tree type) {
            return type instanceof PrimitiveTypeTree primitive && primitive.getPrimitiveTypeKind() == TypeKind.DOUBLE;
        }
    }
}
