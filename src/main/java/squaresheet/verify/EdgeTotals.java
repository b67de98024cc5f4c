package squaresheet.verify;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import squaresheet.binding.BoundBook;
import squaresheet.formula.Value;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Side;
import squaresheet.sheet.Address;

/**
 * The lengths of edges by kind in a workbook of foreign layout: rows of a table of edges, added up by their kinds, and totals
 * beside their labels. They are held against the planes only where every plane is modelled.
 */
final class EdgeTotals {

  /** The kinds that sides of planes tell. */
  private static final Set<EdgeKind> TOLD =
      EnumSet.of(EdgeKind.EAVE, EdgeKind.RAKE, EdgeKind.RIDGE, EdgeKind.HIP, EdgeKind.VALLEY);

  /** Labels and rows name kinds alone or together. */
  private static final Set<String> BETWEEN = Set.of("and", "total", "length", "lengths", "all");

  /** A list of more planes than any roof has is not put together as one. */
  private static final int MOST_PLANES = 400;

  private final BookModel model;
  private final BoundBook bound;
  private final Map<String, List<Roof>> roofs = new HashMap<>();

  EdgeTotals(BookModel model) {
    this.model = model;
    bound = model.bound();
  }

  List<EdgeTotal> all() {
    List<EdgeTotal> all = new ArrayList<>();
    bound.tables().stream().filter(table -> table.name().equals("edges")).forEach(table -> byKind(
            table)
        .forEach((kinds, parts) -> total(kinds, parts, table.sheet()).ifPresent(all::add)));
    bound.cells().items().forEach((item, at) -> {
      if (item.subject().equals("job") && item.property().startsWith("total_")) {
        Set<EdgeKind> kinds = kinds(item.property().replace('_', ' '));
        model.plain("job", item.property()).stream()
            .boxed()
            .flatMap(feet -> total(kinds, List.of(new Part(at, feet)), at.sheet()).stream())
            .forEach(all::add);
      }
    });
    return all;
  }

  private record Part(Address at, double feet) {}

  private Map<Set<EdgeKind>, List<Part>> byKind(BoundBook.Table table) {
    Map<Set<EdgeKind>, List<Part>> byKind = new LinkedHashMap<>();
    table.rows().stream().filter(row -> !row.isSum()).forEach(row -> {
      Set<EdgeKind> kinds = kinds(text(row.subject()));
      part(row.subject())
          .ifPresent(
              part -> byKind.computeIfAbsent(kinds, key -> new ArrayList<>()).add(part));
    });
    return byKind;
  }

  private String text(String subject) {
    Optional<Value> value = model.cell(subject, "edge").map(model.book()::value);
    return value.isPresent() && value.get() instanceof Value.Text text ? text.value() : "";
  }

  private Optional<Part> part(String subject) {
    for (String property : List.of("total_length", "length")) {
      OptionalDouble feet = model.plain(subject, property);
      if (feet.isPresent()) {
        double times = property.equals("length") ? model.plain(subject, "count").orElse(1) : 1;
        return Optional.of(
            new Part(model.cell(subject, property).orElseThrow(), feet.getAsDouble() * times));
      }
    }
    return Optional.empty();
  }

  /** The kinds that a text names: several where it names nothing else, {@code Hips & ridges}, otherwise the first. */
  static Set<EdgeKind> kinds(String text) {
    List<String> words = Arrays.stream(
            text.toLowerCase(Locale.ROOT).replaceAll("[(,:;].*", "").split("[^\\p{L}]+"))
        .filter(word -> !word.isEmpty() && !BETWEEN.contains(word))
        .toList();
    List<EdgeKind> known =
        words.stream().flatMap(word -> EdgeKind.from(word).stream()).distinct().toList();
    boolean first = !words.isEmpty() && EdgeKind.from(words.get(0)).isPresent();
    if (!first) {
      return Set.of();
    }
    boolean alone = words.stream().allMatch(word -> EdgeKind.from(word).isPresent());
    return new LinkedHashSet<>(alone ? known.stream().sorted().toList() : known.subList(0, 1));
  }

  private Optional<EdgeTotal> total(Set<EdgeKind> kinds, List<Part> parts, String sheet) {
    if (kinds.isEmpty() || !TOLD.containsAll(kinds)) {
      return Optional.empty();
    }
    List<EdgeTotal.Span> may = roofs.computeIfAbsent(sheet, this::roofs).stream()
        .map(roof -> span(roof, kinds))
        .toList();
    if (may.isEmpty() || may.get(0).all() == 0) {
      return Optional.empty();
    }
    String called =
        kinds.stream().map(kind -> kind.word() + "s").collect(Collectors.joining(" and "));
    return Optional.of(new EdgeTotal(
        model,
        called,
        parts.stream().map(Part::at).toList(),
        parts.stream().mapToDouble(Part::feet).sum(),
        may));
  }

  /** The roofs that a length may be of: the planes of its own sheet, and all. */
  private List<Roof> roofs(String sheet) {
    List<Roof> may = new ArrayList<>();
    roof(table -> table.sheet().equals(sheet)).ifPresent(may::add);
    roof(table -> true).ifPresent(may::add);
    return may;
  }

  private Optional<Roof> roof(Predicate<BoundBook.Table> which) {
    List<String> subjects = bound.tables().stream()
        .filter(table -> table.name().equals("planes"))
        .filter(which)
        .flatMap(table -> table.rows().stream())
        .filter(row -> !row.isSum())
        .map(BoundBook.Row::subject)
        .toList();
    List<PlaneNotes> notes = subjects.stream()
        .filter(bound.planes()::containsKey)
        .map(bound.planes()::get)
        .toList();
    return subjects.isEmpty() || notes.size() < subjects.size() || notes.size() > MOST_PLANES
        ? Optional.empty()
        : Roof.resolve(new RoofNotes(notes)).value();
  }

  /** What the sides make; 0 where the planes have no side of that kind, so that they do not tell it. */
  private static EdgeTotal.Span span(Roof roof, Set<EdgeKind> kinds) {
    double all = kinds.stream().mapToDouble(kind -> roof.length(kind).toFeet()).sum();
    double alone = roof.sides()
        .filter(side -> kinds.contains(side.kind()))
        .filter(side -> isOpen(roof, side))
        .mapToDouble(side -> side.length().toFeet())
        .sum();
    return new EdgeTotal.Span(all - alone, all);
  }

  /** Whether the side may be something else: one that no other plane meets, and in a roof with such a one eaves and rakes too. */
  private static boolean isOpen(Roof roof, Side side) {
    return side.kind().isShared()
        ? roof.sharedBy(side).isEmpty()
        : roof.sides().anyMatch(it -> it.kind().isShared() && roof.sharedBy(it).isEmpty());
  }
}
