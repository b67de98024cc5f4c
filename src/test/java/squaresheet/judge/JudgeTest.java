package squaresheet.judge;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.judge.made.Calculator;
import squaresheet.judge.made.Layouts;
import squaresheet.judge.made.MadeBook;
import squaresheet.judge.own.OwnBooks;
import squaresheet.judge.slip.Faults;
import squaresheet.judge.slip.Spoilt;

/** Holds the judge itself: it shares nothing with what it judges, its workbooks are in order, and its faults do what they say. */
class JudgeTest {

  /** Rooms that makers of workbooks and faults may use; they use another library all the same. */
  private static final Set<String> FREE = Set.of("squaresheet.sheet", "squaresheet.xlsx");

  @Test
  void makers_share_nothing_with_the_product() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideInAnyPackage("squaresheet.judge.made..", "squaresheet.judge.slip..")
        .should()
        .dependOnClassesThat(new DescribedPredicate<JavaClass>("are of the product") {
          @Override
          public boolean test(JavaClass type) {
            return type.getPackageName().startsWith("squaresheet.")
                && !type.getPackageName().startsWith("squaresheet.judge.")
                && !FREE.contains(type.getPackageName());
          }
        })
        .check(new ClassFileImporter().importPackages("squaresheet.judge"));
  }

  @Test
  void every_id_of_the_list_of_slips_is_put_in_or_excused() throws Exception {
    List<String> ids = Files.readAllLines(Path.of("src/test/cases/judge/slips.txt"));
    Set<String> missing = new TreeSet<>(ids);
    missing.removeAll(Faults.ids());
    assertThat(missing).isEqualTo(Faults.excused().keySet());
    assertThat(ids).hasSizeGreaterThan(150);
  }

  @Test
  void every_kind_of_fault_finds_its_place_in_some_workbook(@TempDir Path folder) throws Exception {
    Set<Integer> left = IntStream.range(0, Faults.kinds()).boxed().collect(Collectors.toSet());
    for (int seed = 1; seed <= 3 && !left.isEmpty(); seed++) {
      put(OwnBooks.book(seed, folder), left);
      for (boolean unseen : new boolean[] {false, true}) {
        for (String layout : Layouts.names(unseen)) {
          put(Layouts.book(layout, seed), left);
        }
      }
    }
    assertThat(left.stream().map(Faults.ids()::get)).isEmpty();
  }

  private static void put(MadeBook made, Set<Integer> left) {
    left.removeIf(kind -> Faults.one(made, kind, 1).isPresent());
  }

  @Test
  void no_layout_belongs_to_both_halves() {
    Set<String> both = new HashSet<>(Layouts.names(false));
    both.retainAll(Layouts.names(true));
    assertThat(both).isEmpty();
    assertThat(Layouts.names(false)).hasSizeGreaterThanOrEqualTo(12);
    assertThat(Layouts.names(true)).hasSizeGreaterThanOrEqualTo(12);
  }

  @Test
  void every_layout_gives_a_price_orders_and_no_error() throws Exception {
    for (boolean unseen : new boolean[] {false, true}) {
      for (String layout : Layouts.names(unseen)) {
        MadeBook made = Layouts.book(layout, 7);
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(made.file()))) {
          String sheets = text(book);
          assertThat(made.total()).as(layout).isPresent();
          assertThat(made.orders()).as(layout).hasSizeGreaterThanOrEqualTo(7);
          assertThat(sheets)
              .as(layout)
              .doesNotContain("#REF!", "#VALUE!", "#NAME?", "#N/A", "#DIV/0!");
        }
      }
    }
  }

  private static String text(XSSFWorkbook book) {
    StringBuilder text = new StringBuilder();
    book.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> {
      boolean error = cell.getCellType() == org.apache.poi.ss.usermodel.CellType.FORMULA
          && cell.getCachedFormulaResultType() == org.apache.poi.ss.usermodel.CellType.ERROR;
      text.append(
              error
                  ? org.apache.poi.ss.usermodel.FormulaError.forInt(cell.getErrorCellValue())
                      .getString()
                  : "")
          .append('\n');
    })));
    return text.toString();
  }

  @Test
  void a_fault_changes_the_workbook_and_tells_what_stood_there() throws IOException {
    MadeBook made = Layouts.book("one flat sheet", 3);
    Map<String, String> before = parts(worked(Faults.several(made, List.of(), 3).orElseThrow()));
    int put = 0;
    Set<String> idle = new TreeSet<>();
    for (int kind = 0; kind < Faults.kinds(); kind++) {
      for (Faults.Pending pending : Faults.one(made, kind, 3).stream().toList()) {
        Spoilt spoilt = worked(pending);
        assertThat(spoilt.slips().get(0).cells()).isNotEmpty().doesNotContainNull();
        assertThat(spoilt.slips().get(0).right()).isNotEmpty();
        if (parts(spoilt).equals(before)) {
          idle.add(spoilt.slips().get(0).id());
        }
        put++;
      }
    }
    assertThat(put).isGreaterThan(30);
    assertThat(idle).isEmpty();
  }

  private static Spoilt worked(Faults.Pending pending) {
    return pending.calculated(
        Calculator.LIBRARY.calculated(List.of(pending.file())).get(0));
  }

  /** What a file holds, but for when it was saved. */
  private static Map<String, String> parts(Spoilt spoilt) throws IOException {
    Map<String, String> parts = new TreeMap<>();
    try (ZipInputStream file = new ZipInputStream(new ByteArrayInputStream(spoilt.file()))) {
      for (ZipEntry part = file.getNextEntry(); part != null; part = file.getNextEntry()) {
        if (!part.getName().startsWith("docProps/")) {
          parts.put(part.getName(), new String(file.readAllBytes(), StandardCharsets.UTF_8));
        }
      }
    }
    return parts;
  }
}
