package squaresheet.verify;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import squaresheet.binding.AnyLayout;
import squaresheet.formula.Labels;

/** Everything in a workbook that a check can be asked about, by type. */
final class Subjects {

  private final Map<Class<?>, List<?>> byType = new LinkedHashMap<>();

  private Subjects() {}

  static Subjects of(Book book) {
    Subjects all = new Subjects();
    all.put(Book.class, Stream.of(book));
    all.put(Tab.class, book.tabs().stream());
    all.put(
        Table.class,
        book.tabs().stream()
            .filter(tab -> !AnyLayout.isOurs(tab.sheet()))
            .flatMap(tab -> tab.tables().stream()));
    all.put(Fill.class, all.of(Table.class).stream().flatMap(table -> table.fills().stream()));
    all.put(
        FormulaCell.class,
        book.formulas().entrySet().stream()
            .map(entry -> new FormulaCell(book, entry.getKey(), entry.getValue())));
    all.formulas();
    all.put(TypedCell.class, book.tabs().stream().flatMap(Subjects::typed));
    all.put(
        PitchCell.class,
        all.of(TypedCell.class).stream().flatMap(cell -> PitchCell.of(cell).stream()));
    all.put(
        RoundedPitch.class,
        all.of(TypedCell.class).stream().flatMap(cell -> RoundedPitch.of(cell).stream()));
    all.put(PitchFactor.class, all.of(Table.class).stream().flatMap(PitchFactor::in));
    all.put(Underlayment.class, all.of(Table.class).stream().flatMap(Underlayment::in));
    all.put(LikeSheets.class, LikeSheets.in(book));
    all.measured(book, book.units());
    all.put(RateUse.class, RateWalk.uses(book).stream());
    all.put(
        DefinedName.class,
        book.workbook().names().stream().map(name -> new DefinedName(book, name)));
    return all;
  }

  /** Puts the formulas and numbers whose units are known, as these say. */
  void measured(Book book, Labels written) {
    KnownUnits units = new KnownUnits(book, written);
    put(MeasuredCell.class, MeasuredCell.of(of(FormulaCell.class), units));
    put(TypedMeasure.class, TypedMeasure.of(book, of(TypedCell.class), units));
  }

  /** The formulas that are sums, corners of tables, or lengths of hips. */
  private void formulas() {
    put(SumCell.class, of(FormulaCell.class).stream().flatMap(cell -> cell.calls("SUM", "SUBTOTAL")
        .flatMap(call -> SumCell.of(cell, call).stream())));
    put(Addition.class, of(FormulaCell.class).stream().flatMap(cell -> Addition.of(cell).stream()));
    put(Corner.class, of(SumCell.class).stream().flatMap(sum -> Corner.of(sum).stream()));
    put(HipLine.class, of(FormulaCell.class).stream().flatMap(cell -> HipLine.of(cell).stream()));
  }

  private static Stream<TypedCell> typed(Tab tab) {
    return tab.sheet()
        .cells()
        .filter(placed -> !placed.cell().isFormula() && !placed.cell().isBlank())
        .filter(placed -> tab.sheet().arrayAt(placed.ref()).isEmpty())
        .map(placed -> new TypedCell(tab, placed.ref(), placed.cell()));
  }

  <S> void put(Class<S> type, Stream<S> subjects) {
    byType.put(type, subjects.toList());
  }

  @SuppressWarnings("unchecked") // put() pairs a type with subjects of that type only
  <S> List<S> of(Class<S> type) {
    return (List<S>) byType.getOrDefault(type, List.of());
  }
}
