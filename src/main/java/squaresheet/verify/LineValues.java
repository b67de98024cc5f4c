package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import squaresheet.binding.BoundBook;
import squaresheet.sheet.Address;
import squaresheet.verify.BoundValue.Kind;

/** What the amounts of a foreign list of materials or work, and the lengths of a list of edges, should be. */
final class LineValues {

  private final BookModel model;

  LineValues(BookModel model) {
    this.model = model;
  }

  void add(BoundBook.Table table) {
    for (BoundBook.Row row : table.rows()) {
      if (!row.isSum()) {
        switch (table.name()) {
          case "materials" -> product(row.subject(), "packs", "price", "amount");
          case "estimate" -> product(row.subject(), "quantity", "price", "amount");
          case "edges" -> product(row.subject(), "count", "length", "total_length");
          default -> {}
        }
      }
    }
  }

  /** One number times another, where the formula reads nothing else, or where all three are typed. */
  private void product(String subject, String one, String other, String made) {
    OptionalDouble first = model.plain(subject, one);
    OptionalDouble second = model.plain(subject, other);
    Optional<Address> at = model.cell(subject, made);
    Set<Address> parts = Stream.of(one, other)
        .flatMap(property -> model.cell(subject, property).stream())
        .collect(Collectors.toSet());
    if (first.isPresent()
        && second.isPresent()
        && at.filter(it -> Operands.areAll(model.book(), it, parts)).isPresent()) {
      model.should(
          subject,
          made,
          Kind.LINE,
          List.of(first.getAsDouble() * second.getAsDouble()),
          0,
          one.replace('_', ' ') + " and " + other);
    }
  }
}
