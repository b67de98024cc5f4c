package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.units.Length;

class StarterJointsTest {

  private static final Length EAVE = Length.parse("50'");

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # starter | cut | shingle | clash at | distance | source
        36"     | 7"  | 36"     | none     | 7"       | common practice, no source: equal lengths begun at 7 in stay 7 in apart
        36"     | 6"  | 36"     | 6"       | 6"       | equal lengths begun at 6 in are 6 in apart all along
        40"     | 10" | 36"     | 17' 6"   | 6"       | by hand: at 10 50 90 130 170 the distances are 10 14 18 14 10, at 210 6
        36"     | 10" | 40"     | 3' 10"   | 6"       | by hand: at 10 the distance is 10, at 46 it is 6
        39"     | 20" | 40"     | 47' 2"   | 6"       | by hand: 20 less 1 a piece is 6 after 14 pieces, at 20 + 14 * 39
      """)
  void the_first_clash_is_where_the_drift_brings_it(
      Length starter, Length cut, Length shingle, String at, Length distance, String source) {
    StarterJoints joints = joints(starter, cut, shingle);
    assertThat(joints.firstClash().map(joint -> joint.at().toString()).orElse("none"))
        .as(source)
        .isEqualTo(at);
    assertThat(joints.firstClash().map(StarterJoints.Joint::distance).orElse(joints.least()))
        .as(source)
        .isEqualTo(distance);
  }

  @Test
  void a_clash_past_the_end_of_the_eave_is_none() {
    StarterJoints joints = new StarterJoints(
        Length.parse("39\""),
        Length.parse("20\""),
        Length.parse("40\""),
        Length.parse("40\""),
        Length.parse("47' 2\""),
        StarterJoints.USUAL);
    assertThat(joints.firstClash())
        .as("by hand: the first clash would stand at 47' 2\"")
        .isEmpty();
  }

  @Test
  void the_best_first_cut_of_equal_lengths_is_half_a_shingle_off() {
    StarterJoints best = joints(Length.parse("36\""), Length.parse("36\""), Length.parse("36\""))
        .withBestCut(Length.parse("1/16\""), Length.parse("3\""));
    assertThat(best.starterCut())
        .as("by hand: half of 36 is furthest from both joints")
        .hasToString("1' 6\"");
    assertThat(best.clashes()).isEmpty();
  }

  @Test
  void a_starter_joint_keeps_nails_away_from_it_in_the_shingle_above() {
    StarterJoints joints = joints(Length.parse("36\""), Length.parse("7\""), Length.parse("36\""));
    assertThat(joints.keepAway(Length.parse("2\"")))
        .as("by hand: joints at 7, 43, 79; shingles begin at 0, 36, 72")
        .startsWith(
            new StarterJoints.KeepAway(
                Length.parse("5\""), Length.parse("9\""), 1, Length.parse("7\"")),
            new StarterJoints.KeepAway(
                Length.parse("41\""), Length.parse("45\""), 2, Length.parse("7\"")));
  }

  @Test
  void a_hundredth_of_a_millimetre_a_piece_is_seen_where_it_ends() {
    Length metre = Length.parse("1000 mm");
    Length almost = Length.parse("999.9 mm");
    StarterJoints joints = new StarterJoints(
        almost,
        Length.parse("200 mm"),
        metre,
        metre,
        Length.parse("300000 mm"),
        Length.parse("190 mm"));
    assertThat(joints.firstClash().orElseThrow().number())
        .as("by hand: 200 - 0.1 n first falls under 190 at n = 101, the 102nd joint")
        .isEqualTo(102);
  }

  @Property(tries = 300)
  void distances_agree_with_modular_arithmetic(
      @ForAll @LongRange(min = 1, max = 400) long starter,
      @ForAll @LongRange(min = 1, max = 400) long shingle,
      @ForAll @LongRange(min = 1, max = 400) long cut,
      @ForAll @LongRange(min = 1, max = 400) long first) {
    StarterJoints joints = new StarterJoints(
        new Length(starter),
        new Length(1 + cut % starter),
        new Length(shingle),
        new Length(1 + first % shingle),
        new Length(5_000),
        new Length(shingle / 5));
    for (StarterJoints.Joint joint : joints.joints()) {
      long expected = nearest(joint.at().units(), 1 + first % shingle, shingle);
      assertThat(joint.distance().units()).isEqualTo(expected);
    }
  }

  /** By walking: the nearest member of a row of joints, without any remainder. */
  private static long nearest(long at, long first, long step) {
    long nearest = Long.MAX_VALUE;
    for (long joint = first - step; joint <= at + step; joint += step) {
      nearest = Math.min(nearest, Math.abs(at - joint));
    }
    return nearest;
  }

  @Property(tries = 60)
  void no_other_cut_on_the_tape_puts_the_first_clash_off_longer(
      @ForAll @LongRange(min = 20, max = 120) long starter,
      @ForAll @LongRange(min = 20, max = 120) long shingle,
      @ForAll @LongRange(min = 1, max = 20) long cut) {
    StarterJoints joints = new StarterJoints(
        new Length(starter),
        new Length(cut),
        new Length(shingle),
        new Length(shingle),
        new Length(3_000),
        new Length(shingle / 5));
    StarterJoints best = joints.withBestCut(new Length(1), new Length(1));
    for (long other = 1; other <= starter; other++) {
      List<StarterJoints.Joint> clashes =
          joints.withStarterCut(new Length(other)).clashes();
      Length until = clashes.isEmpty() ? joints.eave() : clashes.get(0).at();
      assertThat(until).isLessThanOrEqualTo(best.clearUntil());
    }
  }

  @Property(tries = 200)
  void pieces_cut_as_told_keep_every_joint_clear_and_one_cut_fewer_does_not(
      @ForAll @LongRange(min = 30, max = 90) long starter,
      @ForAll @LongRange(min = 30, max = 90) long shingle,
      @ForAll @LongRange(min = 1, max = 90) long first,
      @ForAll @LongRange(min = 50, max = 900) long eave) {
    long least = shingle / 5;
    long joint = 1 + first % shingle;
    StarterJoints joints = new StarterJoints(
        new Length(starter),
        new Length(starter),
        new Length(shingle),
        new Length(joint),
        new Length(eave),
        new Length(least));
    List<StarterJoints.Cut> cuts = joints.cuts(new Length(1), new Length(1)).orElse(List.of());
    long reached = reach(starter, shingle, joint, least, eave, Math.max(0, cuts.size() - 1));
    assertThat(cuts.isEmpty() || reached < eave)
        .as("by trying every place and length of one cut fewer")
        .isTrue();
    assertThat(cuts.isEmpty() || isClear(walked(cuts, starter, eave), joint, shingle, least))
        .isTrue();
  }

  /** The joints of pieces laid one after the other, cut where told. */
  private static List<Long> walked(List<StarterJoints.Cut> cuts, long starter, long eave) {
    List<Long> walked = new ArrayList<>();
    for (long at = 0; at < eave; ) {
      long from = at;
      at += cuts.stream()
          .filter(cut -> cut.from().units() == from)
          .mapToLong(cut -> cut.piece().units())
          .findFirst()
          .orElse(starter);
      walked.add(at);
    }
    walked.remove(walked.size() - 1);
    return walked;
  }

  private static boolean isClear(List<Long> at, long first, long shingle, long least) {
    return at.stream().allMatch(each -> nearest(each, first, shingle) >= least);
  }

  /** How far so many cuts can bring a starter without a clash, by trying them all; the eave where to its end. */
  private static long reach(
      long starter, long shingle, long first, long least, long eave, int cuts) {
    TreeSet<Long> begins = new TreeSet<>(Set.of(0L));
    long furthest = 0;
    for (int used = 0; used < cuts; used++) {
      TreeSet<Long> next = new TreeSet<>();
      for (long begin : begins) {
        for (long cut = 1; cut <= starter; cut++) {
          long at = begin + cut;
          for (; at < eave && nearest(at, first, shingle) >= least; at += starter) {
            next.add(at);
          }
          furthest = Math.max(furthest, Math.min(at, eave));
        }
      }
      begins = next;
    }
    return furthest;
  }

  private static StarterJoints joints(Length starter, Length cut, Length shingle) {
    return new StarterJoints(starter, cut, shingle, shingle, EAVE, StarterJoints.USUAL);
  }
}
