package squaresheet.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Writes a draft through POI's object model; the same draft gives the same bytes. */
final class DraftWriter {

  /** Files carry a fixed day instead of today, so that equal drafts give equal files. */
  private static final Instant A_FIXED_DAY = Instant.parse("2026-01-01T00:00:00Z");

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
    SteadyZip.rewrite(raw.toByteArray(), bytes);
    return bytes.toByteArray();
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
    made.setNameName(name.name());
    if (!name.sheet().isEmpty()) {
      made.setSheetIndex(workbook.getSheetIndex(name.sheet()));
    }
    made.setRefersToFormula(FutureFunctions.inFile(name.text()));
  }

  private void properties(Draft draft) {
    POIXMLProperties properties = workbook.getProperties();
    properties.getCoreProperties().setCreator("Squaresheet");
    properties.getCoreProperties().setCreated(Optional.of(Date.from(A_FIXED_DAY)));
    properties.getCoreProperties().setModified(Optional.of(Date.from(A_FIXED_DAY)));
    if (!draft.title().isEmpty()) {
      properties.getCoreProperties().setTitle(draft.title());
    }
    properties.getExtendedProperties().setApplication("Squaresheet");
    draft
        .properties()
        .forEach((name, value) -> properties.getCustomProperties().addProperty(name, value));
  }

  /** The code POI knows the paper by. */
  static short paper(DraftSheet.Paper paper) {
    return (short) (paper == DraftSheet.Paper.LETTER ? 1 : 9);
  }
}
