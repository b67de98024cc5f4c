package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.courses.RoofLayout;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Terms;
import squaresheet.formula.Value;
import squaresheet.job.JobResult;
import squaresheet.product.Role;
import squaresheet.roof.Plane;
import squaresheet.takeoff.Order;
import squaresheet.units.Pitch;

/** The settings, prices and orders of a job, as cells beside labels and rows of price and material tables may hold them. */
final class ModelValues {

  private static final double INCHES = 12;

  /** What a material list calls the parts, beside the names of the roles themselves. */
  private static final Map<Role, Set<String>> CALLED = Map.of(
      Role.SHINGLE, Set.of("field shingle", "laminated shingle", "architectural shingle"),
      Role.STARTER, Set.of("starter strip", "starter shingle", "starter course"),
      Role.CAP, Set.of("ridge cap", "hip and ridge cap", "hip ridge cap", "cap shingle"),
      Role.UNDERLAYMENT, Set.of("felt", "underlay"),
      Role.ICE_BARRIER, Set.of("ice and water barrier", "ice barrier membrane"),
      Role.EAVE_METAL, Set.of("drip edge eave", "eave drip edge"),
      Role.RAKE_METAL, Set.of("drip edge rake", "rake edge", "rake drip edge"),
      Role.FIELD_NAIL, Set.of("nail", "roofing nail", "coil nail"),
      Role.PIPE_BOOT, Set.of("boot", "pipe flashing"),
      Role.SEALANT_TUBE, Set.of("sealant"));

  private final JobResult job;

  ModelValues(JobResult job) {
    this.job = job;
  }

  /** What stands beside labels, by property. */
  Map<String, Known> labelled() {
    Map<String, Known> values = new LinkedHashMap<>();
    word(values, "job", job.input().card().name());
    word(values, "number", job.input().card().number());
    word(values, "measured_by", job.input().card().measuredBy());
    word(values, "date", job.input().card().date());
    number(values, "waste_rate", "waste_rate", 1);
    number(values, "eave_overhang", "eave_overhang", INCHES);
    number(values, "wall_offset", "wall_offset", INCHES);
    number(values, "code_edition", "code_edition", 1);
    number(values, "tear_off_layers", "tear_off_layers", 1);
    number(values, "total_bundles", "shingle_bundles", 1);
    values.put("tape_tolerance", new Known.Size(job.input().roof().tapeTolerance()));
    onePitch().ifPresent(pitch -> values.put("pitch", new Known.Steep(pitch)));
    Terms terms = job.input().company().terms();
    values.put("tax_rate", new Known.Amount(terms.tax().rate().toDouble()));
    values.put("overhead_rate", new Known.Amount(terms.overhead().toDouble()));
    areas(values);
    job.layout().ifPresent(layout -> laid(layout, values));
    return values;
  }

  private static void laid(RoofLayout layout, Map<String, Known> values) {
    values.put(
        "laid_exposure", new Known.Amount(layout.interval().exposureLaid().toFeet()));
    values.put("line_interval", new Known.Size(layout.interval().laid()));
    values.put("courses_per_line", new Known.Amount(layout.interval().courses()));
    values.put("simulated_waste", new Known.Amount(layout.simulatedWaste().toDouble()));
  }

  private void areas(Map<String, Known> values) {
    double gross = job.roof().grossArea().squareFeet();
    double net = job.roof().slopedArea().squareFeet();
    double waste = job.takeoff().number("waste_rate").orElse(0.0);
    values.put("total_plan_area", new Known.Amount(job.roof().grossPlanArea().squareFeet()));
    values.put("total_sloped_area", new Known.Amount(net, List.of(gross)));
    values.put("total_squares", new Known.Amount(net, List.of(gross)));
    values.put(
        "total_gross_squares", new Known.Amount(net * (1 + waste), List.of(gross * (1 + waste))));
  }

  private Optional<Pitch> onePitch() {
    List<Pitch> all = job.roof().planes().stream().map(Plane::pitch).distinct().toList();
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  private static void word(Map<String, Known> values, String property, String text) {
    if (!text.isBlank()) {
      values.put(property, new Known.Word(text));
    }
  }

  private void number(Map<String, Known> values, String property, String name, double divisor) {
    if (job.takeoff().value(name) instanceof Value.Number number) {
      values.put(property, new Known.Amount(number.value() / divisor));
    }
  }

  /** Every product that has a price, by its id. */
  List<ModelRow> prices() {
    List<ModelRow> rows = new ArrayList<>();
    job.input().company().prices().prices().forEach((id, price) -> {
      Map<String, Known> values = new LinkedHashMap<>();
      values.put("code", new Known.Word(id));
      values.put("price", amount(price));
      Map<String, Known> more = new LinkedHashMap<>();
      more.put("unit", new Known.Word(price.per()));
      word(more, "cost_code", price.costCode());
      rows.add(ModelRow.named(id, price.per(), values).ifNew(more));
    });
    return rows;
  }

  private static Known amount(PriceList.Price price) {
    return new Known.Amount(price.amount().amount().doubleValue());
  }

  /** What is ordered, known by its role, its product's id or its description. */
  List<ModelRow> materials() {
    return job.takeoff().orders().stream().map(this::material).toList();
  }

  private ModelRow material(Order order) {
    String id = order.product().id();
    Map<String, Known> values = new LinkedHashMap<>();
    values.put("packs", new Known.Amount(order.packs().number()));
    Map<String, Known> more = new LinkedHashMap<>();
    more.put("item", new Known.Word(order.rule().label()));
    more.put("code", new Known.Word(id));
    more.put("unit", new Known.Word(order.product().packing().pack().toString()));
    Optional.ofNullable(job.input().company().prices().prices().get(id))
        .filter(price -> price.per().equals(order.product().packing().pack().toString()))
        .ifPresent(price -> values.put("price", amount(price)));
    String pack = order.product().packing().pack().toString();
    return new ModelRow(order.rule().label(), pack, text -> isCalled(order, text), values, more);
  }

  private static boolean isCalled(Order order, String text) {
    List<String> tokens = Tokens.of(text);
    Optional<Role> role = order.rule().role();
    return Tokens.plain(text).equals(order.product().id())
        || tokens.equals(Tokens.of(order.rule().label()))
        || tokens.equals(Tokens.of(order.product().label().description()))
        || role.filter(it -> tokens.equals(Tokens.of(it.toString().replace('_', ' '))))
            .isPresent()
        || role.stream()
            .flatMap(it -> CALLED.getOrDefault(it, Set.of()).stream())
            .anyMatch(it -> tokens.equals(Tokens.of(it)));
  }
}
