package squaresheet.product;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import squaresheet.units.Length;
import squaresheet.units.Unit;

/** A product as bought: its physical size and packing, from which the rest is derived. */
public sealed interface Product
    permits Shingle,
        Starter,
        Cap,
        Roll,
        EdgeMetal,
        Fastener,
        Product.StepFlashing,
        Product.Vent,
        Product.DeckSheet,
        Product.Container,
        Product.Item {

  /** Who it is and how it is bought. */
  Label label();

  /** Its stated measures, each under the name that formulas use, less the role's prefix. */
  List<Fact> facts();

  /** What a crew or a buyer must see to, where the product as stated departs from a limit; empty where all is well. */
  default List<String> doubts() {
    return List.of();
  }

  /** The product's id. */
  default String id() {
    return label().id();
  }

  /** What kind of product it is. */
  default Kind kind() {
    return label().kind();
  }

  /** How it is bought. */
  default Packing packing() {
    return label().packing();
  }

  /** The kinds of product a catalogue can hold. Text form: {@code ice_barrier}. */
  enum Kind {
    /** Covers the field of a plane. */
    SHINGLE,
    /** Lies under the first course. */
    STARTER,
    /** Covers ridges and hips. */
    CAP,
    /** Lies under the shingles. */
    UNDERLAYMENT,
    /** Keeps backed-up melt water out at eaves and in valleys. */
    ICE_BARRIER,
    /** Lines a valley. */
    VALLEY_LINING,
    /** Metal along eaves and rakes. */
    EDGE_METAL,
    /** One piece per course along a sidewall. */
    STEP_FLASHING,
    /** A run of metal along a headwall. */
    HEADWALL_FLASHING,
    /** Lets air out along a ridge. */
    RIDGE_VENT,
    /** Lets air out through one hole. */
    BOX_VENT,
    /** Holds shingles. */
    NAIL,
    /** Holds underlayment: a nail with a wide washer. */
    CAP_NAIL,
    /** A sheet of deck. */
    DECK_SHEET,
    /** The collar of a pipe through the roof. */
    PIPE_BOOT,
    /** Seals flashings. */
    SEALANT,
    /** Takes torn-off material away. */
    CONTAINER,
    /** Anything else that is bought by the piece. */
    OTHER;

    /** The kind of the text form, if there is one. */
    static Optional<Kind> parse(String text) {
      return Arrays.stream(values())
          .filter(kind -> kind.toString().equals(text))
          .findFirst();
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * What every product states.
   *
   * @param id lower-case words joined by hyphens
   * @param kind what it is
   * @param description what a supplier would recognise, without a brand
   * @param packing how it is bought
   * @param source where its measures come from
   * @param note anything else, or empty
   */
  record Label(
      String id, Kind kind, String description, Packing packing, String source, String note) {

    public Label {
      if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
        throw new IllegalArgumentException(
            "id must be lower-case words joined by hyphens, like laminated-metric, but is '" + id
                + "'");
      }
    }
  }

  /**
   * One stated measure, as formulas see it.
   *
   * @param name lower-case words joined by underscores; the role's prefix goes before it
   * @param value the measure in its unit
   * @param unit the unit
   */
  record Fact(String name, double value, Unit unit) {

    Fact(String name, double value, String unit) {
      this(name, value, Unit.parse(unit));
    }
  }

  /**
   * A bent piece that goes in with each course along a sidewall.
   *
   * @param label who it is
   * @param length up the slope
   * @param height up the wall
   * @param width onto the roof
   */
  record StepFlashing(Label label, Length length, Length height, Length width) implements Product {

    /** At least 4 in high and 4 in wide. Source: IRC R905.2.8.3. */
    private static final Length LEAST = Length.ofInches(4);

    public StepFlashing {
      Checked.positive("length", length);
      Checked.positive("height", height);
      Checked.positive("width", width);
    }

    @Override
    public List<Fact> facts() {
      return List.of(Checked.inches("piece_length", length), Checked.pieces(label.packing()));
    }

    @Override
    public List<String> doubts() {
      return height.compareTo(LEAST) < 0 || width.compareTo(LEAST) < 0
          ? List.of(
              "step flashing must be at least 4 in up the wall and 4 in onto the roof, but is "
                  + height + " and " + width)
          : List.of();
    }
  }

  /**
   * A vent, counted by its net free area.
   *
   * @param label who it is
   * @param netFreeArea of one piece, in square inches
   * @param length of one piece along a ridge; zero for a box vent
   */
  record Vent(Label label, NetFreeArea netFreeArea, Length length) implements Product {

    public Vent {
      boolean ridge = label.kind() == Kind.RIDGE_VENT;
      if (ridge != length.isPositive()) {
        throw new IllegalArgumentException(
            ridge
                ? "a ridge vent must state the length of a piece, but it is " + length
                : "a box vent has no length along the ridge, but states " + length);
      }
    }

    @Override
    public List<Fact> facts() {
      Fact area = new Fact("net_free_area", netFreeArea.squareInches().doubleValue(), "sq in");
      Fact each = Checked.pieces(label.packing());
      return length.isZero()
          ? List.of(area, each)
          : List.of(area, Checked.feet("piece_length", length), each);
    }
  }

  /**
   * The open area of a vent through which air can pass.
   *
   * @param squareInches more than 0
   */
  record NetFreeArea(BigDecimal squareInches) {

    public NetFreeArea {
      if (squareInches.signum() <= 0) {
        throw new IllegalArgumentException("net free area must be more than 0 sq in, but is "
            + squareInches.toPlainString() + " sq in");
      }
      squareInches = squareInches.stripTrailingZeros();
      squareInches = squareInches.scale() < 0 ? squareInches.setScale(0) : squareInches;
    }
  }

  /**
   * A sheet of deck.
   *
   * @param label who it is
   * @param length the long side
   * @param width the short side
   */
  record DeckSheet(Label label, Length length, Length width) implements Product {

    public DeckSheet {
      Checked.positive("length", length);
      Checked.positive("width", width);
    }

    @Override
    public List<Fact> facts() {
      return List.of(
          Checked.feet("length", length),
          Checked.feet("width", width),
          Checked.pieces(label.packing()));
    }
  }

  /**
   * What takes torn-off material away.
   *
   * @param label who it is
   * @param limit how much it may carry
   */
  record Container(Label label, Weight limit) implements Product {

    public Container {
      if (limit.isZero()) {
        throw new IllegalArgumentException("a container must state its weight limit, but has none");
      }
    }

    @Override
    public List<Fact> facts() {
      return List.of(new Fact("weight_limit", limit.pounds().doubleValue(), "lb/container"));
    }
  }

  /**
   * A product that is simply counted: a pipe boot, a tube of sealant, anything else.
   *
   * @param label who it is
   */
  record Item(Label label) implements Product {

    @Override
    public List<Fact> facts() {
      return List.of(Checked.pieces(label.packing()));
    }
  }
}
