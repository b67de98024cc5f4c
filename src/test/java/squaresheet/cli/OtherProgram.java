package squaresheet.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.formula.eval.EvaluationException;
import org.apache.poi.ss.formula.eval.FunctionEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.NumericValueEval;
import org.apache.poi.ss.formula.eval.OperandResolver;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.ss.util.NumberToTextConverter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A person with a workbook of ours open in another program, Apache POI, who finds cells by defined name and row. */
final class OtherProgram implements AutoCloseable {

  /** The one formula of ours that the other program does not work out: it rounds no array. */
  private static final Pattern ROUNDED_LINES =
      Pattern.compile("SUMPRODUCT\\(ROUND\\((\\w+)\\*(\\w+),2\\)\\)");

  static {
    // the one function of our workbooks that the other program lacks
    if (FunctionEval.getNotSupportedFunctionNames().contains("N")) {
      FunctionEval.registerFunction("N", OtherProgram::numberOnly);
    }
  }

  private final Path file;
  private final XSSFWorkbook book;

  private OtherProgram(Path file, XSSFWorkbook book) {
    this.file = file;
    this.book = book;
  }

  static OtherProgram open(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return new OtherProgram(file, new XSSFWorkbook(in));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static ValueEval numberOnly(ValueEval[] arguments, int row, int column) {
    try {
      ValueEval value = OperandResolver.getSingleValue(arguments[0], row, column);
      return value instanceof NumericValueEval number
          ? new NumberEval(number.getNumberValue())
          : NumberEval.ZERO;
    } catch (EvaluationException fault) {
      return fault.getErrorEval();
    }
  }

  /** The first cell of a defined name. */
  Cell cell(String name) {
    return cells(name).get(0);
  }

  /** The cells of a defined name, in order. */
  List<Cell> cells(String name) {
    List<Cell> cells = new ArrayList<>();
    AreaReference area =
        new AreaReference(book.getName(name).getRefersToFormula(), book.getSpreadsheetVersion());
    for (CellReference at : area.getAllReferencedCells()) {
      Row row = book.getSheet(at.getSheetName()).getRow(at.getRow());
      cells.add(row.getCell(at.getCol(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK));
    }
    return cells;
  }

  /** The cell of a column in the first row in which another column reads so. */
  Cell cell(String column, String key, String reads) {
    List<Cell> keys = cells(key);
    for (int row = 0; row < keys.size(); row++) {
      if (new DataFormatter().formatCellValue(keys.get(row)).equals(reads)) {
        return cells(column).get(row);
      }
    }
    throw new AssertionError("no row of " + key + " reads " + reads);
  }

  /** Works everything out anew, by the other program's own engine. */
  OtherProgram recalculate() {
    List<Cell> formulas = formulas();
    Map<Cell, String> arrays = new LinkedHashMap<>();
    formulas.stream()
        .filter(cell -> cell.getCellFormula().contains("SUMPRODUCT("))
        .forEach(cell -> arrays.put(cell, cell.getCellFormula()));
    arrays.forEach(OtherProgram::asArray);
    arrays.forEach(this::roundedLines);
    book.getCreationHelper().createFormulaEvaluator().evaluateAll();
    arrays.forEach(OtherProgram::asBefore);
    return this;
  }

  private List<Cell> formulas() {
    List<Cell> formulas = new ArrayList<>();
    book.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> {
      if (cell.getCellType() == CellType.FORMULA) {
        formulas.add(cell);
      }
    })));
    return formulas;
  }

  /** The other program multiplies columns only in cells that are marked as holding an array. */
  private static void asArray(Cell cell, String formula) {
    cell.getSheet()
        .setArrayFormula(
            formula,
            new CellRangeAddress(
                cell.getRowIndex(),
                cell.getRowIndex(),
                cell.getColumnIndex(),
                cell.getColumnIndex()));
  }

  private static void asBefore(Cell cell, String formula) {
    double value = cell.getNumericCellValue();
    if (cell.isPartOfArrayFormulaGroup()) {
      cell.getSheet().removeArrayFormula(cell);
    }
    cell.setCellFormula(formula);
    cell.setCellValue(value);
  }

  /** Rounds a column line by line, to the cent half up, and puts the sum for the formula that asks for it. */
  private void roundedLines(Cell cell, String formula) {
    Matcher names = ROUNDED_LINES.matcher(formula);
    if (!names.matches()) {
      return;
    }
    FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
    double rate = evaluator.evaluate(cell(names.group(2))).getNumberValue();
    BigDecimal sum = BigDecimal.ZERO;
    for (Cell line : cells(names.group(1))) {
      CellValue value = evaluator.evaluate(line);
      double taxed = value == null ? 0 : value.getNumberValue();
      sum = sum.add(new BigDecimal(NumberToTextConverter.toText(taxed * rate))
          .setScale(2, RoundingMode.HALF_UP));
    }
    cell.getSheet().removeArrayFormula(cell);
    cell.setCellValue(sum.doubleValue());
  }

  /** What the cell of a name comes to. */
  double number(String name) {
    return cell(name).getNumericCellValue();
  }

  /** Works it out and saves it in its place. */
  void save() {
    recalculate();
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  @Override
  public void close() throws IOException {
    book.close();
  }
}
