package squaresheet.sheet;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A workbook as its file has it. Nothing in it is recalculated, followed or run.
 *
 * @param sheets in the order of the tabs
 * @param names the defined names, in the order of the file
 * @param date1904 whether day 0 is 1 January 1904, not the turn of 1899 to 1900
 * @param calculation how the file asks to be calculated
 * @param externalLinks the other files that formulas point to, as written; never opened
 * @param properties custom document properties, as text
 */
public record Workbook(
    List<Sheet> sheets,
    List<Name> names,
    boolean date1904,
    Calculation calculation,
    List<String> externalLinks,
    Map<String, String> properties) {

  public Workbook {
    sheets = NamedSheets.of(sheets);
    names = List.copyOf(names);
    externalLinks = List.copyOf(externalLinks);
    properties = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(properties));
  }

  /**
   * A defined name.
   *
   * @param name as spelled in formulas
   * @param sheet the sheet it is limited to, or empty where the whole workbook knows it
   * @param text what it stands for, without an equals sign, such as {@code Inputs!$B$2}
   * @param hidden whether the program keeps it out of its list of names
   */
  public record Name(String name, String sheet, String text, boolean hidden) {

    private static final Pattern SHAPE = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_.]{0,254}");
    private static final Pattern LIKE_A_CELL =
        Pattern.compile("[A-Z]{1,3}\\d+|R\\d*(C\\d*)?|C\\d*|TRUE|FALSE");

    /** A visible name that the whole workbook knows. */
    public static Name of(String name, String text) {
      return new Name(name, "", text, false);
    }

    /** Whether every spreadsheet program takes this as a name: a word, not shaped like a cell. */
    public static boolean isValid(String name) {
      return SHAPE.matcher(name).matches()
          && !LIKE_A_CELL.matcher(name.toUpperCase(Locale.ROOT)).matches();
    }

    /** The one block the name stands for, if it is one, with its sheet; dollar signs ignored. */
    public Optional<Address> cell() {
      return NameText.block(text).map(NameText.Place::firstCell);
    }

    /** The cells the name stands for on {@link #cell()}'s sheet, if they are one block. */
    public Optional<Block> block() {
      return NameText.block(text).map(NameText.Place::block);
    }
  }

  /**
   * How the file asks to be calculated.
   *
   * @param manual whether formulas wait until the person asks
   * @param fullOnLoad whether the next program recalculates everything when it opens the file
   * @param iterate whether circular formulas are repeated instead of refused
   * @param fullPrecision false where numbers are cut to what they show
   */
  public record Calculation(
      boolean manual, boolean fullOnLoad, boolean iterate, boolean fullPrecision) {
    /** What a file without settings means. */
    public static final Calculation USUAL = new Calculation(false, false, false, true);
  }

  /** The sheet of that name, capital and small letters alike. */
  public Optional<Sheet> sheet(String name) {
    return ((NamedSheets) sheets).named(name);
  }

  /** The cell at that address; empty where there is no such sheet or nothing in it. */
  public Cell cell(Address address) {
    return sheet(address.sheet()).map(sheet -> sheet.cell(address.ref())).orElse(Cell.EMPTY);
  }

  /** The name as the whole workbook knows it, capital and small letters alike. */
  public Optional<Name> name(String name) {
    return names.stream()
        .filter(each -> each.sheet().isEmpty() && each.name().equalsIgnoreCase(name))
        .findFirst();
  }

  /** The name as formulas on that sheet know it: the sheet's own first, then the workbook's. */
  public Optional<Name> name(String name, String sheet) {
    Optional<Name> own = names.stream()
        .filter(each -> each.sheet().equalsIgnoreCase(sheet) && each.name().equalsIgnoreCase(name))
        .findFirst();
    return own.isPresent() ? own : name(name);
  }

  /**
   * The workbook as it is once these edits are carried out. Looks are followed as far as number formats go; links and
   * pictures are not in it. Formulas keep the values that the edits bring.
   */
  public Workbook after(List<Edit> edits) {
    return Aftermath.of(this, edits);
  }

  /** The day and time a number stands for in this workbook; nothing outside the years 1900 to 9999. */
  public Optional<LocalDateTime> date(double serial) {
    return Serial.date(serial, date1904);
  }
}
