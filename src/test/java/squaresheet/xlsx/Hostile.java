package squaresheet.xlsx;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import squaresheet.sheet.Ref;

/** Files that nobody wishes to be sent, each written when asked for. */
final class Hostile {

  private final Path folder;

  Hostile(Path folder) {
    this.folder = folder;
  }

  private interface Body {
    void write(OutputStream out) throws IOException;
  }

  private Path put(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  /** The smallest workbook, with its sheet written bit by bit. */
  private Path sheet(String name, Body body) throws IOException {
    return part(name, "xl/worksheets/sheet1.xml", body);
  }

  private Path part(String name, String part, Body body) throws IOException {
    Map<String, byte[]> parts = ZipParts.smallest(ZipParts.sheet("", ""));
    Path file = folder.resolve(name);
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
      out.setLevel(1);
      for (Map.Entry<String, byte[]> each : parts.entrySet()) {
        if (!each.getKey().equals(part)) {
          out.putNextEntry(new ZipEntry(each.getKey()));
          out.write(each.getValue());
          out.closeEntry();
        }
      }
      out.putNextEntry(new ZipEntry(part));
      body.write(out);
      out.closeEntry();
    }
    return file;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static final String HEAD =
      "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">";

  Path bomb() throws IOException {
    byte[] blanks = new byte[1 << 20];
    Arrays.fill(blanks, (byte) ' ');
    return sheet("bomb.xlsx", out -> {
      out.write(utf8(HEAD + "<sheetData>"));
      for (int i = 0; i < 300; i++) {
        out.write(blanks);
      }
      out.write(utf8("</sheetData></worksheet>"));
    });
  }

  /** Large beyond the limit, but written with enough variety that no single part looks packed too well. */
  Path flood() throws IOException {
    Random random = new Random(7);
    StringBuilder cells = new StringBuilder();
    for (int i = 0; i < 16_000; i++) {
      cells.append("<c s=\"").append(1000 + random.nextInt(60_000)).append("\"/>");
    }
    byte[] row = utf8("<row>" + cells + "</row>");
    return sheet("flood.xlsx", out -> {
      out.write(utf8(HEAD + "<sheetData>"));
      for (int i = 0; i < 2000; i++) {
        out.write(row);
      }
      out.write(utf8("</sheetData></worksheet>"));
    });
  }

  Path tooManyRows() throws IOException {
    return sheet("rows.xlsx", out -> {
      out.write(utf8(HEAD + "<sheetData>"));
      for (int i = 0; i < 1100; i++) {
        StringBuilder some = new StringBuilder();
        for (int j = 0; j < 1000; j++) {
          some.append(
              "<row><c><v>" + Math.abs((i * 1000 + j) * 2654435761L % 9973) + "</v></c></row>");
        }
        out.write(utf8(some.toString()));
      }
      out.write(utf8("</sheetData></worksheet>"));
    });
  }

  Path bombInRelationships() throws IOException {
    byte[] blanks = new byte[1 << 20];
    Arrays.fill(blanks, (byte) ' ');
    return part("relations.xlsx", "xl/_rels/workbook.xml.rels", out -> {
      for (int i = 0; i < 100; i++) {
        out.write(blanks);
      }
    });
  }

  Path deep() throws IOException {
    return sheet("deep.xlsx", out -> {
      out.write(utf8(HEAD));
      for (int i = 0; i < 2_000_000; i++) {
        out.write('<');
        out.write('a' + i % 7);
        out.write('>');
      }
    });
  }

  Path entities() throws IOException {
    StringBuilder text = new StringBuilder("<!DOCTYPE x [<!ENTITY e0 \"lol\">");
    for (int i = 1; i < 12; i++) {
      text.append("<!ENTITY e" + i + " \"" + ("&e" + (i - 1) + ";").repeat(10) + "\">");
    }
    text.append("]>" + HEAD
        + "<sheetData><row><c t=\"str\"><v>&e11;</v></c></row></sheetData></worksheet>");
    return sheet("entities.xlsx", out -> out.write(utf8(text.toString())));
  }

  Path outsideEntity() throws IOException {
    return sheet(
        "outside.xlsx",
        out -> out.write(utf8("<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>" + HEAD
            + "<sheetData><row><c t=\"str\"><v>&e;</v></c></row></sheetData></worksheet>")));
  }

  Path millionEmpty() throws IOException {
    return sheet("empty-cells.xlsx", out -> {
      out.write(utf8(HEAD + "<dimension ref=\"A1:XFD1048576\"/>"
          + "<cols><col min=\"1\" max=\"16384\" hidden=\"1\"/></cols><sheetData>"));
      for (int row = 1; row <= 1000; row++) {
        StringBuilder cells = new StringBuilder("<row r=\"" + row * 1000 + "\">");
        for (int column = 0; column < 1000; column++) {
          cells.append("<c r=\"" + new Ref(row * 1000 - 1, column) + "\" s=\"1\"/>");
        }
        out.write(utf8(cells.append("</row>").toString()));
      }
      out.write(utf8("</sheetData></worksheet>"));
    });
  }

  Path manyCells() throws IOException {
    Random random = new Random(5);
    StringBuilder rows = new StringBuilder();
    for (int row = 0; row < 100; row++) {
      rows.append("<row>");
      for (int column = 0; column < 1000; column++) {
        rows.append("<c><v>").append(random.nextInt(1000)).append("</v></c>");
      }
      rows.append("</row>");
    }
    return repeated("many.xlsx", rows.toString(), 120);
  }

  Path manyTexts() throws IOException {
    Random random = new Random(5);
    StringBuilder rows = new StringBuilder();
    for (int row = 0; row < 9000; row++) {
      String text = Long.toString(random.nextLong(), 36).repeat(10);
      rows.append("<row><c t=\"str\"><v>").append(text).append("</v></c></row>");
    }
    return repeated("texts.xlsx", rows.toString(), 100);
  }

  private Path repeated(String name, String rows, int times) throws IOException {
    byte[] some = utf8(rows);
    return sheet(name, out -> {
      out.write(utf8(HEAD + "<sheetData>"));
      for (int i = 0; i < times; i++) {
        out.write(some);
      }
      out.write(utf8("</sheetData></worksheet>"));
    });
  }

  Path longAttribute() throws IOException {
    Random random = new Random(9);
    byte[] noise = new byte[1 << 20];
    for (int i = 0; i < noise.length; i++) {
      noise[i] = (byte) ('a' + random.nextInt(20));
    }
    return sheet("attribute.xlsx", out -> {
      out.write(utf8(HEAD + "<sheetData x=\""));
      for (int i = 0; i < 150; i++) {
        out.write(noise);
      }
      out.write(utf8("\"/></worksheet>"));
    });
  }

  Path sharedCycle() throws IOException {
    String rows = "<row r=\"1\"><c r=\"A1\"><f t=\"shared\" si=\"0\"/><v>1</v></c>"
        + "<c r=\"B1\"><f t=\"shared\" si=\"1\" ref=\"B1:B2\">A1+B2</f><v>1</v></c>"
        + "<c r=\"C1\"><f t=\"shared\" si=\"2\" ref=\"C1:C1048576\">C1+C2</f><v>1</v></c></row>"
        + "<row r=\"2\"><c r=\"B2\"><f t=\"shared\" si=\"1\"/></c><c r=\"C2\"><f t=\"shared\" si=\"2\"/></c></row>";
    return put("cycle.xlsx", ZipParts.zip(ZipParts.smallest(ZipParts.sheet(rows, ""))));
  }

  Path manyBlocks() throws IOException {
    return sheet("blocks.xlsx", out -> {
      out.write(utf8(HEAD + "<sheetData>"));
      for (int row = 1; row <= 100_000; row++) {
        out.write(utf8("<row><c><f t=\"array\" ref=\"A" + row
            + ":XFD1048576\">B1</f></c><c><v>1</v></c></row>"));
      }
      out.write(utf8("</sheetData></worksheet>"));
    });
  }

  Path cut(int of) throws IOException {
    byte[] whole = Rich.workbook();
    return put("cut-" + of + ".xlsx", Arrays.copyOf(whole, whole.length * of / 10));
  }

  Path cutPart() throws IOException {
    return sheet(
        "cut-part.xlsx",
        out -> out.write(
            utf8(
                HEAD
                    + "<sheetData><row r=\"1\"><c r=\"A1\"><v>1</v></c></row><row r=\"2\"><c r=\"A2\"><v>2</")));
  }

  Path twice() throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>(ZipParts.smallest(ZipParts.sheet("", "")));
    parts.put("xl/worksheets/sheetX.xml", parts.get("xl/worksheets/sheet1.xml"));
    byte[] zip = ZipParts.zip(parts);
    String raw = new String(zip, StandardCharsets.ISO_8859_1).replace("sheetX.xml", "sheet1.xml");
    return put("twice.xlsx", raw.getBytes(StandardCharsets.ISO_8859_1));
  }

  /** Every part says that it is packed by another method than it is: number 93 stands for Zstandard. */
  Path packedOtherwise() throws IOException {
    byte[] zip = ZipParts.zip(ZipParts.smallest(ZipParts.sheet("", "")));
    for (int i = 0; i + 12 < zip.length; i++) {
      boolean listed = zip[i] == 'P' && zip[i + 1] == 'K' && zip[i + 2] == 1 && zip[i + 3] == 2;
      if (listed) {
        zip[i + 10] = 93;
      }
    }
    return put("zstd.xlsx", zip);
  }

  Path wrongTypes() throws IOException {
    Map<String, byte[]> parts = ZipParts.smallest(ZipParts.sheet("", ""));
    String types = new String(parts.get("[Content_Types].xml"), StandardCharsets.UTF_8);
    parts.put(
        "[Content_Types].xml",
        utf8(types
            .replace("spreadsheetml.sheet.main", "nothing.known")
            .replace("vnd.openxmlformats-officedocument.nothing.known", "octet-stream")));
    return put("types.xlsx", ZipParts.zip(parts));
  }

  Path noTypes() throws IOException {
    Map<String, byte[]> parts = ZipParts.smallest(ZipParts.sheet("", ""));
    parts.remove("[Content_Types].xml");
    return put("no-types.xlsx", ZipParts.zip(parts));
  }

  Path strangeCells() throws IOException {
    String rows = "<row r=\"9999999\"><c r=\"ZZZZ1\"><v>1</v></c></row>"
        + "<row r=\"2\"><c r=\"A2\"><v>1e999</v></c><c r=\"B2\"><v>NaN</v></c><c r=\"C2\" t=\"s\"><v>99</v></c>"
        + "<c r=\"D2\" s=\"-5\"><v>3</v></c><c r=\"E2\" t=\"b\"><v>maybe</v></c><c t=\"d\"><v>2026-01-01</v></c></row>";
    return put("strange.xlsx", ZipParts.zip(ZipParts.smallest(ZipParts.sheet(rows, ""))));
  }

  Path oldExcel() throws IOException {
    Path file = folder.resolve("old.xls");
    try (HSSFWorkbook workbook = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      workbook.createSheet("Roof");
      workbook.write(out);
    }
    return file;
  }

  Path locked() throws IOException {
    Path file = folder.resolve("secret.xlsx");
    try (POIFSFileSystem container = new POIFSFileSystem()) {
      EncryptionInfo info = new EncryptionInfo(EncryptionMode.agile);
      info.getEncryptor().confirmPassword("secret");
      try (OutputStream out = info.getEncryptor().getDataStream(container)) {
        out.write(Rich.workbook());
      } catch (java.security.GeneralSecurityException impossible) {
        throw new IOException(impossible);
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        container.writeFilesystem(out);
      }
    }
    return file;
  }

  Path openDocument() throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    parts.put("mimetype", utf8("application/vnd.oasis.opendocument.spreadsheet"));
    parts.put("content.xml", utf8("<x/>"));
    return put("roof.ods", ZipParts.zip(parts));
  }

  Path binary() throws IOException {
    Map<String, byte[]> parts = ZipParts.smallest(ZipParts.sheet("", ""));
    parts.put("xl/workbook.bin", new byte[] {1});
    return put("roof.xlsb", ZipParts.zip(parts));
  }

  Path text() throws IOException {
    return put("roof.csv", utf8("plane,eave\nA,24\n"));
  }

  Path nothing() throws IOException {
    return put("nothing.xlsx", new byte[0]);
  }

  Path noise() throws IOException {
    byte[] noise = new byte[5000];
    new Random(3).nextBytes(noise);
    return put("noise.xlsx", noise);
  }

  Path page() throws IOException {
    return put("page.xlsx", utf8("<html><table><tr><td>1</td></tr></table></html>"));
  }

  Path otherZip() throws IOException {
    return put("other.xlsx", ZipParts.zip(Map.of("a.txt", utf8("a"))));
  }
}
