package squaresheet.verify;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;

/** What an amount is made of: followed through sums, roundings and markups, each cell with how often it is in. */
final class AmountParts {

  /** A bid has fewer steps; what is longer is a list that other checks add up. */
  private static final int MOST = 400;

  private final Book book;
  private final Map<Address, Integer> counts = new LinkedHashMap<>();
  private int visits;

  private AmountParts(Book book) {
    this.book = book;
  }

  /** The cells that are in the amount; none where there are too many to follow. */
  static Map<Address, Integer> of(FormulaCell cell) {
    AmountParts parts = new AmountParts(cell.book());
    parts.follow(cell, cell.tree());
    return parts.visits > MOST || cell.book().circular().contains(cell.at())
        ? Map.of()
        : parts.counts;
  }

  /** The cells that are in more than one of the terms of a sum, the whole before its parts. */
  static Stream<Address> shared(FormulaCell cell) {
    Map<Address, Integer> terms = new LinkedHashMap<>();
    for (Node term : Nodes.terms(cell.tree())) {
      AmountParts parts = new AmountParts(cell.book());
      parts.follow(cell, term);
      parts.counts.keySet().forEach(at -> terms.merge(at, 1, Integer::sum));
    }
    return terms.entrySet().stream().filter(it -> it.getValue() > 1).map(Map.Entry::getKey);
  }

  private void follow(FormulaCell cell, Node node) {
    if (node instanceof Node.Binary binary) {
      binary(cell, binary);
    } else if (Nodes.isCall(node, "SUM")) {
      node.parts().forEach(part -> follow(cell, part));
    } else if (Nodes.isCall(node, "ROUND", "ROUNDUP", "ROUNDDOWN")) {
      follow(cell, node.parts().get(0));
    } else {
      cell.cells(node).stream().flatMap(Cells::each).limit(MOST + 1L).forEach(this::visit);
    }
  }

  private void binary(FormulaCell cell, Node.Binary binary) {
    switch (binary.operator()) {
      case PLUS -> binary.parts().forEach(part -> follow(cell, part));
      case MINUS -> follow(cell, binary.left());
      case TIMES -> {
        if (isOneAnd(binary.right())) {
          follow(cell, binary.left());
        } else if (isOneAnd(binary.left())) {
          follow(cell, binary.right());
        }
      }
      case OVER -> {
        if (isOneAnd(binary.right())) {
          follow(cell, binary.left());
        }
      }
      default -> {}
    }
  }

  /** Whether it is {@code 1+rate}, {@code 1-rate} or a number between one and two, which an amount is still itself after. */
  static boolean isOneAnd(Node node) {
    boolean typed = node instanceof Node.Number number && number.value() > 1 && number.value() < 2;
    boolean added = node instanceof Node.Binary sum
        && (sum.operator() == Node.Operator.PLUS || sum.operator() == Node.Operator.MINUS)
        && Stream.of(sum.left(), sum.right())
            .anyMatch(side -> side instanceof Node.Number one && one.value() == 1);
    return typed || added;
  }

  /** Whether it is one plus, or one less, this cell. */
  static boolean isOneAnd(FormulaCell formula, Node.Binary sum, Address rate) {
    return isOneAnd(sum)
        && sum.parts().stream()
            .anyMatch(side -> RateWords.cell(formula, side).filter(rate::equals).isPresent());
  }

  private void visit(Address at) {
    visits++;
    if (visits > MOST || book.circular().contains(at) || book.number(at).isEmpty()) {
      return;
    }
    counts.merge(at, 1, Integer::sum);
    book.formula(at)
        .filter(formula -> !RateWords.isTax(RateWords.label(book, at)))
        .ifPresent(formula -> {
          FormulaCell cell = new FormulaCell(book, at, formula);
          follow(cell, cell.tree());
        });
  }
}
