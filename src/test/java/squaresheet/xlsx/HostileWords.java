package squaresheet.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.xml.sax.SAXException;

/** Words that files break on, and a strict look at the files they went into. */
public final class HostileWords {

  private HostileWords() {}

  /** Names of everything that XML, csv and terminals stumble over, among ordinary letters. */
  public static Arbitrary<String> any() {
    List<String> pieces = List.of(
        "\u0000",
        "\u0001",
        "\u0007",
        "\u0008",
        "\t",
        "\n",
        "\u000b",
        "\f",
        "\r",
        "\u001b",
        "\u001b[2J",
        "\u001f",
        "\u007f",
        "\u0085",
        "\u009b",
        "\ufffe",
        "\uffff",
        "\ud800",
        "\udbff",
        "\udc00",
        "\udfff",
        "\ud83c\udfe0",
        "_x000B_",
        "_x005F_",
        "_x",
        "<",
        ">",
        "&",
        "&#11;",
        "]]>",
        "\"",
        "'",
        "<!--",
        "=1+1",
        ";",
        ",",
        " ",
        "A",
        "Back",
        "Süd",
        "\u200f",
        "\u2028");
    return Arbitraries.of(pieces)
        .list()
        .ofMinSize(1)
        .ofMaxSize(6)
        .map(words -> String.join("", words));
  }

  /** Reads every part that is XML with the strict parser of the Java library; which refuses with an error. */
  public static void parse(Path workbook) {
    ZipParts.of(workbook).forEach((name, part) -> {
      if (name.matches(".*\\.(xml|rels|vml)")) {
        parse(name, part);
      }
    });
  }

  /** Reads one file of XML with that parser. */
  public static void parse(String name, byte[] xml) {
    try {
      var reader = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      reader.setErrorHandler(null);
      reader.parse(new ByteArrayInputStream(xml));
    } catch (IOException | SAXException | ParserConfigurationException refused) {
      throw new AssertionError(name + " is not XML: " + refused.getMessage(), refused);
    }
  }
}
