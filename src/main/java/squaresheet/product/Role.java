package squaresheet.product;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import squaresheet.product.Product.Kind;

/** The part a product plays in a job. Text form, which is also the prefix of its names in formulas: {@code eave_metal}. */
public enum Role {
  /** The field. */
  SHINGLE(Kind.SHINGLE),
  /** Under the first course. */
  STARTER(Kind.STARTER),
  /** On ridges and hips. */
  CAP(Kind.CAP),
  /** Under the shingles: single on planes of 4:12 and steeper, double under that. */
  UNDERLAYMENT(Kind.UNDERLAYMENT),
  /** Along eaves and, by choice, in valleys. */
  ICE_BARRIER(Kind.ICE_BARRIER),
  /** In valleys. */
  VALLEY_LINING(Kind.VALLEY_LINING),
  /** Along eaves. */
  EAVE_METAL(Kind.EDGE_METAL),
  /** Along rakes. */
  RAKE_METAL(Kind.EDGE_METAL),
  /** Along sidewalls. */
  STEP_FLASHING(Kind.STEP_FLASHING),
  /** Along headwalls. */
  HEADWALL_FLASHING(Kind.HEADWALL_FLASHING),
  /** Along ridges. */
  RIDGE_VENT(Kind.RIDGE_VENT),
  /** Through the deck near the ridge. */
  BOX_VENT(Kind.BOX_VENT),
  /** In shingles. */
  FIELD_NAIL(Kind.NAIL),
  /** In underlayment. */
  CAP_NAIL(Kind.CAP_NAIL),
  /** Where the deck is rotten. */
  DECK_SHEET(Kind.DECK_SHEET),
  /** Around pipes. */
  PIPE_BOOT(Kind.PIPE_BOOT),
  /** On flashings. */
  SEALANT_TUBE(Kind.SEALANT),
  /** For what is torn off. */
  WASTE_CONTAINER(Kind.CONTAINER);

  private final Kind kind;

  Role(Kind kind) {
    this.kind = kind;
  }

  /** The kind of product that can play this part. */
  public Kind kind() {
    return kind;
  }

  /** The role of the text form, if there is one. */
  public static Optional<Role> parse(String text) {
    return Arrays.stream(values()).filter(role -> role.toString().equals(text)).findFirst();
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
