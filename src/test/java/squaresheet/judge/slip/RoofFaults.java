package squaresheet.judge.slip;

import static squaresheet.judge.made.Meaning.EDGE_KIND;
import static squaresheet.judge.made.Meaning.EDGE_TOTAL;
import static squaresheet.judge.made.Meaning.LENGTH_IN_PLAN;
import static squaresheet.judge.made.Meaning.LENGTH_UP_SLOPE;
import static squaresheet.judge.made.Meaning.PACKS;
import static squaresheet.judge.made.Meaning.PITCH;
import static squaresheet.judge.made.Meaning.PITCH_FACTOR;
import static squaresheet.judge.made.Meaning.PLANE_NAME;
import static squaresheet.judge.made.Meaning.PLAN_AREA;
import static squaresheet.judge.made.Meaning.RIDGE;
import static squaresheet.judge.made.Meaning.SLOPED_AREA;
import static squaresheet.judge.made.Meaning.SQUARES;
import static squaresheet.judge.slip.FormulaFaults.swap;
import static squaresheet.judge.slip.FormulaFaults.wrap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellCopyPolicy;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFRow;
import squaresheet.judge.made.KnownCell;
import squaresheet.judge.made.Meaning;

/** Faults of the roof's own arithmetic in other people's workbooks: areas, factors, edges, coverage. */
@SuppressWarnings("UnnecessaryLambda") // each stands beside others that take parameters
final class RoofFaults {

  private static final String WASTE = "\\*\\(1\\+([^)]*)\\)";

  private RoofFaults() {}

  static List<Fault> all() {
    List<Fault> all = new ArrayList<>(rules());
    all.addAll(List.of(
        new Fault("FRM-03", "anchor lost, the reference drifts", RoofFaults::drifting),
        new Fault("FRM-04", "every row uses the first factor", RoofFaults::firstFactor),
        new Fault("LOG-06", "rounded on each plane and summed", RoofFaults::roundedEach),
        new Fault("LOG-08", "average factor on the whole plan area", RoofFaults::average),
        new Fault("MEC-07", "filled down past the data", RoofFaults::ghost),
        new Fault("DOM-15", "a plane missing, its edges still there", RoofFaults::missing),
        new Fault("DOM-16", "plan areas off the footprint", RoofFaults::footprint),
        new Fault("DOM-03", "a shared ridge counted twice", book -> edge(book, "Back side", false)),
        new Fault("STL-08", "an edge of the last job left", book -> edge(book, "Old porch", true)),
        new Fault("DAT-02", "a pitch that became a time", RoofFaults::time)));
    return all.stream().map(Fault::foreign).toList();
  }

  private static List<Fault> rules() {
    BiFunction<OpenBook, Double, Optional<Double>> none =
        (book, value) -> value > 0 ? Optional.of(0.0) : Optional.empty();
    BiFunction<OpenBook, Double, Optional<Double>> twice = (book, value) -> Optional.of(value * 2);
    return List.of(
        Fault.everyRow("LOG-02", "factor on a length up the slope", steeper(), SLOPED_AREA)
            .unseen(),
        Fault.number(
            "LOG-09", "triangle as a rectangle", RoofFaults::rectangle, cell -> false, RIDGE),
        Fault.oneRow("LOG-11", "overhang left out", swap("\\+2\\*[A-Z]+\\d+\\)", ")"), PLAN_AREA),
        Fault.everyRow("LOG-11", "overhang on one side only", swap("\\+2\\*", "+1*"), PLAN_AREA)
            .unseen(),
        Fault.oneRow("LOG-13", "waste divided in one row", swap(WASTE, "/(1-$1)"), PACKS),
        Fault.number(
            "LOG-15",
            "rafter from the full span",
            twice,
            cell -> false,
            LENGTH_UP_SLOPE,
            LENGTH_IN_PLAN),
        Fault.oneRow(
                "DOM-05",
                "starter without rakes",
                swap("\\(([^()+]+)\\+([^()+]+)\\)/100", "($1)/100"),
                PACKS)
            .unseen(),
        Fault.oneRow(
                "DOM-06", "cap by a coverage in square feet", swap("\\)/25\\b", ")/33.3"), PACKS)
            .unseen(),
        Fault.oneRow(
                "DOM-10",
                "valleys left out of the membrane",
                swap("\\*2\\+[^()]+\\)/65", "*2)/65"),
                PACKS)
            .unseen(),
        Fault.oneRow("DOM-11", "roll without its lap", swap("/10,", "/10.8,"), PACKS)
            .unseen(),
        Fault.number(
            "DOM-13",
            "shingles on 1/12",
            (book, value) -> value > 3 && value < 13 ? Optional.of(1.0) : Optional.empty(),
            cell -> cell.unit().equals("in/12"),
            PITCH),
        Fault.oneRow("DOM-14", "bundles of another product", swap("\\*3,", "*4,"), PACKS)
            .unseen(),
        Fault.number("DOM-17", "hips of a hip roof set to none", none, cell -> false, EDGE_TOTAL));
  }

  /** A usual factor on areas that are on the slope already, where no pitch stands in the table. */
  private static BiFunction<OpenBook, KnownCell, Optional<String>> steeper() {
    return (book, cell) -> book.all(true, PITCH).isEmpty() && !cell.run().isEmpty()
        ? wrap("(", ")*1.118").apply(book, cell)
        : Optional.empty();
  }

  private static Optional<Double> rectangle(OpenBook book, double ridge) {
    return ridge > 0
        ? Optional.empty()
        : book.all(true, Meaning.EAVE).stream()
            .map(cell -> book.value(cell.at()))
            .findFirst();
  }

  private static Optional<Fault.Done> drifting(OpenBook book) {
    List<KnownCell> rows = book.all(false, SLOPED_AREA).stream()
        .filter(cell -> book.content(cell.at()).matches(".*\\*\\$[A-Z]+\\$\\d+$"))
        .toList();
    for (int i = 1; i < rows.size(); i++) {
      String text = book.content(rows.get(i).at()).substring(1);
      String fixed = text.replaceAll("^.*\\$([A-Z]+)\\$(\\d+)$", "$1$2");
      String drifted = OpenBook.moved("x!" + fixed, i, 0).substring(2);
      book.formula(rows.get(i).at(), text.replaceAll("\\$[A-Z]+\\$\\d+$", drifted));
    }
    return rows.size() < 3
        ? Optional.empty()
        : Optional.of(new Fault.Done(
            rows.subList(1, rows.size()).stream().map(KnownCell::at).toList(), true, false));
  }

  private static Optional<Fault.Done> firstFactor(OpenBook book) {
    List<KnownCell> rows = book.all(false, SLOPED_AREA).stream()
        .filter(cell -> book.content(cell.at()).matches("=[A-Z]+\\d+\\*[A-Z]+\\d+$"))
        .toList();
    if (rows.size() < 3 || !hasPitches(book)) {
      return Optional.empty();
    }
    String first = book.content(rows.get(0).at()).replaceAll("^.*\\*([A-Z]+)(\\d+)$", "\\$$1\\$$2");
    rows.forEach(cell -> book.formula(
        cell.at(), book.content(cell.at()).substring(1).replaceAll("\\*.*$", "*") + first));
    return Optional.of(new Fault.Done(rows.stream().map(KnownCell::at).toList(), true, false));
  }

  private static boolean hasPitches(OpenBook book) {
    return book.all(false, PITCH_FACTOR).stream()
            .map(cell -> book.value(cell.at()))
            .distinct()
            .count()
        > 1;
  }

  /** The cells of a family as a range, where they stand in one column. */
  private static Optional<String> range(OpenBook book, Meaning meaning) {
    List<KnownCell> rows =
        book.all(false, meaning).stream().filter(cell -> !cell.run().isEmpty()).toList();
    if (rows.size() < 2) {
      return Optional.empty();
    }
    Cell first = book.cell(rows.get(0).at());
    Cell last = book.cell(rows.get(rows.size() - 1).at());
    return first.getColumnIndex() != last.getColumnIndex()
        ? Optional.empty()
        : Optional.of("'" + first.getSheet().getSheetName() + "'!" + first.getAddress() + ":"
            + last.getAddress());
  }

  private static Optional<Fault.Done> roundedEach(OpenBook book) {
    List<KnownCell> squares =
        book.all(false, SQUARES).stream().filter(cell -> !cell.run().isEmpty()).toList();
    return book.all(false, PACKS).stream()
        .filter(cell -> cell.item().equals("shingles") && squares.size() > 1)
        .findFirst()
        .map(cell -> {
          String waste = book.content(cell.at()).replaceAll("^.*\\(1\\+([^)]*)\\).*$", "$1");
          book.formula(
              cell.at(),
              squares.stream()
                  .map(each -> "ROUNDUP(" + MoneyFaults.quoted(each.at(), cell.at()) + "*(1+"
                      + waste + ")*3,0)")
                  .collect(Collectors.joining("+")));
          return Fault.Done.at(cell.at(), false);
        });
  }

  private static Optional<Fault.Done> average(OpenBook book) {
    Optional<KnownCell> plan = total(book, PLAN_AREA);
    Optional<KnownCell> area = total(book, SLOPED_AREA);
    return plan.isEmpty() || area.isEmpty() || !hasPitches(book)
        ? Optional.empty()
        : range(book, PITCH_FACTOR).map(range -> {
          book.formula(
              area.get().at(), plan.get().at().replaceAll("^.*!", "") + "*AVERAGE(" + range + ")");
          return Fault.Done.at(area.get().at(), true);
        });
  }

  private static Optional<KnownCell> total(OpenBook book, Meaning meaning) {
    return book.all(false, meaning).stream()
        .filter(cell -> cell.item().equals("job") && cell.run().isEmpty())
        .findFirst();
  }

  private static Optional<Fault.Done> ghost(OpenBook book) {
    return StructureFaults.planes(book).findFirst().map(plane -> {
      Row row = StructureFaults.insert(book.cell(plane.at()));
      int at = row.getRowNum();
      ((XSSFRow) row).copyRowFrom(row.getSheet().getRow(at + 1), new CellCopyPolicy());
      row.getCell(book.cell(plane.at()).getColumnIndex()).setBlank();
      List<String> cells = new ArrayList<>();
      row.forEach(cell -> cells.add(row.getSheet().getSheetName() + "!" + cell.getAddress()));
      return new Fault.Done(cells, true, false).moving(StructureFaults.under(row));
    });
  }

  private static Optional<Fault.Done> missing(OpenBook book) {
    if (book.all(true, EDGE_KIND).isEmpty()) {
      return Optional.empty();
    }
    return StructureFaults.planes(book).findFirst().map(plane -> {
      Cell name = book.cell(plane.at());
      Sheet sheet = name.getSheet();
      int at = name.getRowIndex();
      List<String> cells = new ArrayList<>();
      book.all(true, EDGE_KIND).stream()
          .filter(edge -> edge.item().equals(plane.item()))
          .map(edge -> OpenBook.moved(edge.at(), -1, -1))
          .forEach(cells::add);
      total(book, SLOPED_AREA).ifPresent(sum -> cells.add(OpenBook.moved(sum.at(), -1, 0)));
      sheet.removeRow(name.getRow());
      sheet.shiftRows(at + 1, sheet.getLastRowNum(), -1);
      return new Fault.Done(cells, true, false)
          .moving(Moves.rows(sheet.getSheetName(), at + 1, -1));
    });
  }

  private static Optional<Fault.Done> footprint(OpenBook book) {
    return total(book, PLAN_AREA).map(plan -> {
      Sheet sheet = book.cell(plan.at()).getSheet();
      int free = sheet.getLastRowNum() + 3;
      Row row = sheet.createRow(free);
      row.createCell(0).setCellValue("Footprint with overhang, from the drawing (sf)");
      row.createCell(1).setCellValue(Math.rint(book.value(plan.at()) / 0.9));
      return new Fault.Done(
          List.of(plan.at(), sheet.getSheetName() + "!B" + (free + 1)), true, false);
    });
  }

  /** A ridge more in a list of edges. */
  private static Optional<Fault.Done> edge(OpenBook book, String plane, boolean identifiable) {
    List<KnownCell> ridges = book.all(true, EDGE_KIND).stream()
        .filter(cell -> book.content(cell.at()).equals("Ridge"))
        .toList();
    return ridges.isEmpty()
        ? Optional.empty()
        : book.any(ridges).findFirst().map(ridge -> {
          Cell kind = book.cell(ridge.at());
          Row row = StructureFaults.insert(kind);
          row.createCell(kind.getColumnIndex() - 1).setCellValue(plane);
          row.createCell(kind.getColumnIndex()).setCellValue("Ridge");
          row.createCell(kind.getColumnIndex() + 1)
              .setCellValue(row.getSheet()
                  .getRow(row.getRowNum() + 1)
                  .getCell(kind.getColumnIndex() + 1)
                  .getNumericCellValue());
          List<String> cells = List.of(
              OpenBook.moved(ridge.at(), 0, -1), ridge.at(), OpenBook.moved(ridge.at(), 0, 1));
          return new Fault.Done(cells, identifiable, false).moving(StructureFaults.under(row));
        });
  }

  private static Optional<Fault.Done> time(OpenBook book) {
    return book.any(book.all(true, PITCH).stream()
            .filter(cell -> cell.unit().equals("in/12"))
            .toList())
        .findFirst()
        .map(cell -> {
          book.type(cell.at(), book.value(cell.at()) / 24 + 12.0 / 24 / 60);
          BookFaults.format(book, cell.at(), "h:mm");
          return Fault.Done.at(cell.at(), true);
        });
  }

  /** The names of the planes, for look-alikes. */
  static List<String> names(OpenBook book) {
    return book.all(true, PLANE_NAME).stream()
        .map(cell -> book.content(cell.at()))
        .toList();
  }
}
