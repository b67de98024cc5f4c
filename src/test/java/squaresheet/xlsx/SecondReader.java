package squaresheet.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.eventusermodel.XSSFSheetXMLHandler;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/** Another library's package and event readers: parts, how they are related, and cells, each by its place. */
final class SecondReader {

  private SecondReader() {}

  /** Does something with an open package. */
  private interface Work<T> {
    T with(OPCPackage parts)
        throws IOException, OpenXML4JException, SAXException, ParserConfigurationException;
  }

  private static <T> T reading(Path file, Work<T> work) {
    try (OPCPackage parts = OPCPackage.open(file.toFile(), PackageAccess.READ)) {
      return work.with(parts);
    } catch (IOException
        | OpenXML4JException
        | SAXException
        | ParserConfigurationException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  /** The names of all parts. */
  static Set<String> parts(Path file) {
    return reading(file, parts -> {
      Set<String> names = new TreeSet<>();
      for (PackagePart part : parts.getParts()) {
        names.add(part.getPartName().getName());
      }
      return names;
    });
  }

  /** Where the relationships of all parts lead, by part and id. */
  static Map<String, String> relations(Path file) {
    return reading(file, parts -> {
      Map<String, String> all = new TreeMap<>();
      for (PackagePart part : parts.getParts()) {
        if (!part.isRelationshipPart()) {
          for (PackageRelationship each : part.getRelationships()) {
            all.put(part.getPartName() + " " + each.getId(), each.getTargetURI().toString());
          }
        }
      }
      return all;
    });
  }

  /** The stored values of all cells that have one, numbers as they are stored. */
  static Map<String, String> values(Path file) {
    return reading(file, parts -> cells(parts, false));
  }

  /** The formulas of all cells that spell one out. */
  static Map<String, String> formulas(Path file) {
    Map<String, String> cells = reading(file, parts -> cells(parts, true));
    // That reader tells the values of cells without formulas among them.
    cells.entrySet().removeAll(values(file).entrySet());
    return cells;
  }

  private static Map<String, String> cells(OPCPackage parts, boolean formulas)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    Map<String, String> cells = new TreeMap<>();
    XSSFReader reader = new XSSFReader(parts);
    XSSFReader.SheetIterator sheets = (XSSFReader.SheetIterator) reader.getSheetsData();
    while (sheets.hasNext()) {
      try (InputStream sheet = sheets.next()) {
        XMLReader xml = XMLHelper.newXMLReader();
        xml.setContentHandler(new XSSFSheetXMLHandler(
            reader.getStylesTable(),
            null,
            reader.getSharedStringsTable(),
            new Collector(cells, sheets.getSheetName()),
            new AsStored(),
            formulas));
        xml.parse(new InputSource(sheet));
      }
    }
    return cells;
  }

  /** Notes what is told of each cell. */
  private record Collector(Map<String, String> cells, String sheet)
      implements XSSFSheetXMLHandler.SheetContentsHandler {

    @Override
    public void startRow(int row) {}

    @Override
    public void endRow(int row) {}

    @Override
    public void cell(String reference, String value, XSSFComment comment) {
      if (value != null && !value.isEmpty()) {
        cells.put(sheet + "!" + reference, value);
      }
    }
  }

  /** Leaves numbers as they are. */
  private static final class AsStored extends DataFormatter {
    @Override
    public String formatRawCellContents(double value, int index, String format) {
      return Double.toString(value);
    }
  }
}
