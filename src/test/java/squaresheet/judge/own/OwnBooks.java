package squaresheet.judge.own;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import squaresheet.binding.FieldNotes;
import squaresheet.binding.FieldSheet;
import squaresheet.binding.JobWorkbook;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;
import squaresheet.job.Company;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.judge.made.Calculator;
import squaresheet.judge.made.KnownCell;
import squaresheet.judge.made.MadeBook;
import squaresheet.judge.made.Meaning;
import squaresheet.product.Catalogue;
import squaresheet.takeoff.Rulebook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** Job workbooks of the product's own layout, written by the product from made-up field sheets, their values stored by another engine. */
public final class OwnBooks {

  /** Defined names of the job workbook and what their cells mean; the rest are formulas of the rulebook. */
  private static final Map<String, Meaning> MEANINGS = meanings();

  private OwnBooks() {}

  private static Map<String, Meaning> meanings() {
    Map<String, Meaning> all = new LinkedHashMap<>();
    "plane_name PLANE_NAME eave_width EAVE plane_up_slope LENGTH_UP_SLOPE plane_top RIDGE pitch_rise PITCH pitch_factor PITCH_FACTOR"
        .concat(
            " gross_sloped_area SLOPED_AREA net_sloped_area SLOPED_AREA plan_area PLAN_AREA plane_squares SQUARES edge_kind EDGE_KIND")
        .concat(
            " edge_taped EDGE_LENGTH edge_length EDGE_LENGTH eave_length EDGE_TOTAL rake_length EDGE_TOTAL ridge_length EDGE_TOTAL")
        .concat(
            " hip_length EDGE_TOTAL valley_length EDGE_TOTAL waste_rate WASTE_RATE typed_waste WASTE_RATE gross_area GROSS_AREA")
        .concat(
            " net_squares SQUARES order_squares GROSS_SQUARES shingle_bundles PACKS starter_bundles PACKS cap_bundles PACKS")
        .concat(
            " underlayment_rolls PACKS ice_barrier_rolls PACKS eave_metal_packs PACKS rake_metal_packs PACKS nail_boxes PACKS")
        .concat(
            " price_amount PRICE crew_rate HOUR_RATE rate_amount HOURS overhead_rate MARKUP_RATE profit_rate MARKUP_RATE tax_rate TAX_RATE")
        .concat(
            " payment_share SHARE line_quantity QUANTITY line_price PRICE line_amount AMOUNT estimate_cost SUBTOTAL estimate_base SUBTOTAL")
        .concat(
            " estimate_price SUBTOTAL estimate_tax TAX estimate_total TOTAL category_total CROSS_TOTAL code_total CROSS_TOTAL")
        .lines()
        .flatMap(line -> Pattern.compile("(\\S+) (\\S+)").matcher(line).results())
        .forEach(pair -> all.put(pair.group(1), Meaning.valueOf(pair.group(2))));
    return all;
  }

  /** The workbook that the seed draws. Odd seeds are seen, even ones unseen. */
  public static MadeBook book(long seed, Path folder) {
    Path file = folder.resolve("job-" + seed + ".xlsx");
    try {
      Company company = company(seed);
      FieldNotes notes = FieldSheet.read(TapeSheets.of(seed), "tape-" + seed + ".csv", Locale.US)
          .value()
          .orElseThrow();
      JobInput input = notes.job(company).value().orElseThrow();
      JobResult result = JobResult.of(input).value().orElseThrow();
      Xlsx.write(JobWorkbook.write(input, result, notes), file, Existing.REPLACE);
      return known(
          seed,
          Calculator.office(folder)
              .calculated(List.of(Files.readAllBytes(file)))
              .get(0));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The example company with prices of its own. */
  private static Company company(long seed) throws IOException {
    Random random = new Random(seed);
    String prices = Pattern.compile("(?m)^([\\w-]+),(\\d+\\.\\d+),")
        .matcher(Files.readString(Path.of("demo-data/prices.csv")))
        .replaceAll(row -> String.format(
            Locale.ROOT,
            "%s,%.2f,",
            row.group(1),
            Double.parseDouble(row.group(2)) * (0.8 + 0.4 * random.nextDouble())));
    return new Company(
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow(),
        Rulebook.standard(),
        PriceList.read(prices, "prices.csv", "USD").value().orElseThrow(),
        Rates.read(Files.readString(Path.of("demo-data/rates.csv")), "rates.csv", "USD")
            .value()
            .orElseThrow(),
        Terms.read(Files.readString(Path.of("demo-data/terms.csv")), "terms.csv")
            .value()
            .orElseThrow());
  }

  private static MadeBook known(long seed, byte[] calculated) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(calculated))) {
      List<KnownCell> cells = new ArrayList<>();
      for (Name name : book.getAllNames()) {
        if (!name.isDeleted() && !name.getNameName().startsWith("_xlnm")) {
          cells(book, name, cells);
        }
      }
      return new MadeBook(
          "own, " + seed,
          "job workbook",
          true,
          seed % 2 == 0,
          calculated,
          cells,
          at(cells, Meaning.TOTAL).findFirst().map(KnownCell::at),
          at(cells, Meaning.PACKS).map(KnownCell::at).toList());
    }
  }

  private static Stream<KnownCell> at(List<KnownCell> cells, Meaning meaning) {
    return cells.stream().filter(cell -> cell.meaning() == meaning && !cell.typed());
  }

  private static void cells(XSSFWorkbook book, Name name, List<KnownCell> cells) {
    if (name.getRefersToFormula().contains("#REF")) {
      return;
    }
    AreaReference area = new AreaReference(name.getRefersToFormula(), book.getSpreadsheetVersion());
    for (CellReference ref : area.getAllReferencedCells()) {
      Sheet sheet = book.getSheet(ref.getSheetName());
      Optional.ofNullable(sheet.getRow(ref.getRow()))
          .map(row -> row.getCell(ref.getCol(), Row.MissingCellPolicy.RETURN_BLANK_AS_NULL))
          .ifPresent(cell -> cells.add(known(name.getNameName(), cell)));
    }
  }

  private static KnownCell known(String name, Cell cell) {
    boolean typed = cell.getCellType() != CellType.FORMULA;
    Meaning meaning =
        MEANINGS.getOrDefault(typed ? name.replaceFirst("_typed$", "") : name, Meaning.OTHER);
    boolean taped = typed && cell.getSheet().getSheetName().matches("Planes|Openings|Edges");
    String at = cell.getSheet().getSheetName() + "!" + cell.getAddress();
    return new KnownCell(
        at,
        meaning,
        name.toLowerCase(Locale.ROOT),
        "",
        typed,
        name,
        taped ? List.of("as written on the tape sheet") : List.of());
  }
}
