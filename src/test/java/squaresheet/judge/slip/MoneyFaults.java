package squaresheet.judge.slip;

import static squaresheet.judge.made.Meaning.AMOUNT;
import static squaresheet.judge.made.Meaning.CROSS_TOTAL;
import static squaresheet.judge.made.Meaning.EDGE_TOTAL;
import static squaresheet.judge.made.Meaning.MARKUP_RATE;
import static squaresheet.judge.made.Meaning.PACKS;
import static squaresheet.judge.made.Meaning.PRICE;
import static squaresheet.judge.made.Meaning.PRODUCT_NAME;
import static squaresheet.judge.made.Meaning.QUANTITY;
import static squaresheet.judge.made.Meaning.SLOPED_AREA;
import static squaresheet.judge.made.Meaning.SUBTOTAL;
import static squaresheet.judge.slip.FormulaFaults.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import squaresheet.judge.made.KnownCell;
import squaresheet.judge.made.Meaning;

/** Faults of the list of what is bought and of the way to the price, in other people's workbooks. */
@SuppressWarnings("UnnecessaryLambda") // each stands beside others that take parameters
final class MoneyFaults {

  private MoneyFaults() {}

  static List<Fault> all() {
    List<Fault> all = List.of(
        priced("UNI-09", "bundle price by squares", "shingles", QUANTITY, "install"),
        priced("UNI-10", "roll price by square feet", "felt", SLOPED_AREA, "job"),
        priced("UNI-11", "piece price by feet", "metal", EDGE_TOTAL, "Eave"),
        Fault.oneRow("UNI-12", "labor with the waste", withWaste(), QUANTITY).unseen(),
        new Fault("UNI-15", "unlike units summed", MoneyFaults::mixed),
        Fault.oneRow(
                "ACC-01",
                "rounded sum for a sum of rounded lines",
                swap("^SUM\\(E(\\d+):E(\\d+)\\)$", "ROUND(SUMPRODUCT(B$1:B$2,D$1:D$2),2)"),
                SUBTOTAL)
            .unseen(),
        Fault.oneRow("ACC-09", "amount not rounded", swap("^ROUND\\((.*),2\\)$", "$1"), AMOUNT),
        Fault.everyRow("ACC-09", "amount not rounded", swap("^ROUND\\((.*),2\\)$", "$1"), AMOUNT)
            .unseen(),
        new Fault("ACC-06", "a total of a table typed over", MoneyFaults::crossTotal),
        new Fault("ACC-07", "markup on the total once more", MoneyFaults::markupTwice),
        new Fault(
            "ACC-08",
            "an option in the base price",
            book -> line(book, "Option, not in the price: copper valley", 640)),
        new Fault("ACC-11", "sold below cost", MoneyFaults::belowCost),
        Fault.oneRow(
            "ITG-10",
            "a lookup key that nobody has",
            swap("(VLOOKUP\\(|MATCH\\()\\$?[A-Z]+\\$?\\d+", "$1\"no such item\""),
            PRICE),
        new Fault("ITG-09", "typed from the display", MoneyFaults::fromDisplay),
        new Fault("DAT-14", "a code of more digits than are kept", MoneyFaults::longCode),
        new Fault("STL-09", "a price older than its validity", MoneyFaults::oldPrice),
        new Fault("STL-06", "a price that hangs on the day", MoneyFaults::byDay));
    List<Fault> foreign = new ArrayList<>(all.stream().map(Fault::foreign).toList());
    foreign.add(new Fault(
        "ACC-06",
        "a sum by category typed over",
        book -> book.made.own() ? crossTotal(book) : Optional.empty()));
    foreign.add(new Fault(
        "ACC-11",
        "sold below cost, own",
        book -> book.made.own() ? belowCost(book) : Optional.empty()));
    return foreign;
  }

  /** Reads another quantity for the price of an item. */
  private static Fault priced(
      String id, String name, String item, Meaning other, String otherItem) {
    return Fault.oneRow(
        id,
        name,
        (book, cell) -> book.made
            .all(other)
            .filter(each -> each.item().equals(otherItem))
            .filter(each -> each.run().isEmpty() || other == EDGE_TOTAL)
            .findFirst()
            .filter(each -> cell.item().equals(item))
            .map(each -> book.content(cell.at())
                .substring(1)
                .replaceFirst("[A-Z]+\\d+", quoted(each.at(), cell.at()))),
        AMOUNT);
  }

  /** An address as the formula of a cell names it. */
  static String quoted(String at, String from) {
    int mark = at.lastIndexOf('!');
    return at.substring(0, mark).equals(from.substring(0, from.lastIndexOf('!')))
        ? at.substring(mark + 1)
        : "'" + at.substring(0, mark) + "'" + at.substring(mark);
  }

  private static BiFunction<OpenBook, KnownCell, Optional<String>> withWaste() {
    return (book, cell) -> book.all(false, PACKS).stream()
        .map(packs -> book.content(packs.at()))
        .filter(text -> text.contains("(1+"))
        .map(text -> text.replaceAll("^.*(\\*\\(1\\+[^)]*\\)).*$", "$1"))
        .findFirst()
        .filter(waste -> cell.item().equals("install"))
        .map(waste -> book.content(cell.at()).substring(1) + waste);
  }

  /** Feet and square feet in one sum. */
  private static Optional<Fault.Done> mixed(OpenBook book) {
    return book.made
        .all(EDGE_TOTAL)
        .findFirst()
        .flatMap(feet -> book.all(false, SLOPED_AREA).stream()
            .filter(cell -> cell.item().equals("job") && cell.run().isEmpty())
            .findFirst()
            .map(area -> {
              Sheet sheet = book.cell(area.at()).getSheet();
              String at = sheet.getSheetName() + "!A" + (sheet.getLastRowNum() + 4);
              book.type(at, "Everything measured");
              String sum = OpenBook.moved(at, 0, 1);
              book.formula(sum, quoted(area.at(), at) + "+" + quoted(feet.at(), at));
              return Fault.Done.at(sum, true);
            }));
  }

  private static Optional<Fault.Done> crossTotal(OpenBook book) {
    return book.any(book.all(false, CROSS_TOTAL)).findFirst().map(cell -> {
      book.type(cell.at(), Math.round(book.value(cell.at()) * 90) / 100.0);
      return Fault.Done.at(cell.at(), true);
    });
  }

  private static Optional<KnownCell> beforeTax(OpenBook book) {
    return book.all(false, SUBTOTAL).stream()
        .filter(cell -> cell.item().matches("Price before tax|estimate_price"))
        .findFirst();
  }

  private static Optional<Fault.Done> markupTwice(OpenBook book) {
    return beforeTax(book).flatMap(cell -> book.all(true, MARKUP_RATE).stream()
        .filter(rate -> rate.item().equals("profit") && rate.unit().isEmpty())
        .findFirst()
        .map(rate -> {
          String text = book.content(cell.at()).substring(1);
          book.formula(cell.at(), "(" + text + ")*(1+" + quoted(rate.at(), cell.at()) + ")");
          return Fault.Done.at(cell.at(), true);
        }));
  }

  private static Optional<Fault.Done> belowCost(OpenBook book) {
    return beforeTax(book).flatMap(cell -> book.all(false, SUBTOTAL).stream()
        .filter(cost -> cost.item().matches("Cost|estimate_cost"))
        .findFirst()
        .map(cost -> {
          book.type(cell.at(), Math.rint(book.value(cost.at()) * 0.95));
          return Fault.Done.at(cell.at(), true);
        }));
  }

  /** A line more among the works; the sums take it in. */
  static Optional<Fault.Done> line(OpenBook book, String name, double price) {
    return book.all(true, PRODUCT_NAME).stream()
        .filter(cell -> cell.item().equals("permit") && !cell.at().startsWith("Price"))
        .findFirst()
        .map(permit -> {
          Cell before = book.cell(permit.at());
          Row row = StructureFaults.insert(before);
          row.createCell(0).setCellValue(name);
          row.createCell(1).setCellValue(1);
          row.createCell(2).setCellValue("each");
          row.createCell(3).setCellValue(price);
          String at = "" + (row.getRowNum() + 1);
          String below = row.getSheet().getRow(row.getRowNum() + 1).getCell(4).getCellFormula();
          row.createCell(4).setCellFormula(below.replaceAll("([BD])\\d+", "$1" + at));
          List<String> cells = new ArrayList<>();
          row.forEach(cell -> cells.add(row.getSheet().getSheetName() + "!" + cell.getAddress()));
          book.all(false, SUBTOTAL).stream()
              .filter(cell -> cell.item().equals("labor"))
              .forEach(cell -> cells.add(OpenBook.moved(cell.at(), 1, 0)));
          return new Fault.Done(cells, true, false).moving(StructureFaults.under(row));
        });
  }

  private static Optional<Fault.Done> fromDisplay(OpenBook book) {
    return book.any(book.all(false, QUANTITY)).findFirst().map(cell -> {
      book.type(cell.at(), Math.rint(book.value(cell.at())));
      return Fault.Done.at(cell.at(), true);
    });
  }

  /** The typed prices of the job with something more in a column beside them. */
  private static Optional<Fault.Done> beside(
      OpenBook book,
      String heading,
      boolean list,
      Function<List<String>, Optional<Fault.Done>> fill) {
    List<KnownCell> prices = book.all(true, PRICE).stream()
        .filter(cell -> cell.at().startsWith("Price") == list)
        .toList();
    int right = list ? 1 : 3;
    if (prices.size() < 5) {
      return Optional.empty();
    }
    String head = OpenBook.moved(prices.get(0).at(), -1, right);
    book.type(head, heading);
    return fill.apply(
        prices.stream().map(cell -> OpenBook.moved(cell.at(), 0, right)).toList());
  }

  private static Optional<Fault.Done> longCode(OpenBook book) {
    boolean list = book.random.nextBoolean();
    return beside(book, "Item code", list, cells -> {
      for (int i = 0; i < cells.size(); i++) {
        book.type(cells.get(i), "41000000000000" + (10 + i) + "0");
      }
      book.type(cells.get(2), 1234567890123450d);
      BookFaults.format(book, cells.get(2), "0");
      return Optional.of(Fault.Done.at(cells.get(2), true));
    });
  }

  private static Optional<Fault.Done> oldPrice(OpenBook book) {
    return beside(book, "Price valid until", true, cells -> {
      cells.forEach(cell -> day(book, cell, 46387));
      day(book, cells.get(2), 45291);
      book.made.total().ifPresent(total -> {
        String label = OpenBook.moved(total, 3, 0);
        book.type(OpenBook.moved(label, 0, -book.cell(label).getColumnIndex()), "Bid date");
        day(book, label, 46150);
      });
      return Optional.of(Fault.Done.at(cells.get(2), true));
    });
  }

  private static void day(OpenBook book, String at, double day) {
    book.type(at, day);
    BookFaults.format(book, at, "m/d/yyyy");
  }

  private static Optional<Fault.Done> byDay(OpenBook book) {
    return book.any(book.all(true, PRICE)).findFirst().map(cell -> {
      double price = book.value(cell.at());
      book.formula(
          cell.at(),
          "IF(TODAY()>DATE(2020,1,1)," + price + "," + Math.round(price * 90) / 100.0 + ")");
      return Fault.Done.at(cell.at(), true);
    });
  }
}
