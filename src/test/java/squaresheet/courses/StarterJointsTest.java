package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
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

  /**
   * Plans that are missed by going as far as each piece leads: the longest clear stretch ends where no cut piece goes on, and a
   * joint before it, or a shorter stretch, is where to cut. The number of pieces is by trying every cut at every joint.
   */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # starter | shingle | first  | eave    | minimum | mark | shortest | pieces | what kind
        120904  | 327660  | 327660 | 2231644 | 56896   | 2032 | 56896    | 7      | starter under half a shingle: one cut after the other
        24      | 52      | 5      | 56      | 15      | 1    | 21       | 2      | starter under half a shingle, one cut piece too many to be found
        26      | 47      | 45     | 54      | 10      | 1    | 14       | 2      | starter shorter than the shingle
        24      | 16      | 16     | 53      | 6       | 1    | 19       | 2      | starter longer than the shingle
        51      | 43      | 33     | 229     | 17      | 4    | 42       | 4      | starter longer, cut on coarse marks
        6       | 20      | 7      | 273     | 2       | 4    | 2        | 27     | a cut piece about every other one
      """)
  void a_plan_is_found_where_there_is_one(
      long starter,
      long shingle,
      long first,
      long eave,
      long minimum,
      long mark,
      long shortest,
      int pieces,
      String kind) {
    StarterJoints joints = joints(starter, shingle, first, eave, minimum);
    Optional<List<StarterJoints.Cut>> cuts = joints.cuts(new Length(mark), new Length(shortest));
    assertThat(cuts.map(List::size)).as(kind).contains(pieces);
    assertThat(isClear(walked(cuts.orElseThrow(), starter, eave), first, shingle, minimum))
        .isTrue();
  }

  private static StarterJoints joints(
      long starter, long shingle, long first, long eave, long minimum) {
    return new StarterJoints(
        new Length(starter),
        new Length(starter),
        new Length(shingle),
        new Length(first),
        new Length(eave),
        new Length(minimum));
  }

  /** Starters from a tenth of a shingle to twice as long; more cases with {@code -Dstarter.tries=200000}. */
  @Test
  void plans_are_those_of_trying_every_cut_at_every_joint() {
    Random random = new Random(20260504);
    for (int at = 0; at < Integer.getInteger("starter.tries", 20_000); at++) {
      long shingle = 8L + random.nextInt(60);
      long starter = Math.max(2, shingle * (1 + random.nextInt(20)) / 10);
      long first = 1L + random.nextInt((int) shingle);
      long eave = 5L + random.nextInt(400);
      long minimum = random.nextInt((int) shingle / 2 + 2);
      long mark = 1L + random.nextInt(5);
      long shortest = 1L + random.nextInt((int) starter + 2);
      String as = starter + " under " + shingle + " begun at " + first + " along " + eave
          + ", at least " + minimum + ", marks of " + mark + ", none under " + shortest;
      Optional<List<StarterJoints.Cut>> cuts = joints(starter, shingle, first, eave, minimum)
          .cuts(new Length(mark), new Length(shortest));
      assertThat(cuts.map(List::size).orElse(0))
          .as(as)
          .isEqualTo(fewest(starter, shingle, first, eave, minimum, mark, shortest));
      cuts.ifPresent(plan -> {
        assertThat(isClear(walked(plan, starter, eave), first, shingle, minimum))
            .as(as)
            .isTrue();
        assertThat(plan)
            .as(as)
            .allMatch(cut -> cut.piece().units() == starter
                || (cut.piece().units() % mark == 0
                    && cut.piece().units() >= shortest
                    && cut.piece().units() < starter));
      });
    }
  }

  /** The pieces to tell, from the end of the eave back to its start; the first one always is told. 0 where there is no plan. */
  private static int fewest(
      long starter, long shingle, long first, long eave, long minimum, long mark, long shortest) {
    int none = Integer.MAX_VALUE / 2;
    int[] more = new int[(int) eave];
    for (int at = more.length - 1; at >= 0; at--) {
      more[at] = at + starter >= eave ? 0 : none;
      for (long piece = 1; piece <= starter && at + starter < eave; piece++) {
        boolean whole = piece == starter;
        boolean may = whole || (piece % mark == 0 && piece >= shortest);
        if (may && nearest(at + piece, first, shingle) >= minimum) {
          more[at] = Math.min(more[at], more[(int) (at + piece)] + (whole && at > 0 ? 0 : 1));
        }
      }
    }
    return eave <= starter ? 1 : more[0] >= none ? 0 : more[0];
  }

  /** By hand: of first pieces from 3 to 35 in only 7 to 29 keep 7 in clear, and 18 is furthest from both joints. */
  @Test
  void of_plans_with_as_few_pieces_the_one_with_joints_furthest_apart_is_told() {
    StarterJoints joints = joints(Length.parse("36\""), Length.parse("36\""), Length.parse("36\""));
    assertThat(joints.cuts(Length.parse("1/16\""), Length.parse("3\"")).orElseThrow())
        .containsExactly(new StarterJoints.Cut(Length.ZERO, Length.parse("18\"")));
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

  private static StarterJoints joints(Length starter, Length cut, Length shingle) {
    return new StarterJoints(starter, cut, shingle, shingle, EAVE, StarterJoints.USUAL);
  }
}
