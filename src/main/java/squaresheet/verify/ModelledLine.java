package squaresheet.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/**
 * A line of cost beside the one of the same item that the model of the job gives.
 *
 * @param job the model
 * @param line as the workbook has it
 * @param model as a workbook written from the model has it
 */
record ModelledLine(Model job, PricedLine line, PricedLine model) {

  /** The lines that the model has as often as the workbook; a line of the estimator's own has none beside it. */
  static Stream<ModelledLine> of(Model job, EstimateCells cells) {
    Map<String, List<PricedLine>> there = byItem(cells);
    Map<String, List<PricedLine>> right =
        job.written().flatMap(EstimateCells::of).map(ModelledLine::byItem).orElse(Map.of());
    return there.entrySet().stream()
        .filter(entry -> entry.getValue().size()
            == right.getOrDefault(entry.getKey(), List.of()).size())
        .flatMap(entry -> IntStream.range(0, entry.getValue().size())
            .mapToObj(at -> new ModelledLine(
                job, entry.getValue().get(at), right.get(entry.getKey()).get(at))))
        .filter(both -> both.model.isCost());
  }

  private static Map<String, List<PricedLine>> byItem(EstimateCells cells) {
    Map<String, List<PricedLine>> items = new LinkedHashMap<>();
    cells.lines().forEach(line -> items
        .computeIfAbsent(line.item(), item -> new ArrayList<>())
        .add(line));
    return items;
  }

  Book book() {
    return line.book();
  }

  Address at(String column) {
    return line.at(column);
  }

  Value should(String column) {
    return model.book().value(model.at(column));
  }

  /** What the cell makes when all that the model knows before it is right. */
  Value own(String column) {
    return book()
        .formula(at(column))
        .map(formula -> job.asModelled().evaluate(formula, at(column)))
        .orElseGet(() -> book().value(at(column)));
  }

  boolean isRight(String column) {
    Value own = own(column);
    Value should = should(column);
    boolean unknown = !own.isChecked() || !should.isChecked();
    boolean fault = own instanceof Value.Fault || should instanceof Value.Fault;
    return unknown || fault || isNear(own, should);
  }

  private static boolean isNear(Value own, Value should) {
    if (own instanceof Value.Number one && should instanceof Value.Number other) {
      double size = Math.max(1, Math.max(Math.abs(one.value()), Math.abs(other.value())));
      return Math.abs(one.value() - other.value()) <= Modelled.KEPT * size;
    }
    return Shown.same(own, should);
  }

  /** What is charged too much or too little by it. */
  String worth(String column) {
    return new Worth(book(), Optional.of(job)).difference(Map.of(at(column), should(column)));
  }
}
