package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** A workbook that holds every function in five ways comes to the same, cell by cell, when LibreOffice works it out. */
class ThirdEngineTest {

  private static final Path FORMULAS = Path.of("src/test/cases/formula/every-function.txt");
  private static final int COLUMN = 25;

  /** Functions without a value to compare: they change at every opening, or are not followed. */
  private static final Set<String> NOT_COMPARED =
      Set.of("TODAY", "NOW", "RAND", "RANDBETWEEN", "INDIRECT", "OFFSET", "DOLLAR");

  /** Functions that came to LibreOffice with 24.8; older ones do not know them. */
  private static final Set<String> NEW_THERE = Set.of("XLOOKUP", "XMATCH");

  /** A line of the table in docs/limits.md: the formula, what is made here, what LibreOffice makes. */
  private static final Pattern TOLD = Pattern.compile("\\| `(.+)` \\| ([^|]+) \\| ([^|]+) \\|");

  /** Formulas where LibreOffice gives something else than Excel; each is in docs/limits.md, as are those of its table. */
  private static final Set<String> DIFFERENT = Set.of(
      "ATAN2(0,0)",
      "MROUND(5,-2)",
      "SUM(1,2,\"3\")",
      "MIN(\"4\",9)",
      "RANK(5,C1:C6)",
      "TRUE()&\"\"",
      "FALSE()&\"\"",
      "CONCATENATE(\"x\",TRUE)",
      "CONCAT(\"x\",TRUE)",
      "COUNTIF(B1:B5,7)",
      "ERROR.TYPE(SQRT(-1))",
      "FIND(\"\",\"ab\")",
      "DAYS(E4,E1)",
      "CONVERT(1,\"lbm\",\"kg\")",
      "\"\"&0.001/11",
      "\"\"&1/3/1000000",
      "\"\"&1E19",
      "\"\"&1E20");

  @Test
  void every_function_is_among_them_in_five_ways() throws IOException {
    Map<String, Integer> ways = new HashMap<>();
    for (String formula : formulas()) {
      Formula.of(formula);
      calls(Formula.of(formula).tree())
          .distinct()
          .forEach(name -> ways.merge(name, 1, Integer::sum));
    }
    List<String> few = Catalog.names().stream()
        .filter(name -> !NOT_COMPARED.contains(name) && ways.getOrDefault(name, 0) < 5)
        .toList();
    assertThat(few).isEmpty();
  }

  private static Stream<String> calls(Node node) {
    Stream<String> own =
        node instanceof Node.Call call ? Stream.of(call.function()) : Stream.empty();
    return Stream.concat(own, node.parts().stream().flatMap(ThirdEngineTest::calls));
  }

  @Test
  void what_the_limits_tell_of_true_and_false_is_made_here() throws IOException {
    Map<String, Value[]> told = told();
    told.forEach((formula, values) ->
        assertThat(Formula.of(formula).evaluate(new Cells(0))).as(formula).isEqualTo(values[0]));
    assertThat(told).containsKeys("1=TRUE", "TRUE>\"z\"").hasSizeGreaterThan(25);
  }

  private static Map<String, Value[]> told() throws IOException {
    Map<String, Value[]> told = new LinkedHashMap<>();
    boolean within = false;
    for (String line : Files.readAllLines(Path.of("docs/limits.md"))) {
      within = line.isBlank()
          ? false
          : within || line.equals("| formula | here, as Excel | LibreOffice |");
      Matcher row = TOLD.matcher(line);
      if (within && row.matches()) {
        told.put(row.group(1), new Value[] {shown(row.group(2)), shown(row.group(3))});
      }
    }
    return told;
  }

  private static Value shown(String text) {
    return text.matches("[0-9.]+")
        ? new Value.Number(Double.parseDouble(text))
        : text.matches("TRUE|FALSE")
            ? new Value.Truth(text.equals("TRUE"))
            : text.startsWith("#") ? new Value.Fault(text) : new Value.Text(text.replace("\"", ""));
  }

  @Test
  void libreoffice_comes_to_the_same_values(@TempDir Path folder) throws Exception {
    Optional<Path> soffice = soffice();
    assumeThat(soffice).as("soffice on the path").isPresent();
    List<String> formulas = formulas();
    Path written = folder.resolve("written.xlsx");
    write(formulas, written);
    Path out = folder.resolve("out");
    Process process = new ProcessBuilder(
            soffice.get().toString(),
            "-env:UserInstallation=" + folder.resolve("profile").toUri(),
            "--headless",
            "--convert-to",
            "xlsx",
            "--outdir",
            out.toString(),
            written.toString())
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("log").toFile())
        .start();
    boolean ended = process.waitFor(180, TimeUnit.SECONDS);
    process.destroy();
    assumeThat(ended).as("soffice ends within three minutes").isTrue();
    assertThat(differences(formulas, out.resolve("written.xlsx"))).isEmpty();
  }

  private static List<String> formulas() throws IOException {
    Stream<String> everyFunction = Files.readAllLines(FORMULAS).stream()
        .filter(line -> !line.startsWith("#"))
        .flatMap(line -> Stream.of(line.split("  \\|  ")));
    return Stream.concat(everyFunction, told().keySet().stream()).distinct().toList();
  }

  private static Optional<Path> soffice() {
    return Stream.of(System.getenv("PATH").split(":"))
        .map(folder -> Path.of(folder, "soffice"))
        .filter(Files::isExecutable)
        .findFirst();
  }

  private static List<String> differences(List<String> formulas, Path file) throws IOException {
    List<String> differences = new ArrayList<>();
    Map<String, Value[]> told = told();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      for (int i = 0; i < formulas.size(); i++) {
        String formula = formulas.get(i);
        Value ours = Formula.of(formula).evaluate(new Cells(i));
        Value theirs = value(sheet.getRow(i).getCell(COLUMN));
        boolean compared = !DIFFERENT.contains(formula)
            && !told.containsKey(formula)
            && calls(Formula.of(formula).tree()).noneMatch(name -> isUnknown(name, theirs));
        if (compared && !isSame(ours, theirs)) {
          differences.add(formula + ": " + ours + ", but LibreOffice " + theirs);
        }
        if (told.containsKey(formula) && !theirs.equals(told.get(formula)[1])) {
          differences.add(formula + ": docs/limits.md tells of " + told.get(formula)[1]
              + ", but LibreOffice makes " + theirs);
        }
      }
    }
    return differences;
  }

  private static boolean isUnknown(String function, Value theirs) {
    return NEW_THERE.contains(function) && theirs.equals(new Value.Fault("#NAME?"));
  }

  private static boolean isSame(Value ours, Value theirs) {
    if (ours instanceof Value.Number a && theirs instanceof Value.Number b) {
      double size = Math.max(1, Math.max(Math.abs(a.value()), Math.abs(b.value())));
      return Math.abs(a.value() - b.value()) <= size * 1e-12;
    }
    // LibreOffice writes errors of its own, such as Err:502 for #NUM!, into files as #VALUE!
    boolean errors = ours instanceof Value.Fault && theirs.equals(new Value.Fault("#VALUE!"));
    return errors || ours.equals(theirs);
  }

  private static Value value(XSSFCell cell) {
    return switch (cell.getCachedFormulaResultType()) {
      case NUMERIC -> Value.of(cell.getNumericCellValue());
      case STRING -> new Value.Text(cell.getStringCellValue());
      case BOOLEAN -> new Value.Truth(cell.getBooleanCellValue());
      case ERROR ->
        new Value.Fault(FormulaError.forInt(cell.getErrorCellValue()).getString());
      default -> new Value.Blank();
    };
  }

  private static void write(List<String> formulas, Path file) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      XSSFSheet sheet = workbook.createSheet("Sheet1");
      for (int i = 0; i < Math.max(8, formulas.size()); i++) {
        Row row = sheet.createRow(i);
        for (int column = 0; column < 7; column++) {
          put(row, column, Cells.at(new Ref(i, column)));
        }
        if (i < formulas.size()) {
          XSSFCell cell = (XSSFCell) row.createCell(COLUMN);
          cell.getCTCell().addNewF().setStringValue(Formula.of(formulas.get(i)).toFile());
        }
      }
      workbook.write(out);
    }
  }

  private static void put(Row row, int column, Value value) {
    if (value instanceof Value.Number number) {
      row.createCell(column).setCellValue(number.value());
    } else if (value instanceof Value.Text text) {
      row.createCell(column).setCellValue(text.value());
    } else if (value instanceof Value.Truth truth) {
      row.createCell(column).setCellValue(truth.value());
    } else if (value instanceof Value.Fault) {
      Cell cell = row.createCell(column);
      cell.setCellErrorValue(FormulaError.NA.getCode());
    }
  }

  /** The cells that the formulas are over. */
  private record Cells(int row) implements Scope {

    private static final double[][] NUMBERS = {
      {12, -3.5, 0, 100, 33.3, 0.1},
      {},
      {1, 2, 4, 6, 8, 12},
      {1.0035, 1.0138, 1.0541, 1.118, 1.2019, 1.4142},
      {36526, 38749, 40000, 45000.5, 100, 61}
    };
    private static final List<String> TEXTS = List.of("ridge", "hip", "7", "eave", "Hip");

    static Value at(Ref ref) {
      if (ref.column() < 5 && ref.row() < NUMBERS[ref.column()].length) {
        return new Value.Number(NUMBERS[ref.column()][ref.row()]);
      }
      if (ref.column() == 1 && ref.row() < TEXTS.size()) {
        return new Value.Text(TEXTS.get(ref.row()));
      }
      if (ref.column() == 6 && ref.row() < 2) {
        return ref.row() == 0 ? new Value.Truth(true) : new Value.Number(1);
      }
      return ref.equals(Ref.parse("F1")) ? new Value.Fault("#N/A") : new Value.Blank();
    }

    @Override
    public Value cell(Address cell) {
      return at(cell.ref());
    }

    @Override
    public Optional<Block> used(String sheet) {
      return Optional.of(Block.parse("A1:G7"));
    }

    @Override
    public Optional<Address> here() {
      return Optional.of(new Address("Sheet1", new Ref(row, COLUMN)));
    }
  }
}
