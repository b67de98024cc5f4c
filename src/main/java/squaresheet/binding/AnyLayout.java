package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.job.JobResult;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/**
 * A workbook that nobody here designed: what its columns and cells seem to be, what a person or a mapping file says they
 * are, and what can then be read. What is not sure is not bound, and what is not bound is not checked.
 */
public final class AnyLayout {

  private static final String FINDINGS = "What Squaresheet found";

  private final Workbook book;
  private final String file;
  private final List<Guess> guesses;
  private final List<Finding> findings;

  private final SheetTables sheets;

  private AnyLayout(
      Workbook book, String file, SheetTables sheets, List<Guess> guesses, List<Finding> findings) {
    this.book = book;
    this.file = file;
    this.sheets = sheets;
    this.guesses = List.copyOf(guesses);
    this.findings = List.copyOf(findings);
  }

  /** Someone who can be asked. */
  public interface Asker {

    /**
     * What a column or cell is.
     *
     * @return the guess, agreed or put right (another property or unit); nothing where it is to stay unbound
     */
    Optional<Guess> ask(Guess guess);
  }

  /** What stands in the first cell of a sheet with a list of findings. */
  public static String titleOfFindings() {
    return FINDINGS;
  }

  /** Whether a sheet was added by this library to a workbook that others designed: it is no part of their layout. */
  public static boolean isOurs(Sheet sheet) {
    return isNotes(sheet) || Cells.text(sheet.cell("A1")).equals(AddedLayout.TITLE);
  }

  /** Whether a sheet of this library holds nothing but what it noted for itself or said: the binding, or a list of findings. */
  private static boolean isNotes(Sheet sheet) {
    return StoredBinding.isOne(sheet) || Cells.text(sheet.cell("A1")).equals(FINDINGS);
  }

  /** The workbook without those notes, which are no part of what anybody works out in it. */
  public static Workbook withoutNotes(Workbook book) {
    List<Sheet> kept = book.sheets().stream().filter(sheet -> !isNotes(sheet)).toList();
    Set<String> left = book.sheets().stream()
        .filter(AnyLayout::isNotes)
        .map(Sheet::name)
        .collect(Collectors.toSet());
    return left.isEmpty()
        ? book
        : new Workbook(
            kept,
            book.names().stream().filter(name -> !left.contains(name.sheet())).toList(),
            book.date1904(),
            book.calculation(),
            book.externalLinks(),
            book.properties());
  }

  /** The binding kept in the workbook, or where there is none what the workbook seems to be. */
  public static AnyLayout of(Workbook book, String file) {
    Optional<Read<List<Guess>>> stored = StoredBinding.read(book, file);
    return stored
        .map(read -> new AnyLayout(
            book, file, new SheetTables(file), read.value().orElse(List.of()), read.findings()))
        .orElseGet(() -> survey(book, file, StoredBinding.gone(book, file)));
  }

  /** What the workbook seems to be, whatever binding is kept in it. */
  public static AnyLayout survey(Workbook book, String file) {
    return survey(book, file, List.of());
  }

  private static AnyLayout survey(Workbook book, String file, List<Finding> findings) {
    SheetTables sheets = new SheetTables(file);
    return new AnyLayout(book, file, sheets, new Survey(book, sheets).guesses(), findings);
  }

  /** Everything that seems to be something, sure or not, in the order of the sheets. */
  public List<Guess> guesses() {
    return guesses;
  }

  /** What is sure enough to be bound. */
  public List<Guess> bound() {
    return guesses.stream().filter(Guess::isSure).toList();
  }

  /** What has to be asked. */
  public List<Guess> questions() {
    return guesses.stream().filter(guess -> !guess.isSure()).toList();
  }

  /** The layout after everything unsure was asked. */
  public AnyLayout asking(Asker asker) {
    List<Guess> answered = new ArrayList<>(bound());
    questions().forEach(guess -> asker.ask(guess).map(Guess::agreed).ifPresent(answered::add));
    return new AnyLayout(book, file, sheets, answered, findings);
  }

  /** The layout with what a mapping file says; its lines go before every guess. */
  public Read<AnyLayout> mapped(String csv, String mappingFile) {
    Mapping mapping = new Mapping(book, mappingFile);
    List<Guess> put = mapping.apply(csv, guesses);
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(mapping.findings());
    return Read.of(new AnyLayout(book, file, sheets, put, findings), all);
  }

  /** A mapping file that says what is bound and, with question marks, what is not sure or not bound. */
  public String mapping() {
    List<Finding> unbound = read().findings().stream()
        .filter(finding -> finding.info().equals(Complaint.NOT_BOUND.info()))
        .filter(finding -> guesses.stream()
            .noneMatch(guess ->
                finding.where() instanceof Where.InCell in && in.cell().equals(guess.at())))
        .toList();
    return Mapping.write(book, guesses, unbound);
  }

  /** The edits that keep the agreed binding in the workbook. */
  public List<Edit> store() {
    return StoredBinding.store(book, bound());
  }

  /** What can be read of the workbook through what is bound. */
  public BoundBook read() {
    return new BookReader(book, file, bound(), findings).read();
  }

  /**
   * What it takes to write a job into the bound cells: its planes, edges, openings, settings, prices and orders, each in the
   * unit and the words of its column. Formulas are left alone; rows are only filled where every sum takes them in.
   *
   * @param sheet the sheet whose planes, edges and openings are meant where there are several; empty for all
   */
  public Filled fill(JobResult job, String sheet) {
    return new Filling(book, file, toFill(), job, sheet).fill();
  }

  /** What is bound, and the empty cells of a form beside their labels. */
  private List<Guess> toFill() {
    List<Guess> all = new ArrayList<>(bound());
    all.addAll(new Survey(book, sheets).vacant(guesses));
    return all;
  }

  /** What is written of the units of the workbook's numbers; its tables are not looked for again. */
  public BookUnits units() {
    return BookUnits.of(book, sheets);
  }

  /** As {@link #fill}, with a sheet of the course lines and marks of every plane beside it; written anew where it is there. */
  public Filled fillWithLayout(JobResult job, String sheet) {
    return new Filling(book, file, toFill(), job, sheet).withLayout().fill();
  }

  /** The edits that write values and a roof into the bound cells. */
  public BookEdits edits() {
    return new BookEdits(book, read());
  }
}
