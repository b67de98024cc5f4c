package squaresheet.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Writes a draft through POI's object model; the same draft gives the same bytes. */
final class DraftWriter {

  /** Files carry a fixed day instead of today, so that equal drafts give equal files. */
  private static final Instant A_FIXED_DAY = Instant.parse("2026-01-01T00:00:00Z");

  private static final String XML = ".*\\.(xml|rels|vml)";

  private final XSSFWorkbook workbook;
  private final Looks looks;

  private DraftWriter(XSSFWorkbook workbook) {
    this.workbook = workbook;
    looks = new Looks(workbook);
  }

  static byte[] bytes(Draft draft) throws IOException {
    if (draft.sheets().stream().allMatch(it -> it.visibility() != Sheet.Visibility.VISIBLE)) {
      throw new IllegalArgumentException(
          "a workbook must have a sheet that shows, but the draft has none");
    }
    ByteArrayOutputStream raw = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      new DraftWriter(workbook).write(draft);
      workbook.write(raw);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    SteadyZip.rewrite(raw.toByteArray(), bytes, (name, part) -> {
      byte[] fit = name.matches(XML) ? legible(part) : part;
      return name.equals("xl/workbook.xml") ? hidingNames(draft, fit) : fit;
    });
    return bytes.toByteArray();
  }

  /** The object model lets control characters into attributes, where no other reader takes them. */
  private static byte[] legible(byte[] part) {
    String text = new String(part, StandardCharsets.UTF_8);
    String legible = Content.legible(text);
    return legible.equals(text) ? part : legible.getBytes(StandardCharsets.UTF_8);
  }

  private void write(Draft draft) {
    for (DraftSheet each : draft.sheets()) {
      XSSFSheet sheet = workbook.createSheet(each.name());
      new DraftSheetWriter(sheet, each, looks).write();
    }
    for (int i = 0; i < draft.sheets().size(); i++) {
      workbook.setSheetVisibility(i, visibility(draft.sheets().get(i).visibility()));
    }
    showFirst(draft);
    draft.names().forEach(this::name);
    workbook.setForceFormulaRecalculation(true);
    properties(draft);
  }

  private static SheetVisibility visibility(Sheet.Visibility is) {
    return SheetVisibility.valueOf(is.name());
  }

  private void showFirst(Draft draft) {
    int first = 0;
    while (draft.sheets().get(first).visibility() != Sheet.Visibility.VISIBLE) {
      first++;
    }
    workbook.setActiveSheet(first);
    workbook.setSelectedTab(first);
    workbook.setFirstVisibleTab(first);
  }

  private void name(Workbook.Name name) {
    XSSFName made = workbook.createName();
    if (!name.sheet().isEmpty()) {
      made.setSheetIndex(workbook.getSheetIndex(name.sheet()));
    }
    made.setNameName(name.name());
    made.setRefersToFormula(Content.spelled(FutureFunctions.inFile(name.text())));
  }

  /** The object model has no way to hide a name, so its part is changed afterwards. */
  private static byte[] hidingNames(Draft draft, byte[] part) {
    Set<String> hidden = draft.names().stream()
        .filter(Workbook.Name::hidden)
        .map(name -> name.name() + " " + sheet(draft, name))
        .collect(Collectors.toSet());
    if (hidden.isEmpty()) {
      return part;
    }
    PartText book = PartText.of(new String(part, StandardCharsets.UTF_8));
    book.root().child("definedNames").stream()
        .flatMap(list -> list.children.stream())
        .filter(it -> hidden.contains(it.attribute("name") + " " + it.number("localSheetId", -1)))
        .forEach(it -> book.set(it, "hidden", "1"));
    return book.bytes();
  }

  /** The number of the sheet a name is limited to, or -1. */
  private static int sheet(Draft draft, Workbook.Name name) {
    List<DraftSheet> sheets = draft.sheets();
    return IntStream.range(0, sheets.size())
        .filter(i -> sheets.get(i).name().equalsIgnoreCase(name.sheet()))
        .findFirst()
        .orElse(-1);
  }

  private void properties(Draft draft) {
    POIXMLProperties properties = workbook.getProperties();
    properties.getCoreProperties().setCreator("Squaresheet");
    properties.getCoreProperties().setCreated(Optional.of(Date.from(A_FIXED_DAY)));
    properties.getCoreProperties().setModified(Optional.of(Date.from(A_FIXED_DAY)));
    if (!draft.title().isEmpty()) {
      properties.getCoreProperties().setTitle(Content.legible(draft.title()));
    }
    properties.getExtendedProperties().setApplication("Squaresheet");
    draft.properties().forEach((name, value) -> properties
        .getCustomProperties()
        .addProperty(Content.spelled(name), Content.spelled(value)));
  }

  /** The code POI knows the paper by. */
  static short paper(DraftSheet.Paper paper) {
    return (short) (paper == DraftSheet.Paper.LETTER ? 1 : 9);
  }
}
