package squaresheet.xlsx;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Opens the large file once, ours or theirs, to find the smallest heap in which that succeeds. */
public final class OpenOnce {

  private OpenOnce() {}

  public static void main(String[] arguments) throws IOException, InvalidFormatException {
    Path file = SampleFiles.ofRows(150_000);
    if (arguments[0].equals("ours")) {
      System.exit(Xlsx.read(file).value().isPresent() ? 0 : 1);
    }
    try (OPCPackage parts = OPCPackage.open(file.toFile(), PackageAccess.READ);
        XSSFWorkbook workbook = new XSSFWorkbook(parts)) {
      System.exit(workbook.getNumberOfSheets() == 1 ? 0 : 1);
    } catch (OutOfMemoryError tooSmall) {
      System.exit(1);
    }
  }
}
