package squaresheet.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import squaresheet.finding.OwnWords;

/** Whatever a library or a system says of a fault, the user reads a sentence of our own. */
class OwnWordsTest {

  private static final JavaClasses CLASSES = new ClassFileImporter()
      .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
      .importPackages("squaresheet");

  /** Where what an exception says is looked at: to tell whose it is, or to choose a sentence by it. */
  private static final Set<String> LOOKING = Set.of(
      "squaresheet.finding.OwnWords", "squaresheet.xlsx.Unreadable", "squaresheet.xlsx.Unwritable");

  private static final Pattern CAUGHT = Pattern.compile("catch \\([\\w\\s.|]+ (\\w+)\\)");

  @Test
  void what_an_exception_of_others_says_is_read_in_known_places_only() {
    List<String> reading = new ArrayList<>();
    for (JavaClass type : CLASSES) {
      for (JavaMethodCall call : type.getMethodCallsFromSelf()) {
        boolean message = call.getTarget().getName().matches("get(Localized)?Message|getReason");
        boolean others = !call.getTargetOwner().getName().startsWith("squaresheet.");
        if (message
            && others
            && call.getTargetOwner().isAssignableTo(Throwable.class)
            && !LOOKING.contains(type.getName())
            && !type.isAssignableTo(Throwable.class)) {
          reading.add(call.getDescription());
        }
      }
    }
    assertThat(reading).isEmpty();
  }

  @Test
  void no_exception_is_written_into_a_sentence() throws IOException {
    List<String> written = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(it -> it.toString().endsWith(".java")).toList()) {
        String text = Files.readString(file);
        Matcher caught = CAUGHT.matcher(text);
        while (caught.find()) {
          String name = caught.group(1);
          String sentence =
              "\\+\\s*" + name + "\\b(?!\\s*[.(])|\\b(valueOf|toString)\\(" + name + "\\)";
          if (Pattern.compile(sentence).matcher(text).find()) {
            written.add(file + ": " + name);
          }
        }
      }
    }
    assertThat(written).isEmpty();
  }

  @Test
  void only_a_refusal_of_our_own_is_passed_on() {
    String other = "it must be one that can be read, but cannot";
    assertThat(OwnWords.of(new IllegalArgumentException("eave must be positive")))
        .isEqualTo("eave must be positive");
    assertThat(OwnWords.of(new NumberFormatException("For input string: \"x\"")))
        .isEqualTo(other);
    try {
      java.nio.charset.Charset.forName("no such set");
    } catch (IllegalArgumentException refused) {
      assertThat(OwnWords.of(refused)).isEqualTo(other);
    }
    try {
      List.of(1).subList(1, 0);
    } catch (IllegalArgumentException refused) {
      assertThat(OwnWords.of(refused)).isEqualTo(other);
    }
  }
}
