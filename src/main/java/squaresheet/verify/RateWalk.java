package squaresheet.verify;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;

/** Follows the rates that amounts are multiplied with from formula to formula, in the order of calculation. */
final class RateWalk {

  /** A block is known by the rates of its first formulas: the rest were filled from them. */
  private static final int OF_A_BLOCK = 40;

  private final Map<Address, Map<Rate, Address>> rates = new HashMap<>();
  private final List<RateUse> uses = new ArrayList<>();

  private RateWalk(Book book) {
    for (Address at : book.order()) {
      FormulaCell cell = new FormulaCell(book, at, book.formula(at).orElseThrow());
      rates.put(at, of(cell, cell.tree()));
    }
  }

  /** Every multiplication with a rate in the workbook. */
  static List<RateUse> uses(Book book) {
    return new RateWalk(book).uses;
  }

  /** The rates in a part of a formula, each with the formula that put it on. */
  private Map<Rate, Address> of(FormulaCell cell, Node node) {
    if (node instanceof Node.Binary binary) {
      return switch (binary.operator()) {
        case TIMES, OVER -> product(cell, node);
        case PLUS, MINUS -> together(cell, binary.parts());
        default -> Map.of();
      };
    }
    if (node instanceof Node.Unary unary) {
      return of(cell, unary.operand());
    }
    return node instanceof Node.Call call ? call(cell, call) : read(cell, node);
  }

  private Map<Rate, Address> call(FormulaCell cell, Node.Call call) {
    return switch (call.function()) {
      case "SUM", "MAX", "MIN", "SUMPRODUCT" -> together(cell, call.arguments());
      case "ROUND", "ROUNDUP", "ROUNDDOWN", "INT", "CEILING", "FLOOR", "IFERROR" ->
        together(cell, call.arguments().subList(0, Math.min(1, call.arguments().size())));
      case "IF" -> together(cell, call.arguments().subList(1, call.arguments().size()));
      default -> Map.of();
    };
  }

  private Map<Rate, Address> together(FormulaCell cell, List<Node> parts) {
    Map<Rate, Address> all = new LinkedHashMap<>();
    parts.forEach(part -> of(cell, part).forEach(all::putIfAbsent));
    return all;
  }

  private Map<Rate, Address> read(FormulaCell cell, Node node) {
    Map<Rate, Address> all = new LinkedHashMap<>();
    cell.cells(node).stream().flatMap(Cells::each).limit(OF_A_BLOCK).forEach(at -> rates
        .getOrDefault(at, Map.of())
        .forEach(all::putIfAbsent));
    return all;
  }

  private Map<Rate, Address> product(FormulaCell cell, Node product) {
    Map<Rate, Address> all = new LinkedHashMap<>();
    List<Rate> here = new ArrayList<>();
    gather(cell, product, false, all, here);
    for (Rate rate : here) {
      uses.add(new RateUse(cell, rate, before(all, rate)));
      all.put(rate, cell.at());
    }
    return all;
  }

  private static Optional<Address> before(Map<Rate, Address> all, Rate rate) {
    return all.entrySet().stream()
        .filter(entry -> entry.getKey().isSame(rate))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** Splits a product into the rates it puts on here and the amounts that may have some already. */
  private void gather(
      FormulaCell cell, Node node, boolean under, Map<Rate, Address> all, List<Rate> here) {
    if (node instanceof Node.Binary binary
        && (binary.operator() == Node.Operator.TIMES || binary.operator() == Node.Operator.OVER)) {
      gather(cell, binary.left(), under, all, here);
      gather(cell, binary.right(), under ^ binary.operator() == Node.Operator.OVER, all, here);
      return;
    }
    Optional<Rate> rate = under ? Rate.ofDivisor(cell, node) : Rate.of(cell, node);
    if (rate.isPresent()) {
      here.add(rate.get());
    } else if (under) {
      Rate.of(cell, node).ifPresent(taken -> all.keySet().removeIf(taken::isSame));
    } else {
      of(cell, node).forEach(all::putIfAbsent);
    }
  }
}
