package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/** Files of others and our own, read by us and by the package and event readers of Apache POI: both must say the same. */
class SecondReaderTest {

  private static final String OF_OTHERS = "of others";
  private static final String WITH_EVERYTHING = "with everything";
  private static final String EDITED = "edited";
  private static final String DRAFTED = "drafted";
  private static final String SHIPPED = "shipped";

  @TempDir
  Path folder;

  private List<Path> files(String kind) throws IOException {
    return switch (kind) {
      case OF_OTHERS -> List.of(write(Rich.workbook()));
      case WITH_EVERYTHING -> List.of(write(ZipParts.zip(Everything.declaredParts())));
      case EDITED ->
        List.of(edited(Rich.workbook()), edited(ZipParts.zip(Everything.declaredParts())));
      case DRAFTED -> List.of(write(Xlsx.bytes(Drafts.ofEverything())));
      default -> shipped();
    };
  }

  private Path write(byte[] bytes) throws IOException {
    return Files.write(Files.createTempFile(folder, "book", ".xlsx"), bytes);
  }

  private Path edited(byte[] bytes) throws IOException {
    Path file = write(bytes);
    List<Edit> edits = Arrays.stream(OneEdit.values())
        .filter(each -> Xlsx.edit(file, each.alone(), folder.resolve("one.xlsx"), Existing.REPLACE)
            .findings()
            .isEmpty())
        .flatMap(each -> each.alone().stream())
        .toList();
    assertThat(Xlsx.edit(file, edits, file, Existing.REPLACE).findings()).isEmpty();
    return file;
  }

  private static List<Path> shipped() throws IOException {
    try (Stream<Path> ours = Files.list(Path.of("workbooks"));
        Stream<Path> demo = Files.list(Path.of("demo-data"))) {
      return Stream.concat(ours, demo)
          .filter(it -> it.toString().endsWith(".xlsx"))
          .sorted()
          .toList();
    }
  }

  private static Workbook read(Path file) {
    return Xlsx.read(file).value().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {OF_OTHERS, WITH_EVERYTHING, EDITED, DRAFTED, SHIPPED})
  void both_read_the_same_values(String kind) throws IOException {
    for (Path file : files(kind)) {
      assertThat(values(read(file))).isEqualTo(SecondReader.values(file)).isNotEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {OF_OTHERS, WITH_EVERYTHING, EDITED, DRAFTED, SHIPPED})
  void both_read_the_same_formulas_where_a_cell_spells_one_out(String kind) throws IOException {
    for (Path file : files(kind)) {
      Map<String, String> ours = formulas(read(file));
      Map<String, String> theirs = SecondReader.formulas(file);
      theirs.replaceAll((cell, text) -> text.replace("_xlfn.", "").replace("_xlws.", ""));
      assertThat(ours).containsAllEntriesOf(theirs);
      assertThat(theirs.isEmpty()).isEqualTo(ours.isEmpty());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {OF_OTHERS, WITH_EVERYTHING, EDITED, DRAFTED, SHIPPED})
  void both_find_the_same_parts_related_in_the_same_way(String kind) throws IOException {
    for (Path file : files(kind)) {
      Set<String> named = new TreeSet<>();
      ZipParts.of(file).keySet().forEach(name -> named.add("/" + name));
      named.remove("/[Content_Types].xml");
      assertThat(SecondReader.parts(file)).isEqualTo(named);
      Map<String, String> relations = relations(file, named);
      assertThat(SecondReader.relations(file)).isEqualTo(relations).isNotEmpty();
    }
  }

  private static Map<String, String> values(Workbook workbook) {
    return cells(workbook, SecondReaderTest::shown);
  }

  private static Map<String, String> formulas(Workbook workbook) {
    return cells(workbook, Cell::formula);
  }

  private static Map<String, String> cells(
      Workbook workbook, java.util.function.Function<Cell, String> shown) {
    Map<String, String> all = new TreeMap<>();
    workbook.sheets().forEach(sheet -> sheet
        .cells()
        .filter(it -> !shown.apply(it.cell()).isEmpty())
        .forEach(it -> all.put(sheet.name() + "!" + it.ref(), shown.apply(it.cell()))));
    return all;
  }

  /** A value as the other library spells it. */
  private static String shown(Cell cell) {
    Content stored = cell.stored();
    if (stored instanceof Content.Numeric it) {
      return Double.toString(it.value());
    }
    if (stored instanceof Content.Text it) {
      return it.value();
    }
    if (stored instanceof Content.Truth it) {
      return it.value() ? "TRUE" : "FALSE";
    }
    return stored instanceof Content.Fault it ? "ERROR:" + it.code() : "";
  }

  private static Map<String, String> relations(Path file, Set<String> parts) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Parts read = Parts.open(file)) {
      for (String part : parts) {
        String list = Relations.partOf(part);
        if (parts.contains(list)) {
          try (Xml xml = read.xml(list)) {
            Relation.readAll(xml)
                .forEach((id, it) -> all.put(
                    part + " " + id,
                    it.isOutside() || it.target().startsWith("#")
                        ? it.target()
                        : PartPath.resolve(part, it.target())));
          }
        }
      }
    }
    return all;
  }
}
