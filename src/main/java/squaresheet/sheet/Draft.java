package squaresheet.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A new workbook as its maker describes it, sheet by sheet. Formulas carry the value they should show until recalculated. */
public final class Draft {

  private static final int LONGEST_TAB = 31;

  private final List<DraftSheet> sheets = new ArrayList<>();
  private final List<Workbook.Name> names = new ArrayList<>();
  private final Map<String, String> properties = new LinkedHashMap<>();
  private String title = "";

  /**
   * Adds a sheet behind the others.
   *
   * @throws IllegalArgumentException if a tab cannot bear the name or one already does; see {@link #freeName}
   */
  public DraftSheet sheet(String name) {
    if (!freeName(name).equals(name)) {
      throw new IllegalArgumentException(
          "a sheet's name must be new, 1 to 31 characters, without []:*?/\\ and without apostrophes"
              + " at its ends, but is '" + name + "'");
    }
    DraftSheet sheet = new DraftSheet(name);
    sheets.add(sheet);
    return sheet;
  }

  /** A sheet to put into a workbook that others made, under a name that none of its tabs bears. */
  public static DraftSheet sheetFor(Workbook book, String wish) {
    Draft names = new Draft();
    book.sheets().forEach(sheet -> names.sheet(names.freeName(sheet.name())));
    return names.sheet(names.freeName(wish));
  }

  /** The name nearest to the wish that a tab can bear and none does yet. */
  public String freeName(String wish) {
    String legible =
        FileText.legible(wish.replaceAll("[\\[\\]:*?/\\\\\\p{Cntrl}]|_(?=x[0-9A-Fa-f]{4}_)", " "));
    String fit = fit(legible.strip(), LONGEST_TAB);
    String free = fit;
    for (int n = 2; isTaken(free); n++) {
      String suffix = " " + n;
      free = fit(fit, LONGEST_TAB - suffix.length()) + suffix;
    }
    return free;
  }

  private static String fit(String name, int longest) {
    String cut = name.substring(0, Math.min(name.length(), longest));
    boolean half = !cut.isEmpty() && Character.isHighSurrogate(cut.charAt(cut.length() - 1));
    String whole = half ? cut.substring(0, cut.length() - 1) : cut;
    String bare = whole.replaceAll("^'+|'+$", "").strip();
    return bare.isEmpty() || bare.toLowerCase(Locale.ROOT).equals("history") ? "Sheet" : bare;
  }

  private boolean isTaken(String name) {
    return sheets.stream().anyMatch(sheet -> sheet.name().equalsIgnoreCase(name));
  }

  /** The sheets so far. */
  public List<DraftSheet> sheets() {
    return List.copyOf(sheets);
  }

  /**
   * Adds a defined name that the whole workbook knows.
   *
   * @param text what it stands for, such as {@code Inputs!$B$2}
   * @throws IllegalArgumentException if some spreadsheet program would not take it as a name, or it is there already
   */
  public Draft name(String name, String text) {
    return name(Workbook.Name.of(name, text));
  }

  /** Adds a defined name. */
  public Draft name(Workbook.Name name) {
    boolean there = names.stream()
        .anyMatch(each -> each.name().equalsIgnoreCase(name.name())
            && each.sheet().equalsIgnoreCase(name.sheet()));
    if (!Workbook.Name.isValid(name.name()) || there) {
      throw new IllegalArgumentException(
          "a defined name must be new and a word not shaped like a cell, but is '" + name.name()
              + "'");
    }
    names.add(name);
    return this;
  }

  /** The defined names so far. */
  public List<Workbook.Name> names() {
    return List.copyOf(names);
  }

  /** Sets a custom document property. */
  public Draft property(String name, String value) {
    properties.put(name, value);
    return this;
  }

  /** The custom document properties. */
  public Map<String, String> properties() {
    return java.util.Collections.unmodifiableMap(properties);
  }

  /** Sets the title in the document's properties. */
  public Draft title(String text) {
    title = text;
    return this;
  }

  /** Sets the paper that every sheet so far is printed on. */
  public Draft on(DraftSheet.Paper paper) {
    sheets.forEach(sheet -> sheet.print(sheet.print().on(paper)));
    return this;
  }

  /** The title in the document's properties. */
  public String title() {
    return title;
  }

  /** The draft as it would be read back from its file. */
  public Workbook workbook() {
    Workbook.Calculation calculation = new Workbook.Calculation(false, true, false, true);
    return new Workbook(
        sheets.stream().map(DraftSheet::sheet).toList(),
        names,
        false,
        calculation,
        List.of(),
        properties);
  }

  /** The sheet of that name among those so far. */
  public Optional<DraftSheet> find(String name) {
    return sheets.stream().filter(sheet -> sheet.name().equalsIgnoreCase(name)).findFirst();
  }
}
