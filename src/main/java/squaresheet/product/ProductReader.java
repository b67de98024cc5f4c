package squaresheet.product;

import java.math.BigDecimal;
import java.util.Optional;
import squaresheet.finding.Neighbours;
import squaresheet.finding.OwnWords;
import squaresheet.product.Product.Kind;
import squaresheet.product.Product.Label;
import squaresheet.units.Length;
import squaresheet.units.Pack;
import squaresheet.units.Pitch;

/** Reads one row of a catalogue into a product. */
final class ProductReader {

  /** Where a shingle states none: the model code's least slope and a usual joint offset (common practice, no source). */
  private static final Pitch USUAL_MINIMUM = Pitch.of(2);

  private static final Length USUAL_OFFSET = Length.ofInches(6);

  private final Line line;

  ProductReader(Line line) {
    this.line = line;
  }

  /** The product, or nothing, with the reasons in the line. */
  Optional<Product> read() {
    Optional<Kind> kind = kind();
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    try {
      Product product = of(label(kind.get()));
      if (line.isUnreadable()) {
        return Optional.empty();
      }
      product
          .doubts()
          .forEach(doubt -> line.says(Complaints.OUTSIDE_LIMIT, "", product.id() + ": " + doubt));
      checkCoverage(product);
      return Optional.of(product);
    } catch (IllegalArgumentException refused) {
      if (!line.isUnreadable()) {
        line.says(Complaints.NOT_READ, "", line.text("id") + ": " + OwnWords.of(refused));
      }
      return Optional.empty();
    }
  }

  private Optional<Kind> kind() {
    String text = line.required("kind");
    Optional<Kind> kind = Kind.parse(text);
    if (kind.isEmpty() && !text.isEmpty()) {
      line.says(
          Complaints.NOT_READ,
          "kind",
          "no kind of product '" + text + "'"
              + Neighbours.sentence(
                  text,
                  java.util.Arrays.stream(Kind.values()).map(Kind::toString).toList()));
    }
    return kind;
  }

  private Label label(Kind kind) {
    String pack = line.required("pack");
    Packing packing = new Packing(
        new Pack(pack.isEmpty() ? "pack" : pack),
        line.count("pieces_per_pack", 1),
        line.weight("weight"));
    return new Label(
        line.required("id"),
        kind,
        line.text("description"),
        packing,
        line.text("source"),
        line.text("note"));
  }

  private Product of(Label label) {
    return switch (label.kind()) {
      case SHINGLE -> shingle(label);
      case STARTER ->
        new Starter(label, line.length("length"), line.length("height"), line.count("cut_into", 1));
      case CAP -> new Cap(label, line.length("exposure"), line.count("cut_into", 1));
      case UNDERLAYMENT, ICE_BARRIER, VALLEY_LINING ->
        new Roll(
            label,
            line.length("width"),
            line.length("length"),
            line.optionalLength("side_lap"),
            line.optionalLength("end_lap"));
      case EDGE_METAL, HEADWALL_FLASHING ->
        new EdgeMetal(label, line.length("length"), line.optionalLength("end_lap"));
      case NAIL, CAP_NAIL -> new Fastener(label, line.length("length"));
      case STEP_FLASHING ->
        new Product.StepFlashing(
            label, line.length("length"), line.length("height"), line.length("width"));
      case RIDGE_VENT, BOX_VENT ->
        new Product.Vent(
            label,
            new Product.NetFreeArea(line.squareInches("net_free_area")),
            line.optionalLength("length"));
      case DECK_SHEET -> new Product.DeckSheet(label, line.length("length"), line.length("width"));
      case CONTAINER -> new Product.Container(label, line.weight("weight_limit"));
      case PIPE_BOOT, SEALANT, OTHER -> new Product.Item(label);
    };
  }

  private Product shingle(Label label) {
    long nails = line.count("nails", 4);
    Length offset = line.optionalLength("joint_offset");
    return new Shingle(
        label,
        line.length("length"),
        line.length("height"),
        line.length("exposure"),
        new Shingle.Nailing(nails, line.count("nails_high_wind", Math.max(nails, 6))),
        line.pitch("minimum_slope", USUAL_MINIMUM),
        offset.isZero() ? USUAL_OFFSET : offset);
  }

  /** Off by more than half of its last printed digit, a stated coverage is not the one that the pieces make. */
  private void checkCoverage(Product product) {
    BigDecimal stated = line.decimal("stated_coverage", BigDecimal.ZERO);
    if (stated.signum() == 0 || !(product instanceof Shingle shingle)) {
      return;
    }
    double covers = shingle.coveragePerPack().squareFeet();
    double halfDigit = stated.ulp().doubleValue() / 2 * (1 + 1e-9);
    if (Math.abs(stated.doubleValue() - covers) > halfDigit) {
      line.says(
          Complaints.COVERAGE_OFF,
          "stated_coverage",
          String.format(
              java.util.Locale.ROOT,
              "%s: stated coverage is %s sq ft per %s, but %d pieces of %s showing %s cover %.2f sq ft",
              product.id(),
              stated.toPlainString(),
              product.packing().pack(),
              product.packing().pieces(),
              shingle.length(),
              shingle.exposure(),
              covers));
    }
  }
}
