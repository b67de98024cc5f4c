package squaresheet.xlsx;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Workbooks that read well and whose formulas would keep a program busy for ever or fill its memory, written when asked for. */
final class HostileSums {

  private static final int LONGEST_FORMULA = 8192;

  private final Path folder;

  HostileSums(Path folder) {
    this.folder = folder;
  }

  /** Formulas in column B, one a row, beside the number 1 in column A. */
  private Path formulas(String name, int rows, IntFunction<String> formula) throws IOException {
    String all = IntStream.rangeClosed(1, rows)
        .mapToObj(row -> "<row r=\"" + row + "\"><c r=\"A" + row + "\"><v>1</v></c><c r=\"B" + row
            + "\"><f>" + formula.apply(row).replace("&", "&amp;") + "</f><v>1</v></c></row>")
        .collect(Collectors.joining());
    Map<String, byte[]> parts = new LinkedHashMap<>(ZipParts.smallest(ZipParts.sheet(all, "")));
    return Files.write(folder.resolve(name), ZipParts.zip(parts));
  }

  /** Every cell is made of the one below, and the last of the first. */
  Path ring() throws IOException {
    return formulas("ring.xlsx", 20_000, row -> "B" + (row % 20_000 + 1) + "+1");
  }

  /** Every cell is made of the one above. */
  Path chain() throws IOException {
    return formulas("chain.xlsx", 50_000, row -> row == 1 ? "A1" : "B" + (row - 1) + "+A" + row);
  }

  /** The longest formula the format allows, nothing but parentheses around a number. */
  Path nested() throws IOException {
    int deep = LONGEST_FORMULA / 2 - 1;
    return formulas("nested.xlsx", 3, row -> "(".repeat(deep) + row + ")".repeat(deep));
  }

  /** The longest formula, of nested calls. */
  Path nestedCalls() throws IOException {
    int deep = (LONGEST_FORMULA - 1) / 5;
    return formulas("calls.xlsx", 3, row -> "ABS(".repeat(deep) + row + ")".repeat(deep));
  }

  /** The longest formula, of signs before a number. */
  Path signs() throws IOException {
    return formulas("signs.xlsx", 3, row -> "-".repeat(LONGEST_FORMULA - 1) + row);
  }

  /** Thousands of formulas over all cells of the sheet, their own among them. */
  Path everyColumn() throws IOException {
    return formulas("columns.xlsx", 5_000, row -> "SUM(A:XFD)");
  }

  /** Thousands of formulas that multiply two whole columns cell by cell. */
  Path wholeColumns() throws IOException {
    return formulas("products.xlsx", 5_000, row -> "SUMPRODUCT(A:A*A:A)+" + row);
  }

  /** Every text is twice the one above. */
  Path doubling() throws IOException {
    return formulas(
        "doubling.xlsx",
        60,
        row -> row == 1 ? "REPT(\"shingle \",1000)" : "B" + (row - 1) + "&B" + (row - 1));
  }

  /** Every cell looks at two above it, so that a reader who forgets looks for ever. */
  Path branching() throws IOException {
    return formulas(
        "branching.xlsx", 200, row -> row < 3 ? "A" + row : "B" + (row - 1) + "+B" + (row - 2));
  }

  /** Running totals over everything above: a triangle of sums. */
  Path triangle() throws IOException {
    return formulas("triangle.xlsx", 20_000, row -> "SUM(A$1:A" + row + ")");
  }
}
