package squaresheet.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import squaresheet.courses.LayoutSettings;
import squaresheet.estimate.OrderList;
import squaresheet.product.Packing;
import squaresheet.product.Product;
import squaresheet.units.Count;
import squaresheet.units.Graduation;

class CrewSheetTest {

  @Test
  void the_crew_gets_every_number_it_needs_in_few_words() {
    assertThat(CrewSheet.of(Sample.layout(), "Larch Lane").lines())
        .as(
            "lines and marks: common practice, no source; the rest by hand from the sample's products")
        .containsSubsequence(
            "Crew sheet: Larch Lane",
            "Stay on the roof",
            "Fall protection from 6 ft up. This roof is steep: over 4:12.",
            "Order of work: all of one before the next",
            "2. Snap every line.",
            "6. At walls, step flashing with every course.",
            "8. Cap last.",
            "Starter line: 7\" up from the eave edge.",
            "First-course line: 12 1/2\" up from the eave edge.",
            "From that line, every 5 courses: 28\", 56\", 84\", 112\", 140\", 168\".",
            "Never more than 5 5/8\" to the weather. Laid at 5.60\".",
            "From the left: 1: whole,  2: 33 3/8\",  3: 27 3/8\",  4: 21 3/8\",  5: 15 3/8\",  6: 9 3/8\". Then again"
                + " from 1.",
            "Begin with a piece cut to 7\".",
            "4 a shingle, 6 in high wind, on the maker's nail line.",
            "Eave: 3/4\", nowhere under 1/4\" or over 1\".",
            "Rakes: 1/2\".");
  }

  @Test
  void on_a_metric_tape_a_limit_is_never_rounded_past_itself() {
    LayoutSettings.Spacing metres = LayoutSettings.Spacing.standard().on(Graduation.MILLIMETRE);
    assertThat(CrewSheet.of(Sample.layout(LayoutSettings.standard().with(metres)), "Larch Lane")
            .lines())
        .as(
            "by hand: 5 5/8 in is 142.875 mm, 6 in 152.4, 7 in 177.8, 2 in 50.8, 39 3/8 in 1000.125, less 153 each time; 1/4 in 6.35, 1 in 25.4")
        .contains(
            "From the left: 1: whole,  2: 847 mm,  3: 694 mm,  4: 541 mm,  5: 388 mm,  6: 235 mm. Then again from 1.",
            "Joints at least 153 mm from those below.",
            "Joints at least 178 mm from those of the first course. Nails 51 mm clear of a joint below.",
            "Eave: 19 mm, nowhere under 7 mm or over 25 mm.",
            "Fall protection from 1.8 m up. This roof is steep: over 4:12.")
        .anyMatch(line -> line.startsWith("Never more than 142 mm to the weather."))
        .noneMatch(line -> line.contains("\"") || line.contains(" ft "));
  }

  @Test
  void a_roof_of_many_planes_keeps_its_warnings() {
    assertThat(CrewSheet.of(Sample.many(), "Larch Lane").lines())
        .as("by hand: deck is 1:12 and the shingle asks 2:12; back is 4 in lower at one end")
        .containsSubsequence(
            "Courses on each plane",
            "9 planes: see the plane sheets.",
            "TOO FLAT, NO SHINGLES: deck.",
            "Ends differ on back: use the marks of its own sheet.");
  }

  @Test
  void no_starter_is_told_for_a_plane_too_flat_to_shingle() {
    assertThat(CrewSheet.of(Sample.layout(), "Larch Lane").lines())
        .as("the front, as long as the deck")
        .anyMatch(line -> line.startsWith("Begin otherwise on front:"));
    assertThat(CrewSheet.of(Sample.flatAndShelf(), "Larch Lane").lines())
        .noneMatch(line -> line.startsWith("Begin otherwise"))
        .as("by hand: 4 in and 3/4 over the eave is less than one exposure of 5 5/8")
        .contains("deck: TOO FLAT, NO SHINGLES;  shelf: 1 course, last shows 4 3/4\".");
  }

  @Test
  void where_old_layers_come_off_the_crew_is_warned_of_asbestos() {
    String caution = "Old material may contain asbestos: have it tested before tear-off.";
    assertThat(CrewSheet.of(Sample.layout(), "Larch Lane", new CrewSheet.Deck(2, List.of()))
            .lines())
        .as("the usual caution; tested before it is disturbed: common practice, no source")
        .contains(caution);
    assertThat(CrewSheet.of(Sample.layout(), "Larch Lane").lines()).doesNotContain(caution);
  }

  @Test
  void planes_of_low_slope_are_named_for_their_doubled_underlayment() {
    CrewSheet.Deck low = new CrewSheet.Deck(0, List.of("porch", "wing"));
    assertThat(CrewSheet.of(Sample.layout(), "Larch Lane", low).lines())
        .as("two layers from 2:12 up to 4:12: IRC R905.1.1")
        .contains(
            "1. Eave metal, then ice barrier and underlayment, then rake metal. Underlayment doubled, low slope: porch,"
                + " wing.");
    assertThat(CrewSheet.of(Sample.layout(), "Larch Lane").lines())
        .noneMatch(line -> line.contains("doubled"));
  }

  @Test
  void a_starter_is_told_with_every_piece_to_cut() {
    assertThat(CrewSheet.of(Sample.layout(), "Larch Lane").lines())
        .as("the cuts are held against a walk along the eave in StarterJointsTest")
        .anyMatch(line ->
            line.matches("Begin otherwise on front: [^;]*\", and one cut to [^;]* at \\d+'.*"))
        .noneMatch(line -> line.contains("cut short"));
  }

  @Test
  void the_crew_sheet_is_one_page_in_letters_large_enough_to_read() throws Exception {
    Drawing page = CrewSheet.of(
            Sample.layout(), "Larch Lane", new CrewSheet.Deck(1, List.of("deck", "porch")))
        .drawing();
    assertThat(page.height()).isEqualTo(792);
    assertThat(Lettering.of(page.svg()))
        .allSatisfy(text ->
            assertThat(text.room().getBounds2D().getHeight()).as(text.text()).isGreaterThan(9));
  }

  @Test
  void no_length_is_broken_before_its_inches_or_its_fraction() throws Exception {
    for (String job : List.of("Larch Lane", "Larch Lane, the house behind the second barn")) {
      List<Lettering.Placed> texts =
          Lettering.of(CrewSheet.of(Sample.layout(), job).drawing().svg());
      for (int line = 1; line < texts.size(); line++) {
        String broken = texts.get(line - 1).text() + "|" + texts.get(line).text();
        assertThat(broken).doesNotMatch(".*\\s\\d+\\|\\d+/\\d.*").doesNotMatch(".*\\d'\\|\\d.*");
      }
    }
  }

  @Test
  void the_order_list_says_whole_packs_of_each_product() throws Exception {
    Product boots = new Product.Item(new Product.Label(
        "boot-3", Product.Kind.PIPE_BOOT, "3 in pipe boot", Packing.of("piece", 1), "made up", ""));
    OrderSheet sheet = OrderSheet.of(
        new OrderList(List.of(new OrderList.Entry(boots, Count.of(2, "piece")))), "Larch Lane");
    assertThat(sheet.lines()).containsExactly("2 pieces  3 in pipe boot");
    assertThat(Lettering.of(sheet.drawing().svg()))
        .extracting(Lettering.Placed::text)
        .contains("Order list: Larch Lane", "2 pieces", "3 in pipe boot");
  }
}
