package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

class StaggerTest {

  private static final Length STRIP = Length.parse("36\"");

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # cuts         | offsets | next but one | violations | source
        36 30 24 18  | 6 6 6 18| 12 12 12 12  |            | by hand: stair of 6, from 18 back to 36 is 18
        36 31        | 5 5     | 0 0          | 0 1        | by hand: 5 in is under 6
        36 2         | 2 2     | 0 0          | 0 1        | by hand: 34 in one way is 2 in the other
        36 18 6      | 18 12 6 | 6 18 12      |            | by hand: 6 to 36 is 30 one way, 6 the other; 6 in is allowed
        36           | 0       | 0            | 0          | every joint over a joint
      """)
  void offsets_are_measured_the_short_way_round(
      String cuts, String offsets, String nextButOne, String violations, String source) {
    Stagger stagger = new Stagger(STRIP, inches(cuts), Length.ofInches(6));
    for (int course = 0; course < stagger.repeat(); course++) {
      assertThat(stagger.offset(course)).as(source).isEqualTo(inches(offsets).get(course));
      assertThat(stagger.offsetNextButOne(course))
          .as(source)
          .isEqualTo(inches(nextButOne).get(course));
    }
    List<Integer> expected = violations == null
        ? List.of()
        : Stream.of(violations.split(" ")).map(Integer::valueOf).toList();
    assertThat(stagger.violations()).as(source).isEqualTo(expected);
  }

  @Test
  void the_cut_list_tells_each_course_what_to_start_with() {
    Stagger stagger = Stagger.stair(
        Length.parse("39 3/8\""), Length.parse("6 1/2\""), Length.parse("8\""), Stagger.USUAL);
    assertThat(stagger.cutList(Graduation.SIXTEENTH))
        .as("by hand: 39 3/8 less 6 1/2 each time, down to 13 3/8")
        .containsExactly(
            "course 1: start with a whole shingle",
            "course 2: start with 32 7/8\"",
            "course 3: start with 26 3/8\"",
            "course 4: start with 19 7/8\"",
            "course 5: start with 13 3/8\"");
  }

  @Test
  void a_first_piece_longer_than_a_shingle_is_refused() {
    assertThatThrownBy(() -> new Stagger(STRIP, inches("37"), Stagger.USUAL))
        .hasMessage(
            "a first piece must be more than 0 and at most a whole shingle of 3', but is 3' 1\"");
  }

  private static List<Length> inches(String text) {
    return Stream.of(text.split(" ")).map(number -> Length.parse(number + "\"")).toList();
  }
}
