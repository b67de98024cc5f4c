package squaresheet.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Holds the walls: how long a file and a method may grow. */
class SizeTest {

  private static final Path SOURCES = Path.of("src/main/java");
  private static final int FILE_WALL = 400;
  private static final int METHOD_WALL = 30;

  @Test
  void no_file_is_longer_than_the_wall() throws IOException {
    List<String> over = new ArrayList<>();
    for (Path file : sources()) {
      long lines = Files.readAllLines(file).size();
      if (lines > FILE_WALL) {
        over.add(file + " has " + lines + " lines");
      }
    }
    assertThat(over).as("files over " + FILE_WALL + " lines").isEmpty();
  }

  @Test
  void no_method_is_longer_than_the_wall() throws IOException {
    List<String> over = new ArrayList<>();
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      JavacTask task = (JavacTask) compiler.getTask(
          null, files, null, null, null, files.getJavaFileObjectsFromPaths(sources()));
      SourcePositions places = Trees.instance(task).getSourcePositions();
      for (CompilationUnitTree unit : task.parse()) {
        new TallMethods(unit, places, over).scan(unit, null);
      }
    }
    assertThat(over).as("methods over " + METHOD_WALL + " lines").isEmpty();
  }

  private static List<Path> sources() {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static final class TallMethods extends TreeScanner<Void, Void> {
    private final CompilationUnitTree unit;
    private final SourcePositions places;
    private final List<String> over;

    TallMethods(CompilationUnitTree unit, SourcePositions places, List<String> over) {
      this.unit = unit;
      this.places = places;
      this.over = over;
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
      if (method.getBody() != null) {
        long first =
            unit.getLineMap().getLineNumber(places.getStartPosition(unit, method.getBody()));
        long last = unit.getLineMap().getLineNumber(places.getEndPosition(unit, method.getBody()));
        if (last - first - 1 > METHOD_WALL) {
          String file = Path.of(unit.getSourceFile().toUri()).getFileName().toString();
          over.add(file + ": " + method.getName() + " has " + (last - first - 1) + " lines");
        }
      }
      return super.visitMethod(method, null);
    }
  }
}
