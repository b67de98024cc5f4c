package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.sheet.Ref;

class PrinterTest {

  @Provide
  Arbitrary<Node> trees() {
    return Generated.trees(4);
  }

  @Property(tries = 1500)
  void a_printed_tree_reads_back_as_the_same_tree(@ForAll("trees") Node tree) {
    Formula formula = Formula.of(tree);
    assertThat(Formula.of(formula.toString())).isEqualTo(formula);
    assertThat(Formula.of(formula.toFile())).isEqualTo(formula);
  }

  @ParameterizedTest
  @ValueSource(strings = {"['\nINDEX(]", "Lines[[ Length]]", "Lines[[#This Row],[ Length]]", "[@]"})
  void a_column_name_keeps_the_spaces_before_it(String text) {
    Formula formula = Formula.of(text);
    assertThat(Formula.of(formula.toString())).isEqualTo(formula);
  }

  @Property(tries = 300)
  void filling_there_and_back_changes_nothing_and_keeps_the_relative_form(
      @ForAll("trees") Node tree) {
    Formula formula = Formula.of(tree);
    Ref here = Ref.parse("F50");
    Ref there = Ref.parse("K77");
    Formula moved = formula.filled(here, there);
    assertThat(moved.filled(there, here)).isEqualTo(formula);
    assertThat(moved.relative(there)).isEqualTo(formula.relative(here));
  }
}
