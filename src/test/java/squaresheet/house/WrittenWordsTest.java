package squaresheet.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Words get out of the program in few places, and each of those takes them through the one place that makes them fit for a
 * file. A new way out is a new line here.
 */
class WrittenWordsTest {

  private static final JavaClasses CLASSES = new ClassFileImporter()
      .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
      .importPackages("squaresheet");

  /** What puts words into files and on screens, and who alone may call it. */
  private static final Map<String, Set<String>> WAYS_OUT = Map.of(
      "javax\\.xml\\.stream\\.XMLStreamWriter\\.write(Characters|Attribute|Comment|CData).*",
      Set.of("xlsx.Markup"),
      "java\\.awt\\.Graphics(2D)?\\.draw(String|Chars|GlyphVector).*|java\\.awt\\.font\\.TextLayout.*",
      Set.of("paper.Pen"),
      "de\\.siegmar\\.fastcsv\\.writer\\..*",
      Set.of("sheet.CsvText"),
      "java\\.io\\.Print(Writer|Stream)\\.(print|write|append|format).*",
      Set.of("cli.Console"),
      "org\\.apache\\.poi\\.xssf\\.usermodel\\.XSSFWorkbook\\.write.*",
      Set.of("xlsx.DraftWriter"),
      "org\\.apache\\.poi\\..*\\.(setCellValue|setString|setAuthor|setTooltip|createErrorBox|createPromptBox"
          + "|setCenter|setLeft|setDescr|setStringValue).*|org\\.openxmlformats\\..*\\.(setDescr|setStringValue).*",
      Set.of("xlsx.DraftSheetWriter"),
      "org\\.apache\\.poi\\..*\\.(setTitle|addProperty|setRefersToFormula).*",
      Set.of("xlsx.DraftWriter"));

  /** What writes text that its callers have made fit, or that is made of our own words alone, and who may call it. */
  private static final Map<String, Set<String>> BEHIND = Map.of(
      "java\\.nio\\.file\\.Files\\.(write|newBufferedWriter|newOutputStream).*",
      Set.of(),
      "java\\.io\\.(FileWriter|FileOutputStream|RandomAccessFile)\\..*",
      Set.of(),
      "javax\\.xml\\.transform\\..*|org\\.w3c\\.dom\\..*\\.(setAttribute|setTextContent|createTextNode).*",
      Set.of("paper.Scalable"),
      "java\\.util\\.zip\\.ZipOutputStream\\..*",
      Set.of("xlsx.SteadyZip"),
      "org\\.apache\\.commons\\.compress\\..*ZipArchiveOutputStream\\..*",
      Set.of("xlsx.Bundle"));

  private static final Set<String> FIT = Set.of("legible", "spelled");

  private static Map<String, Set<String>> callers(String way) {
    Pattern pattern = Pattern.compile(way);
    Map<String, Set<String>> callers = new TreeMap<>();
    for (JavaClass type : CLASSES) {
      for (JavaAccess<?> access : type.getAccessesFromSelf()) {
        String target =
            access.getTargetOwner().getName() + "." + access.getTarget().getName();
        if (pattern.matcher(target).matches()) {
          callers.computeIfAbsent(name(type), first -> new TreeSet<>()).add(target);
        }
      }
    }
    return callers;
  }

  /** Room and outermost class. */
  private static String name(JavaClass type) {
    return type.getName().substring("squaresheet.".length()).replaceAll("\\$.*", "");
  }

  private static boolean makesFit(String name) {
    return CLASSES.stream()
        .filter(type -> name(type).equals(name))
        .flatMap(type -> type.getAccessesFromSelf().stream())
        .anyMatch(access -> FIT.contains(access.getTarget().getName())
            && List.of("squaresheet.sheet.Content", "squaresheet.sheet.FileText")
                .contains(access.getTargetOwner().getName()));
  }

  @Test
  void words_get_out_in_known_places_only() {
    WAYS_OUT.forEach((way, known) -> assertThat(callers(way).keySet()).as(way).isEqualTo(known));
    BEHIND.forEach((way, known) -> assertThat(callers(way).keySet()).as(way).isEqualTo(known));
  }

  @Test
  void each_of_them_makes_words_fit_for_a_file_in_the_one_place() {
    assertThat(WAYS_OUT.values().stream().flatMap(Set::stream))
        .allSatisfy(name -> assertThat(makesFit(name)).as(name).isTrue());
    assertThat(makesFit("paper.Drawing")).as("titles of drawings").isTrue();
    assertThat(makesFit("xlsx.Tag")).as("attributes that are changed in place").isTrue();
    assertThat(makesFit("xlsx.SetList")).as("the list of a set of files").isTrue();
  }
}
