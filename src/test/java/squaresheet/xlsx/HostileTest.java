package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every hostile file costs one sentence, little memory and little time. */
class HostileTest {

  private static final long MOST_MILLISECONDS = 10_000;

  @TempDir
  Path folder;

  private List<String> readInLittleMemory(List<Path> files)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-Xmx256m",
        "-cp",
        System.getProperty("java.class.path"),
        "squaresheet.xlsx.HostileReader"));
    files.forEach(file -> command.add(file.toString()));
    Path output = folder.resolve("output.txt");
    Process process = new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(output.toFile())
        .start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
    return Files.readAllLines(output, StandardCharsets.UTF_8).stream()
        .filter(line -> line.contains("\t"))
        .toList();
  }

  private void expect(List<Path> files, String table) throws IOException, InterruptedException {
    List<String> lines = readInLittleMemory(files);
    StringBuilder seen = new StringBuilder();
    for (String line : lines) {
      String[] parts = line.split("\t");
      assertThat(Long.parseLong(parts[1])).as(line).isLessThan(MOST_MILLISECONDS);
      seen.append(parts[0] + " | " + parts[2] + " | " + parts[3] + "\n");
    }
    assertThat(seen.toString()).isEqualTo(table);
  }

  @Test
  void a_file_that_would_fill_the_memory_or_the_day_gets_a_sentence()
      throws IOException, InterruptedException {
    Hostile hostile = new Hostile(folder);
    expect(
        List.of(
            hostile.bomb(),
            hostile.flood(),
            hostile.tooManyRows(),
            hostile.bombInRelationships(),
            hostile.deep(),
            hostile.entities(),
            hostile.outsideEntity(),
            hostile.millionEmpty(),
            hostile.manyCells(),
            hostile.manyTexts(),
            hostile.longAttribute(),
            hostile.sharedCycle(),
            hostile.manyBlocks()),
        """
        bomb.xlsx | nothing | 'bomb.xlsx' unpacks to more than a hundred times its size, which no workbook does; it was not read further
        flood.xlsx | nothing | 'flood.xlsx' unpacks to more than 384 MB, which is too large to be read
        rows.xlsx | 1048576 cells | sheet 'Planes' cannot be read whole: its part has more than 1048576 rows, and those below were left out
        relations.xlsx | nothing | 'relations.xlsx' holds lists of parts too large for a workbook
        deep.xlsx | 0 cells | sheet 'Planes' cannot be read whole: its part holds XML nested deeper than 256, which a workbook never has
        entities.xlsx | 0 cells | sheet 'Planes' cannot be read whole: its part holds XML with a document type or entities of its own, which a workbook never has
        outside.xlsx | 0 cells | sheet 'Planes' cannot be read whole: its part holds XML with a document type or entities of its own, which a workbook never has
        empty-cells.xlsx | 0 cells | -
        many.xlsx | nothing | 'many.xlsx' holds more than fits into the memory given to this program (256 MB)
        texts.xlsx | nothing | 'texts.xlsx' holds more than fits into the memory given to this program (256 MB)
        attribute.xlsx | nothing | 'attribute.xlsx' holds more than fits into the memory given to this program (256 MB)
        cycle.xlsx | 5 cells | sheet 'Planes' uses shared formula 0, but no cell says what it is; the stored values are kept
        blocks.xlsx | 200000 cells | -
        """);
  }

  @Test
  void a_damaged_file_gets_a_sentence() throws IOException, InterruptedException {
    Hostile hostile = new Hostile(folder);
    expect(
        List.of(
            hostile.cut(1),
            hostile.cut(5),
            hostile.cut(9),
            hostile.cutPart(),
            hostile.twice(),
            hostile.packedOtherwise(),
            hostile.wrongTypes(),
            hostile.noTypes(),
            hostile.strangeCells()),
        """
        cut-1.xlsx | nothing | 'cut-1.xlsx' must be an .xlsx workbook, but is cut off or damaged; fetch it again, or open an older copy
        cut-5.xlsx | nothing | 'cut-5.xlsx' must be an .xlsx workbook, but is cut off or damaged; fetch it again, or open an older copy
        cut-9.xlsx | nothing | 'cut-9.xlsx' must be an .xlsx workbook, but is cut off or damaged; fetch it again, or open an older copy
        cut-part.xlsx | 1 cells | sheet 'Planes' cannot be read whole: its part holds XML that is cut off or malformed
        twice.xlsx | nothing | 'twice.xlsx' must be an .xlsx workbook, but holds its part 'xl/worksheets/sheet1.xml' twice; open it in a spreadsheet program and save it again
        zstd.xlsx | nothing | 'zstd.xlsx' must be an .xlsx workbook, but packs its part '_rels/.rels' in a way that no workbook does; open it in a spreadsheet program and save it again
        types.xlsx | nothing | 'types.xlsx' must be an .xlsx workbook, but calls its contents 'application/octet-stream+xml'
        no-types.xlsx | nothing | 'no-types.xlsx' must be an .xlsx workbook, but is a zip of other files; open it in a spreadsheet program and save it as Excel workbook (.xlsx)
        strange.xlsx | 5 cells | sheet 'Planes' has a cell at 'ZZZZ1', but cells must lie in A1 to XFD1048576; it was left out
        """);
  }

  @Test
  void a_file_of_another_kind_gets_a_sentence_that_says_what_to_do()
      throws IOException, InterruptedException {
    Hostile hostile = new Hostile(folder);
    expect(
        List.of(
            hostile.oldExcel(),
            hostile.locked(),
            hostile.openDocument(),
            hostile.binary(),
            hostile.text(),
            hostile.nothing(),
            hostile.noise(),
            hostile.page(),
            hostile.otherZip(),
            folder.resolve("missing.xlsx")),
        """
        old.xls | nothing | 'old.xls' must be an .xlsx workbook, but is an old Excel workbook (.xls); open it in a spreadsheet program and save it as Excel workbook (.xlsx)
        secret.xlsx | nothing | 'secret.xlsx' must be readable without a password, but is protected by one; open it in a spreadsheet program and save it without a password
        roof.ods | nothing | 'roof.ods' must be an .xlsx workbook, but is an OpenDocument file (.ods); open it in a spreadsheet program and save it as Excel workbook (.xlsx)
        roof.xlsb | nothing | 'roof.xlsb' must be an .xlsx workbook, but is an Excel binary workbook (.xlsb); open it in a spreadsheet program and save it as Excel workbook (.xlsx)
        roof.csv | nothing | 'roof.csv' must be an .xlsx workbook, but is a text table (.csv); open it in a spreadsheet program and save it as Excel workbook (.xlsx)
        nothing.xlsx | nothing | 'nothing.xlsx' must be an .xlsx workbook, but is empty
        noise.xlsx | nothing | 'noise.xlsx' must be an .xlsx workbook, but is not one; it may be damaged or of another kind; open it in a spreadsheet program and save it as Excel workbook (.xlsx)
        page.xlsx | nothing | 'page.xlsx' must be an .xlsx workbook, but is a web page or an XML file; open it in a spreadsheet program and save it as Excel workbook (.xlsx)
        other.xlsx | nothing | 'other.xlsx' must be an .xlsx workbook, but is a zip of other files; open it in a spreadsheet program and save it as Excel workbook (.xlsx)
        missing.xlsx | nothing | 'missing.xlsx' must be a workbook file, but is not there
        """);
  }
}
