package squaresheet.xlsx;

import java.util.List;
import java.util.Map;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFDataValidationConstraint;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Sheet.Validation.Comparison;
import squaresheet.sheet.Sheet.Validation.Kind;

/** Writes one sheet of a draft through POI's object model. */
final class DraftSheetWriter {

  private static final int WIDTH_UNIT = 256;

  /** In the order of POI's numbers for them. */
  private static final List<Kind> KINDS = List.of(
      Kind.ANY,
      Kind.WHOLE,
      Kind.DECIMAL,
      Kind.LIST,
      Kind.DATE,
      Kind.TIME,
      Kind.TEXT_LENGTH,
      Kind.CUSTOM);

  /** In the order of POI's numbers for them. */
  private static final List<Comparison> COMPARISONS = List.of(
      Comparison.BETWEEN,
      Comparison.NOT_BETWEEN,
      Comparison.EQUAL,
      Comparison.NOT_EQUAL,
      Comparison.GREATER_THAN,
      Comparison.LESS_THAN,
      Comparison.GREATER_THAN_OR_EQUAL,
      Comparison.LESS_THAN_OR_EQUAL);

  private final XSSFSheet sheet;
  private final DraftSheet draft;
  private final Looks looks;

  DraftSheetWriter(XSSFSheet sheet, DraftSheet draft, Looks looks) {
    this.sheet = sheet;
    this.draft = draft;
    this.looks = looks;
  }

  void write() {
    draft.entries().forEach(this::cell);
    draft
        .widths()
        .forEach((column, characters) ->
            sheet.setColumnWidth(column, (int) Math.round(Math.min(255, characters) * WIDTH_UNIT)));
    draft.heights().forEach((row, points) -> row(row).setHeightInPoints(points.floatValue()));
    draft.merged().forEach(block -> sheet.addMergedRegion(range(block)));
    draft.validations().forEach(this::validation);
    draft.comments().values().forEach(this::comment);
    draft.links().forEach(this::link);
    draft.pictures().forEach(this::picture);
    if (draft.frozenRows() > 0 || draft.frozenColumns() > 0) {
      sheet.createFreezePane(draft.frozenColumns(), draft.frozenRows());
    }
    print(draft.print());
    draft.breaks().forEach(row -> sheet.setRowBreak(row - 1));
  }

  private XSSFRow row(int row) {
    XSSFRow there = sheet.getRow(row);
    return there == null ? sheet.createRow(row) : there;
  }

  private void cell(Ref ref, DraftSheet.Entry entry) {
    XSSFCell cell = row(ref.row()).createCell(ref.column());
    cell.setCellStyle(looks.of(entry.role(), entry.format()));
    CTCell xml = cell.getCTCell();
    boolean formula = !entry.formula().isEmpty();
    if (formula) {
      xml.addNewF().setStringValue(Content.spelled(FutureFunctions.inFile(entry.formula())));
    }
    if (entry.stored() instanceof Content.Numeric it) {
      xml.setV(Double.toString(it.value()));
    } else if (entry.stored() instanceof Content.Truth it) {
      value(xml, STCellType.B, it.value() ? "1" : "0");
    } else if (entry.stored() instanceof Content.Fault it) {
      value(xml, STCellType.E, Content.spelled(it.code()));
    } else if (entry.stored() instanceof Content.Text it && formula) {
      value(xml, STCellType.STR, Content.spelled(it.value()));
    } else if (entry.stored() instanceof Content.Text it) {
      cell.setCellValue(Content.spelled(it.value()));
    }
  }

  private static void value(CTCell xml, STCellType.Enum type, String text) {
    xml.setT(type);
    xml.setV(text);
  }

  private void validation(Sheet.Validation rule) {
    XSSFDataValidationHelper helper = new XSSFDataValidationHelper(sheet);
    XSSFDataValidationConstraint constraint = new XSSFDataValidationConstraint(
        KINDS.indexOf(rule.kind()),
        COMPARISONS.indexOf(rule.comparison()),
        Content.spelled(rule.first()),
        Content.spelled(rule.second()));
    CellRangeAddressList cells = new CellRangeAddressList();
    rule.blocks().forEach(block -> cells.addCellRangeAddress(range(block)));
    XSSFDataValidation validation = (XSSFDataValidation) helper.createValidation(constraint, cells);
    validation.setEmptyCellAllowed(true);
    validation.setSuppressDropDownArrow(true);
    validation.setShowErrorBox(true);
    if (!rule.message().isEmpty()) {
      String message = inAttribute(rule.message());
      validation.createErrorBox("Not accepted", message);
      validation.createPromptBox("", message);
      validation.setShowPromptBox(true);
    }
    sheet.addValidationData(validation);
  }

  /** Every reader takes white space in an attribute for a blank, so that is spelled too. */
  private static String inAttribute(String text) {
    return Content.spelled(text).replace("\t", "_x0009_").replace("\n", "_x000A_");
  }

  private void comment(Sheet.Comment comment) {
    ClientAnchor anchor = new XSSFClientAnchor(
        0,
        0,
        0,
        0,
        comment.ref().column() + 1,
        comment.ref().row(),
        comment.ref().column() + 4,
        comment.ref().row() + 5);
    XSSFComment made = sheet.createDrawingPatriarch().createCellComment(anchor);
    made.setAddress(comment.ref().row(), comment.ref().column());
    made.setAuthor(Content.spelled(comment.author()));
    made.setString(Content.spelled(comment.text()));
  }

  private void link(Sheet.Link link) {
    boolean inside = link.target().startsWith("#");
    XSSFHyperlink made = sheet
        .getWorkbook()
        .getCreationHelper()
        .createHyperlink(inside ? HyperlinkType.DOCUMENT : HyperlinkType.URL);
    made.setAddress(inside ? link.target().substring(1) : link.target());
    made.setCellReference(link.block().first().toString());
    made.setLastRow(link.block().last().row());
    made.setLastColumn(link.block().last().column());
    if (!link.tip().isEmpty()) {
      made.setTooltip(inAttribute(link.tip()));
    }
    sheet.addHyperlink(made);
  }

  private void picture(DraftSheet.Picture picture) {
    Block block = picture.anchor();
    int number =
        sheet.getWorkbook().addPicture(picture.png().bytes(), XSSFWorkbook.PICTURE_TYPE_PNG);
    XSSFClientAnchor anchor = new XSSFClientAnchor(
        0,
        0,
        0,
        0,
        block.first().column(),
        block.first().row(),
        block.last().column() + 1,
        block.last().row() + 1);
    XSSFPicture made = sheet.createDrawingPatriarch().createPicture(anchor, number);
    made.getCTPicture().getNvPicPr().getCNvPr().setDescr(Content.legible(picture.description()));
  }

  private void print(DraftSheet.Print print) {
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setPaperSize(DraftWriter.paper(print.paper()));
    sheet.getPrintSetup().setLandscape(print.landscape());
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 0);
    if (print.headingRows() > 0) {
      sheet.setRepeatingRows(new CellRangeAddress(0, print.headingRows() - 1, -1, -1));
    }
    Map.of(
            PageMargin.LEFT,
            0.0,
            PageMargin.RIGHT,
            0.0,
            PageMargin.TOP,
            print.header().isEmpty() ? 0.0 : 0.25,
            PageMargin.BOTTOM,
            0.25)
        .forEach((side, more) -> sheet.setMargin(side, print.marginInches() + more));
    sheet.setMargin(PageMargin.HEADER, print.marginInches() / 2);
    sheet.setMargin(PageMargin.FOOTER, print.marginInches() / 2);
    if (!print.header().isEmpty()) {
      sheet.getHeader().setCenter(Content.spelled(print.header()).replace("&", "&&"));
    }
    sheet.getFooter().setLeft(Content.spelled(print.footer()).replace("&", "&&"));
    sheet.getFooter().setRight("&P / &N");
  }

  private static CellRangeAddress range(Block block) {
    return new CellRangeAddress(
        block.first().row(),
        block.last().row(),
        block.first().column(),
        block.last().column());
  }
}
