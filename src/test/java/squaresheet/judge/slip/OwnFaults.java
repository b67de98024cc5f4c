package squaresheet.judge.slip;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import squaresheet.judge.made.KnownCell;

/** Faults of the rules in job workbooks of the product's own layout: the workbook declares its rules, so each contradicts them. */
final class OwnFaults {

  private static final String HIP = "^SQRT\\((.*?)\\^2\\+(.*?)\\^2\\)$";

  /** Pieces in a bundle or a box: sixteen and more. */
  private static final String PIECES = "(1[6-9]|[2-9]\\d|\\d{3,})(\\.0)?";

  private OwnFaults() {}

  static List<Fault> all() {
    return List.of(
        rule(
            "LOG-02",
            "factor on an area of the slope",
            "gross_sloped_area",
            "^(.*)$",
            "($1)*1.118"),
        rule("LOG-11", "overhang left out", "ice_reach", "eave_overhang\\+", ""),
        rule("LOG-16", "vent area in square feet", "vent_area", "\\*144", ""),
        rule("UNI-13", "inches used as feet", "cap_pieces", "\\*12", ""),
        rule("DOM-01", "plan length for a hip", "edge_by_shape", HIP, "$1"),
        rule("DOM-02", "common factor on a hip", "edge_by_shape", HIP, "$2"),
        rule("DOM-05", "starter without rakes", "starter_run", "\\+.*$", ""),
        rule("DOM-06", "cap by a coverage in square feet", "cap_pieces", "cap_exposure", "33.3"),
        rule("DOM-08", "ice rows without the slope", "ice_reach", "\\*Planes!\\$[A-Z]+\\d+", ""),
        rule(
            "DOM-09",
            "ice barrier from the eave",
            "ice_reach",
            "eave_overhang\\+wall_offset\\+",
            ""),
        rule("DOM-10", "valleys left out", "ice_barrier_length", "\\+ice_valley_length", ""),
        rule("DOM-11", "roll without its lap", "single_sheet_length", "-underlayment_side_lap", ""),
        rule("DOM-12", "one layer on a low slope", "underlayment_layers", "^IF.*$", "1"),
        rule("FRM-18", "band with the wrong limit", "underlayment_layers", "<", "<="),
        rule("ACC-04", "discount in the other order", "discount_before", "before tax", "after tax"),
        rule("ACC-09", "amount not rounded", "line_amount", "^ROUND\\((.*),2\\)$", "$1"),
        rule("FRM-04", "one row's factor for all", "gross_sloped_area", "\\$C(\\d+)", "\\$C\\$5"),
        rule("FRM-08", "a deleted cell in a rule", "starter_run", "^(.*)$", "$1+#REF!"),
        typed("DOM-14", "bundles of another product", "catalogue_pieces_per_pack", PIECES, "29"),
        typed("LOG-09", "triangle as a rectangle", "plane_shape", "triangle", "rectangle"),
        typed("DOM-17", "a hip called a ridge", "edge_kind", "hip", "ridge"),
        new Fault("FRM-20", "a name that points elsewhere", OwnFaults::name));
  }

  private static Optional<KnownCell> any(OpenBook book, String name, boolean typed) {
    return any(book, name, typed, cell -> true);
  }

  /** One of the cells of a name that have a place for the fault. */
  private static Optional<KnownCell> any(
      OpenBook book, String name, boolean typed, Predicate<KnownCell> fits) {
    return book.made.own()
        ? book.any(book.made.cells().stream()
                .filter(cell -> cell.run().equals(name) && cell.typed() == typed)
                .filter(fits)
                .toList())
            .findFirst()
        : Optional.empty();
  }

  private static Fault rule(String id, String name, String rule, String pattern, String by) {
    return new Fault(id, name + ", own", book -> any(book, rule, false).flatMap(cell -> {
      String text = book.content(cell.at()).substring(1);
      String after = text.replaceFirst(pattern, by);
      if (after.equals(text)) {
        return Optional.empty();
      }
      book.formula(cell.at(), after);
      return Optional.of(Fault.Done.at(cell.at(), true));
    }));
  }

  private static Fault typed(String id, String name, String rule, String before, String word) {
    return new Fault(id, name + ", own", book -> any(
            book,
            rule,
            true,
            cell -> book.content(cell.at()).matches(before)
                && !book.content(cell.at()).equals(word))
        .map(cell -> {
          if (word.matches("\\d+")) {
            book.type(cell.at(), Double.parseDouble(word));
          } else {
            book.type(cell.at(), word);
          }
          List<String> shape = book.made.cells().stream()
              .filter(each -> each.run().matches("plane_name|edge_.*|.*_length"))
              .map(KnownCell::at)
              .toList();
          return Fault.Done.at(cell.at(), true).touching(shape);
        }));
  }

  private static Optional<Fault.Done> name(OpenBook book) {
    if (!book.made.own()) {
      return Optional.empty();
    }
    book.book
        .getName("overhead_rate")
        .setRefersToFormula(book.book.getName("profit_rate").getRefersToFormula());
    return any(book, "overhead_rate", true)
        .map(cell -> new Fault.Done(
            List.of(
                cell.at(),
                any(book, "profit_rate", true).map(KnownCell::at).orElse(cell.at()),
                any(book, "estimate_base", false).map(KnownCell::at).orElse(cell.at())),
            true,
            false));
  }
}
