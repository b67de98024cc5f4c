package squaresheet.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;

/** A sheet of a {@link Draft}. What is put twice at one place counts as put last. Rows and columns count from 0. */
public final class DraftSheet {

  private final String name;
  private final SortedMap<Ref, Entry> entries = new TreeMap<>();
  private final SortedMap<Integer, Double> widths = new TreeMap<>();
  private final SortedMap<Integer, Double> heights = new TreeMap<>();
  private final SortedMap<Ref, Sheet.Comment> comments = new TreeMap<>();
  private final List<Block> merged = new ArrayList<>();
  private final List<Sheet.Validation> validations = new ArrayList<>();
  private final List<Sheet.Link> links = new ArrayList<>();
  private final List<Picture> pictures = new ArrayList<>();
  private final SortedSet<Integer> breaks = new TreeSet<>();
  private Sheet.Visibility visibility = Sheet.Visibility.VISIBLE;
  private Print print = Print.USUAL;
  private int frozenRows;
  private int frozenColumns;

  DraftSheet(String name) {
    this.name = name;
  }

  /**
   * A cell to be written.
   *
   * @param stored the content, or the value the formula should show until recalculated
   * @param formula without an equals sign, or empty
   * @param role what the cell is for
   * @param format the number format code
   */
  public record Entry(Content stored, String formula, Role role, String format) {

    public Entry {
      if (formula.startsWith("=")) {
        throw new IllegalArgumentException(
            "a formula must be given without its equals sign, but is '" + formula + "'");
      }
      if (stored instanceof Content.Numeric it && !Double.isFinite(it.value())) {
        throw new IllegalArgumentException("a cell's number must be finite, but is " + it.value());
      }
    }

    /** Content in the plain role. */
    public static Entry of(Content content) {
      return new Entry(content, "", Role.PLAIN, "General");
    }

    /** Text in the plain role. */
    public static Entry text(String text) {
      return of(new Content.Text(text));
    }

    /** A number in the plain role. */
    public static Entry number(double value) {
      return of(new Content.Numeric(value));
    }

    /** Nothing, to carry a role or a format. */
    public static Entry blank() {
      return of(new Content.Blank());
    }

    /** A formula, without its equals sign, with the value it comes to; role COMPUTED. */
    public static Entry formula(String formula, Content stored) {
      return new Entry(stored, formula, Role.COMPUTED, "General");
    }

    /** The same in another role. */
    public Entry as(Role other) {
      return new Entry(stored, formula, other, format);
    }

    /** The same with another number format code. */
    public Entry format(String code) {
      return new Entry(stored, formula, role, code);
    }
  }

  /**
   * A picture.
   *
   * @param anchor the cells it covers
   * @param png the file's bytes
   * @param description what it shows, for those who cannot see it
   */
  public record Picture(Block anchor, Png png, String description) {}

  /** The bytes of a PNG file, drawn when they are first asked for; equal when the bytes are. */
  public static final class Png {
    private final Supplier<byte[]> drawn;
    private byte[] bytes;

    private Png(Supplier<byte[]> drawn) {
      this.drawn = drawn;
    }

    /** A copy of these bytes. */
    public static Png of(byte[] bytes) {
      byte[] copy = bytes.clone();
      return new Png(() -> copy);
    }

    /** Bytes that are drawn once, when the workbook is written. */
    public static Png drawn(Supplier<byte[]> bytes) {
      return new Png(bytes);
    }

    private synchronized byte[] held() {
      bytes = bytes == null ? drawn.get() : bytes;
      return bytes;
    }

    /** A copy of the bytes. */
    public byte[] bytes() {
      return held().clone();
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Png it && java.util.Arrays.equals(held(), it.held());
    }

    @Override
    public int hashCode() {
      return java.util.Arrays.hashCode(held());
    }
  }

  /** The sheet of paper. */
  public enum Paper {
    /** 8.5 by 11 inches. */
    LETTER,
    /** 210 by 297 mm. */
    A4
  }

  /**
   * How the sheet prints: always one page wide, page numbers at the foot, black on white.
   *
   * @param paper the sheet of paper
   * @param landscape whether it lies on its long side
   * @param headingRows how many rows from the top are repeated on every page
   * @param header the line above every page, may be empty
   * @param footer the line below every page, may be empty
   * @param marginInches the margin on all sides, 0.25 to 2
   */
  public record Print(
      Paper paper,
      boolean landscape,
      int headingRows,
      String header,
      String footer,
      double marginInches) {

    /** The same on another paper. */
    public Print on(Paper other) {
      return new Print(other, landscape, headingRows, header, footer, marginInches);
    }
    /** Letter, upright, nothing repeated, half an inch around. */
    public static final Print USUAL = new Print(Paper.LETTER, false, 0, "", "", 0.5);

    public Print {
      if (!(marginInches >= 0.25 && marginInches <= 2) || headingRows < 0) {
        throw new IllegalArgumentException(
            "margins must be 0.25 to 2 inches and repeated rows not negative, but are "
                + marginInches + " and " + headingRows);
      }
    }
  }

  /** Puts a cell. */
  public DraftSheet put(Ref ref, Entry entry) {
    entries.put(ref, entry);
    return this;
  }

  /** Puts a cell at a place written like {@code B7}. */
  public DraftSheet put(String ref, Entry entry) {
    return put(Ref.parse(ref), entry);
  }

  /** Puts a text at a place written like {@code B7}. */
  public DraftSheet put(String ref, String text, Role role) {
    return put(ref, Entry.text(text).as(role));
  }

  /** Makes a column so many characters wide, up to 255. */
  public DraftSheet width(int column, double characters) {
    widths.put(column, characters);
    return this;
  }

  /** Makes a row so many points high, up to 409. */
  public DraftSheet height(int row, double points) {
    heights.put(row, points);
    return this;
  }

  /** Keeps so many rows and columns in sight. */
  public DraftSheet freeze(int rows, int columns) {
    frozenRows = rows;
    frozenColumns = columns;
    return this;
  }

  /** Merges a block of at least two cells. */
  public DraftSheet merge(Block block) {
    merged.add(block);
    return this;
  }

  /** Adds a rule for typing. */
  public DraftSheet validate(Sheet.Validation validation) {
    validations.add(validation);
    return this;
  }

  /** Pins a note to a cell. */
  public DraftSheet comment(Ref ref, String author, String text) {
    comments.put(ref, new Sheet.Comment(ref, author, text));
    return this;
  }

  /** Adds a link. */
  public DraftSheet link(Sheet.Link link) {
    links.add(link);
    return this;
  }

  /** Adds a picture. */
  public DraftSheet picture(Block anchor, byte[] png, String description) {
    return picture(anchor, Png.of(png), description);
  }

  /** Adds a picture. */
  public DraftSheet picture(Block anchor, Png png, String description) {
    pictures.add(new Picture(anchor, png, description));
    return this;
  }

  /** Begins a new page above a row when the sheet is printed. */
  public DraftSheet breakAbove(int row) {
    if (row < 1) {
      throw new IllegalArgumentException("a page can begin above row 1 and up, but not " + row);
    }
    breaks.add(row);
    return this;
  }

  /** Decides whether a person sees the sheet. */
  public DraftSheet visibility(Sheet.Visibility is) {
    visibility = is;
    return this;
  }

  /** Decides how the sheet prints. */
  public DraftSheet print(Print how) {
    print = how;
    return this;
  }

  /** The name on the tab. */
  public String name() {
    return name;
  }

  /** The cells, by row, then by column. */
  public Map<Ref, Entry> entries() {
    return Collections.unmodifiableSortedMap(entries);
  }

  /** The cell put at the place, if any. */
  public Optional<Entry> entry(Ref ref) {
    return Optional.ofNullable(entries.get(ref));
  }

  /** Widths of columns, in characters. */
  public Map<Integer, Double> widths() {
    return Collections.unmodifiableSortedMap(widths);
  }

  /** Heights of rows, in points. */
  public Map<Integer, Double> heights() {
    return Collections.unmodifiableSortedMap(heights);
  }

  /** The notes, by place. */
  public Map<Ref, Sheet.Comment> comments() {
    return Collections.unmodifiableSortedMap(comments);
  }

  /** The merged blocks. */
  public List<Block> merged() {
    return List.copyOf(merged);
  }

  /** The rules for typing. */
  public List<Sheet.Validation> validations() {
    return List.copyOf(validations);
  }

  /** The links. */
  public List<Sheet.Link> links() {
    return List.copyOf(links);
  }

  /** The rows above which a new page begins. */
  public SortedSet<Integer> breaks() {
    return Collections.unmodifiableSortedSet(breaks);
  }

  /** The pictures. */
  public List<Picture> pictures() {
    return List.copyOf(pictures);
  }

  /** Whether a person sees the sheet. */
  public Sheet.Visibility visibility() {
    return visibility;
  }

  /** How the sheet prints. */
  public Print print() {
    return print;
  }

  /** How many rows stay in sight. */
  public int frozenRows() {
    return frozenRows;
  }

  /** How many columns stay in sight. */
  public int frozenColumns() {
    return frozenColumns;
  }

  /** The sheet as it would be read back from its file. */
  Sheet sheet() {
    SheetBuilder builder = Sheet.builder(name);
    entries.forEach((ref, entry) -> {
      if (!entry.formula().isEmpty()
          || !entry.stored().isBlank()
          || !entry.format().equals("General")) {
        builder.content(ref.row(), ref.column(), entry.format(), entry.stored());
      }
      if (!entry.formula().isEmpty()) {
        builder.formula(ref.row(), ref.column(), entry.formula());
      }
    });
    merged.forEach(builder::merged);
    comments.values().forEach(builder::comment);
    validations.forEach(builder::validation);
    links.forEach(builder::link);
    builder.visibility(visibility);
    builder.frozen(frozenRows, frozenColumns);
    return builder.build();
  }
}
