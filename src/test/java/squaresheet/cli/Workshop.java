package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.NodeList;
import squaresheet.binding.CellMap;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** Makes job workbooks as people do, changes cells of them by what they are, and reads the papers that are drawn. */
final class Workshop {

  private final Path folder;

  Workshop(Path folder) {
    this.folder = folder;
  }

  /** The demo house without the row that cannot be read, imported. */
  Path job(String name) {
    return job(name, "Alder Lane house");
  }

  /** The same house under another name. */
  Path job(String name, String called) {
    try {
      String sheet = Files.readAllLines(Path.of("demo-data/tape-sheet.csv")).stream()
          .filter(line -> !line.contains("about two foot"))
          .map(line -> line.replace("Alder Lane house", called))
          .collect(Collectors.joining("\n", "", "\n"));
      Path tape = Files.writeString(folder.resolve(name + ".csv"), sheet);
      Path book = folder.resolve(name + ".xlsx");
      Ran ran = Ran.of(
          "import", tape.toString(), "--company", "demo-data", "-o", book.toString(), "--force");
      assertThat(ran.exit()).as(ran.all()).isZero();
      return book;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  static Workbook read(Path book) {
    return Xlsx.read(book).value().orElseThrow();
  }

  /** Where a job workbook keeps a value of the job or of a line. */
  static Address cell(Path book, String subject, String property) {
    CellMap cells = JobBook.bound(book, Rulebook.standard()).cells();
    return cells.cell(subject, property).orElseThrow();
  }

  /** Where a sheet repeats a value of the job. */
  static Address repeated(Path book, String sheet, String rule) {
    return read(book).sheets().stream()
        .filter(it -> it.name().equals(sheet))
        .flatMap(it -> it.cells()
            .filter(placed -> placed.cell().formula().equals(rule))
            .map(Sheet.Placed::ref)
            .map(ref -> new Address(sheet, ref)))
        .findFirst()
        .orElseThrow();
  }

  static Edit typed(Address at, double value) {
    return new Edit.SetContent(at, new Content.Numeric(value));
  }

  /** Changes a workbook and works everything out anew, as a spreadsheet program does when it saves. */
  static void change(Path book, Edit... edits) {
    save(book, List.of(edits));
    save(book, Planted.recalculated(read(book)));
  }

  private static void save(Path book, List<Edit> edits) {
    assertThat(Xlsx.edit(book, edits, book, Existing.REPLACE).value()).isPresent();
  }

  /** Cuts the part of a sheet off in the middle, as a bad copy does; the others stay whole. */
  static void cutOff(Path book, String sheet) throws IOException {
    int number = read(book).sheets().stream().map(Sheet::name).toList().indexOf(sheet) + 1;
    try (FileSystem zip = FileSystems.newFileSystem(book)) {
      Path part = zip.getPath("xl/worksheets/sheet" + number + ".xml");
      byte[] bytes = Files.readAllBytes(part);
      Files.write(part, Arrays.copyOf(bytes, bytes.length / 2));
    }
  }

  /** Draws into the folder of that name. */
  Ran draw(Path book, String into, String... more) {
    List<String> words = new ArrayList<>(
        List.of("draw", book.toString(), "-o", folder.resolve(into).toString()));
    words.addAll(List.of(more));
    return Ran.of(words.toArray(String[]::new));
  }

  /** The names of the files under a folder, in order. */
  List<String> files(String under) {
    Path top = folder.resolve(under);
    try (Stream<Path> files = Files.walk(top)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> top.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** The texts on a drawing whose name contains these words; fails where there is none. */
  List<String> texts(String under, String words) {
    String name = files(under).stream()
        .filter(it -> it.contains(words) && it.endsWith(".svg"))
        .findFirst()
        .orElseThrow();
    return texts(folder.resolve(under).resolve(name));
  }

  static List<String> texts(Path svg) {
    try {
      NodeList found = DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(svg.toFile())
          .getElementsByTagName("text");
      List<String> texts = new ArrayList<>();
      for (int at = 0; at < found.getLength(); at++) {
        texts.add(found.item(at).getTextContent());
      }
      return texts;
    } catch (Exception broken) {
      throw new AssertionError(svg + " is no drawing", broken);
    }
  }
}
