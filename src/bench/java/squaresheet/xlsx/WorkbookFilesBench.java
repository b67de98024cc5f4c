package squaresheet.xlsx;

import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;

/** How long it takes to open a file to its cells, and to change one cell of it, beside other ways to do so. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4)
@Measurement(iterations = 5)
@Fork(value = 1, jvmArgs = {"-Xmx6g", "-Xms1g", "-Djava.awt.headless=true"})
public class WorkbookFilesBench {

  /** 220 rows make 30 KB, 8,000 make 1 MB, 150,000 make 20 MB. */
  @Param({"220", "8000", "150000"})
  public int rows;

  private Path file;
  private Path edited;

  @Setup
  public void write() {
    file = SampleFiles.ofRows(rows);
    edited = file.resolveSibling("edited-" + rows + ".xlsx");
  }

  @Benchmark
  public long open_ours() {
    return Xlsx.read(file).value().orElseThrow().sheets().get(0).size();
  }

  @Benchmark
  public long open_xssf() throws IOException, InvalidFormatException {
    try (OPCPackage parts = OPCPackage.open(file.toFile(), PackageAccess.READ);
        XSSFWorkbook workbook = new XSSFWorkbook(parts)) {
      return workbook.getSheetAt(0).getLastRowNum();
    }
  }

  @Benchmark
  public long open_fastexcel() throws IOException {
    long cells = 0;
    try (ReadableWorkbook workbook = new ReadableWorkbook(file.toFile());
        Stream<Row> all = workbook.getFirstSheet().openStream()) {
      for (Row row : (Iterable<Row>) all::iterator) {
        for (Cell cell : row) {
          cells += cell == null ? 0 : 1;
        }
      }
    }
    return cells;
  }

  @Benchmark
  public long unzip_and_stax_of_the_jdk() throws IOException, XMLStreamException {
    return unzipAndStax(XMLInputFactory.newDefaultFactory());
  }

  @Benchmark
  public long unzip_and_stax_of_aalto() throws IOException, XMLStreamException {
    return unzipAndStax(new InputFactoryImpl());
  }

  private long unzipAndStax(XMLInputFactory factory) throws IOException, XMLStreamException {
    long events = 0;
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        try (InputStream in = zip.getInputStream(entry)) {
          XMLStreamReader reader = factory.createXMLStreamReader(in);
          while (reader.hasNext()) {
            reader.next();
            events++;
          }
        }
      }
    }
    return events;
  }

  @Benchmark
  public Object edit_ours() {
    Edit edit = new Edit.SetContent(Address.of("Planes", "B100"), new Content.Numeric(1));
    return Xlsx.edit(file, List.of(edit), edited, Existing.REPLACE).value().orElseThrow();
  }

  @Benchmark
  public Object edit_xssf() throws IOException, InvalidFormatException {
    OPCPackage parts = OPCPackage.open(file.toFile(), PackageAccess.READ_WRITE);
    try (OutputStream out = Files.newOutputStream(edited)) {
      XSSFWorkbook workbook = new XSSFWorkbook(parts);
      workbook.getSheetAt(0).getRow(99).getCell(1).setCellValue(1);
      workbook.setForceFormulaRecalculation(true);
      workbook.write(out);
      return edited;
    } finally {
      // Closing would write the file that is being measured.
      parts.revert();
    }
  }
}
