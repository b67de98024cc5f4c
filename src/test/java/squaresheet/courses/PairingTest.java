package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import squaresheet.geometry.Fraction;

class PairingTest {

  private static final long PIECE = 30;

  @Property(tries = 400)
  void no_other_choice_gives_more_pairs(
      @ForAll @Size(max = 6) List<@IntRange(min = 1, max = 29) Integer> lefts,
      @ForAll @Size(max = 6) List<@IntRange(min = 1, max = 29) Integer> rights) {
    assertThat(Pairing.most(fractions(lefts), fractions(rights), PIECE))
        .isEqualTo(everyChoice(lefts, rights, 0, 0));
  }

  /** By brute force: the first left piece goes unpaired, or with any right piece that is free and fits. */
  private static long everyChoice(List<Integer> lefts, List<Integer> rights, int left, int taken) {
    if (left == lefts.size()) {
      return 0;
    }
    long most = everyChoice(lefts, rights, left + 1, taken);
    for (int right = 0; right < rights.size(); right++) {
      boolean free = (taken & 1 << right) == 0;
      if (free && lefts.get(left) + rights.get(right) <= PIECE) {
        most = Math.max(most, 1 + everyChoice(lefts, rights, left + 1, taken | 1 << right));
      }
    }
    return most;
  }

  private static List<Fraction> fractions(List<Integer> widths) {
    return widths.stream().map(Fraction::of).toList();
  }
}
