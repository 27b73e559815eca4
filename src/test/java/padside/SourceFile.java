package padside;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * One Java file as the compiler's own parser reads it.
 *
 * @param publicTypes how many public types stand at its top
 */
record SourceFile(Path path, int lines, List<Method> methods, int publicTypes) {
  SourceFile {
    methods = List.copyOf(methods);
  }

  /**
   * A method or constructor with a body.
   *
   * @param lines from below its annotations, which may hold a test's whole table of cases, to its
   *     closing brace
   * @param parameters none counted where a record's constructor repeats the record's components
   */
  record Method(String place, int lines, int parameters) {}

  /** Every Java file below a folder. */
  static List<SourceFile> below(Path folder) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (Stream<Path> walk = Files.walk(folder);
        StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      List<Path> paths = walk.filter(path -> path.toString().endsWith(".java")).sorted().toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, files, null, null, null, files.getJavaFileObjectsFromPaths(paths));
      SourcePositions positions = Trees.instance(task).getSourcePositions();
      List<SourceFile> read = new ArrayList<>();
      for (CompilationUnitTree unit : task.parse()) {
        read.add(of(unit, positions));
      }
      return read;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static SourceFile of(CompilationUnitTree unit, SourcePositions positions)
      throws IOException {
    Path path = Path.of("").toAbsolutePath().relativize(Path.of(unit.getSourceFile().toUri()));
    List<Method> methods = new ArrayList<>();
    new MethodScanner(unit, positions).scan(unit, methods);
    long publicTypes =
        unit.getTypeDecls().stream()
            .filter(ClassTree.class::isInstance)
            .map(type -> ((ClassTree) type).getModifiers().getFlags())
            .filter(flags -> flags.contains(Modifier.PUBLIC))
            .count();
    int lines = Files.readAllLines(path).size();
    return new SourceFile(path, lines, methods, Math.toIntExact(publicTypes));
  }

  private static final class MethodScanner extends TreePathScanner<Void, List<Method>> {
    private final CompilationUnitTree unit;
    private final SourcePositions positions;

    MethodScanner(CompilationUnitTree unit, SourcePositions positions) {
      this.unit = unit;
      this.positions = positions;
    }

    @Override
    public Void visitMethod(MethodTree method, List<Method> found) {
      if (method.getBody() != null) {
        long first = firstLine(method);
        long last = line(positions.getEndPosition(unit, method) - 1);
        ClassTree owner = (ClassTree) getCurrentPath().getParentPath().getLeaf();
        String file = Path.of(unit.getSourceFile().toUri()).getFileName().toString();
        String place =
            "%s:%d %s.%s".formatted(file, first, owner.getSimpleName(), method.getName());
        found.add(new Method(place, (int) (last - first + 1), parameters(method, owner)));
      }
      return super.visitMethod(method, found);
    }

    private long firstLine(MethodTree method) {
      return method.getModifiers().getAnnotations().stream()
          .mapToLong(annotation -> line(positions.getEndPosition(unit, annotation)) + 1)
          .max()
          .orElseGet(() -> line(positions.getStartPosition(unit, method)));
    }

    private long line(long position) {
      return unit.getLineMap().getLineNumber(position);
    }

    private static int parameters(MethodTree method, ClassTree owner) {
      int parameters = method.getParameters().size();
      return isConstructor(method)
              && owner.getKind() == Tree.Kind.RECORD
              && parameters == components(owner)
          ? 0
          : parameters;
    }

    private static boolean isConstructor(MethodTree method) {
      return method.getName().contentEquals("<init>");
    }

    /** A record has no fields of its own but its components and static ones. */
    private static long components(ClassTree owner) {
      return owner.getMembers().stream()
          .filter(VariableTree.class::isInstance)
          .map(member -> ((VariableTree) member).getModifiers().getFlags())
          .filter(flags -> !flags.contains(Modifier.STATIC))
          .count();
    }
  }
}
