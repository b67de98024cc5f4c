package squaresheet.product;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.units.Length;

/**
 * The products chosen for a job, one for each part that is played.
 *
 * @param products role to product, each of a kind that can play it
 */
public record Selection(Map<Role, Product> products) {

  public Selection {
    products.forEach((role, product) -> {
      if (product.kind() != role.kind()) {
        throw new IllegalArgumentException(refusal(role, product));
      }
    });
    EnumMap<Role, Product> inOrder = new EnumMap<>(Role.class);
    inOrder.putAll(products);
    products = java.util.Collections.unmodifiableMap(inOrder);
  }

  private static String refusal(Role role, Product product) {
    return role + " must be a product of kind " + role.kind() + ", but " + product.id()
        + " is of kind " + product.kind();
  }

  /** Looks up the ids chosen; what is unknown or of the wrong kind is left out and said. */
  public static Read<Selection> read(Catalogue catalogue, Map<Role, Choice> choices) {
    Map<Role, Product> products = new EnumMap<>(Role.class);
    List<Finding> findings = new ArrayList<>();
    choices.forEach((role, choice) -> {
      Read<Product> found = catalogue.find(choice.id(), choice.where());
      findings.addAll(found.findings());
      found.value().ifPresent(product -> {
        if (product.kind() == role.kind()) {
          products.put(role, product);
        } else {
          findings.add(new Finding(Complaints.UNKNOWN, choice.where(), refusal(role, product)));
        }
      });
    });
    return Read.of(new Selection(products), findings);
  }

  /**
   * For every part the first product of the catalogue that can play it and plays no other yet; else the first that can. Of
   * two edge metals the first is for eaves, the second for rakes; one alone is for both.
   */
  public static Selection firstOfEach(Catalogue catalogue) {
    Map<Role, Product> products = new EnumMap<>(Role.class);
    for (Role role : Role.values()) {
      List<Product> candidates = catalogue.candidates(role);
      candidates.stream()
          .filter(product -> !products.containsValue(product))
          .findFirst()
          .or(() -> candidates.stream().findFirst())
          .ifPresent(product -> products.put(role, product));
    }
    return new Selection(products);
  }

  /**
   * A product asked for by its id.
   *
   * @param id the id
   * @param where the place it was asked at
   */
  public record Choice(String id, Where where) {}

  /** The product that plays a part, if one was chosen. */
  public Optional<Product> of(Role role) {
    return Optional.ofNullable(products.get(role));
  }

  /** The shingle, if one was chosen. */
  public Optional<Shingle> shingle() {
    return of(Role.SHINGLE).map(Shingle.class::cast);
  }

  /** The starter, if one was chosen. */
  public Optional<Starter> starter() {
    return of(Role.STARTER).map(Starter.class::cast);
  }

  /** What is wrong with laying the shingle at this exposure; nothing where it shows at most what it may. */
  public List<Finding> exposureFindings(Length laid, Where where) {
    return shingle()
        .filter(shingle -> laid.compareTo(shingle.exposure()) > 0)
        .map(shingle -> List.of(new Finding(
            Complaints.EXPOSURE_OVER,
            where,
            laid.toString(),
            shingle.exposure().toString(),
            "exposure laid must be at most the " + shingle.exposure() + " of " + shingle.id()
                + ", but is " + laid,
            "")))
        .orElseGet(List::of);
  }
}
