package squaresheet.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.geom.Area;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.LayoutSettings;
import squaresheet.courses.RoofLayout;
import squaresheet.geometry.Point;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Graduation;
import squaresheet.units.Length;
import squaresheet.units.Pitch;
import squaresheet.xlsx.HostileWords;

class DrawingTest {

  /** Every kind of drawing, of roofs laid in inches and in millimetres, and with a line at every course. */
  static Stream<Drawing> drawings() {
    LayoutSettings.Spacing usual = LayoutSettings.Spacing.standard();
    return Stream.of(
            usual.every(5, Graduation.INCH),
            usual.every(2, Graduation.SIXTEENTH),
            usual.every(1, Graduation.SIXTEENTH),
            usual.on(Graduation.MILLIMETRE))
        .map(spacing -> Sample.layout(LayoutSettings.standard().with(spacing)))
        .flatMap(DrawingTest::all);
  }

  private static Stream<Drawing> all(RoofLayout layout) {
    List<Drawing> drawings = new ArrayList<>(Drawings.roof(layout));
    for (CoursePlan plan : layout.plans()) {
      drawings.add(Drawings.plane(plan));
      plan.starters().forEach(starter -> drawings.add(Drawings.starter(plan, starter)));
    }
    drawings.add(CrewSheet.of(layout, "Larch Lane").drawing());
    Drawings.shapes().forEach(shape -> drawings.add(Drawings.shape(shape)));
    drawings.addAll(drawings.stream().map(Drawing::stamped).toList());
    return drawings.stream();
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void no_two_texts_overlap_and_all_are_on_the_page(Drawing drawing) throws Exception {
    List<Lettering.Placed> texts = Lettering.of(drawing.svg());
    assertThat(texts).isNotEmpty();
    for (int one = 0; one < texts.size(); one++) {
      Area room = texts.get(one).room();
      assertThat(room.getBounds2D().getMinX()).as(texts.get(one).text()).isNotNegative();
      assertThat(room.getBounds2D().getMaxX())
          .as(texts.get(one).text())
          .isLessThanOrEqualTo(drawing.width());
      assertThat(room.getBounds2D().getMaxY())
          .as(texts.get(one).text())
          .isLessThanOrEqualTo(drawing.height());
      for (int other = one + 1; other < texts.size(); other++) {
        Area common = new Area(room);
        common.intersect(texts.get(other).room());
        assertThat(common.isEmpty())
            .as(drawing.title() + ": '" + texts.get(one).text() + "' over '"
                + texts.get(other).text() + "'")
            .isTrue();
      }
    }
  }

  @Test
  void a_drawing_is_xml_whatever_a_job_is_called() {
    for (String name :
        List.of("\u000b\u0007\u001b", "\ufffe\uffff", "\ud800 \udc00", "<&]]>\"'", "\u0000")) {
      Drawing crew = CrewSheet.of(Sample.layout(), name).drawing();
      HostileWords.parse(name, crew.svg().getBytes(StandardCharsets.UTF_8));
      HostileWords.parse(name, crew.stamped().svg().getBytes(StandardCharsets.UTF_8));
    }
  }

  @Test
  void a_stamp_is_seen_and_covers_nothing() throws Exception {
    Drawing plain = Drawings.plane(Sample.layout().plans().get(0));
    List<String> texts =
        Lettering.of(plain.svg()).stream().map(Lettering.Placed::text).toList();
    List<Lettering.Placed> stamped = Lettering.of(plain.stamped().svg());
    assertThat(stamped)
        .extracting(Lettering.Placed::text)
        .contains("DOES NOT PASS")
        .containsAll(texts);
    assertThat(plain.stamped().width()).isEqualTo(plain.width());
    assertThat(plain.stamped().height()).isEqualTo(plain.height());
  }

  @Test
  void the_same_drawing_gives_the_same_bytes() {
    Drawing one = Drawings.plane(Sample.layout().plans().get(0));
    Drawing two = Drawings.plane(Sample.layout().plans().get(0));
    assertThat(one.svg()).isEqualTo(two.svg());
    assertThat(one.png(800)).isEqualTo(two.png(800));
  }

  @Test
  void a_plane_is_labelled_with_its_edges_openings_and_marks() throws Exception {
    Drawing drawing = Drawings.plane(Sample.layout().plans().get(0));
    assertThat(Lettering.of(drawing.svg()))
        .extracting(Lettering.Placed::text)
        .contains(
            "Plane front",
            "eave 36' 4\"",
            "rake 17' 3\"",
            "ridge 36' 4\"",
            "chimney C1",
            "skylight S1",
            "starter line 7\"",
            "first course 12 1/2\"")
        .as("common practice, no source")
        .contains("28\"", "56\"", "84\"", "112\"", "140\"", "168\"");
  }

  @Test
  void the_starter_of_a_plane_too_flat_to_shingle_is_not_to_be_laid() throws Exception {
    CoursePlan deck = Sample.flatAndShelf().plans().get(0);
    Drawing drawing = Drawings.starter(deck, deck.starters().get(0));
    assertThat(Lettering.of(drawing.svg()))
        .extracting(Lettering.Placed::text)
        .contains("TOO FLAT FOR THIS SHINGLE, DO NOT LAY.")
        .noneMatch(text -> text.contains("instead"));
  }

  @Test
  void clashing_starter_joints_are_marked() throws Exception {
    CoursePlan front = Sample.layout().plans().get(0);
    Drawing drawing = Drawings.starter(front, front.starters().get(0));
    assertThat(Lettering.of(drawing.svg()))
        .extracting(Lettering.Placed::text)
        .as(
            "by hand: 36 under 39 3/8 from 7: 43 is 3 5/8 past 39 3/8; 79 is 1/4 past 78 3/4; from 28 1/8 the first joint stands 11 1/4 before one and"
                + " draws away by 3 3/8 each time, until the sixth, 208 1/8, stands 11 1/4 behind the one before; 16 7/8 on, at 225, it is 11 1/4 before one again,"
                + " and the last six are as far apart; seven in one stretch would be 9 9/16 apart at best")
        .contains("3 5/8\"", "1/4\"")
        .anyMatch(text -> text.startsWith("4 of 12 joints too near, the first at 3' 7\"."))
        .anyMatch(text -> text.contains("28 1/8\", and one cut to 16 7/8\"")
            && text.endsWith("at 17' 4 1/8\" instead: all clear."));
  }

  @Test
  void a_strip_of_a_plane_too_flat_to_shingle_says_so_and_not_where_to_begin() throws Exception {
    CoursePlan deck = Sample.flatAndShelf().plans().get(0);
    Drawing drawing = Drawings.starter(deck, deck.starters().get(0));
    assertThat(Lettering.of(drawing.svg()))
        .extracting(Lettering.Placed::text)
        .contains("Pitch 1:12; laminated may be laid from 2:12 up.", Words.TOO_FLAT)
        .noneMatch(text -> text.startsWith("Begin"));
  }

  @Test
  void on_a_metric_tape_a_pitch_is_told_by_its_angle() {
    assertThat(Words.pitch(Pitch.nearestDegrees(30), Graduation.MILLIMETRE))
        .as("tan 30° is 0.57735, of 12 is 6.928")
        .isEqualTo("30° (6.93:12)");
    assertThat(Words.pitch(Pitch.of(6), Graduation.INCH)).isEqualTo("6:12");
  }

  @Test
  void several_eaves_of_a_plane_are_counted_from_the_left() {
    Shape stepped = new Shape.Polygon(List.of(
        Point.ORIGIN,
        new Point(Length.parse("10'"), Length.ZERO),
        new Point(Length.parse("10'"), Length.parse("4'")),
        new Point(Length.parse("18'"), Length.parse("4'")),
        new Point(Length.parse("18'"), Length.parse("12'")),
        new Point(Length.ZERO, Length.parse("12'"))));
    PlaneNotes notes = new PlaneNotes("front", stepped, PlaneNotes.Measured.ON_SLOPE, Pitch.of(6));
    CoursePlan plan = Sample.layout(
            LayoutSettings.standard(), notes.with(PlaneNotes.SideNotes.of("side 3", EdgeKind.EAVE)))
        .plans()
        .get(0);
    assertThat(plan.starters())
        .extracting(starter -> Words.eave(plan, starter))
        .containsExactlyInAnyOrder("eave 1 of 2 from the left", "eave 2 of 2 from the left");
  }

  @Test
  void a_picture_has_the_pixels_asked_for_and_something_on_it() throws Exception {
    Drawing drawing = Drawings.plane(Sample.layout().plans().get(0));
    BufferedImage picture = ImageIO.read(new ByteArrayInputStream(drawing.png(990)));
    assertThat(picture.getWidth()).isEqualTo(990);
    assertThat(picture.getHeight()).as("by hand: 612 of 792 by 990").isEqualTo(765);
    long dark = 0;
    for (int x = 0; x < picture.getWidth(); x++) {
      for (int y = 0; y < picture.getHeight(); y++) {
        dark += (picture.getRGB(x, y) & 0xff) < 100 ? 1 : 0;
      }
    }
    assertThat(dark).isBetween(3_000L, 100_000L);
  }

  @Test
  void a_machine_without_fonts_is_told_so_in_a_sentence() {
    String sentence =
        "drawings need a font, but this machine has none; install any font package, such as DejaVu, and draw again";
    assertThat(Type.obstacle(() -> {
          throw new InternalError("no font");
        }))
        .contains(sentence);
    assertThat(Type.obstacle(() -> {
          throw new UnsatisfiedLinkError("libfreetype");
        }))
        .contains(sentence);
    assertThat(Type.obstacle(() -> {
          throw new NullPointerException("fontconfig");
        }))
        .contains(sentence);
    assertThat(Drawing.obstacle()).as("this machine has fonts").isEmpty();
  }

  @Test
  void an_unknown_shape_is_refused_with_the_known_ones() {
    assertThatThrownBy(() -> Drawings.shape("circle"))
        .hasMessage(
            "a shape must be a rectangle, triangle, trapezoid, parallelogram or polygon, but is 'circle'");
  }

  @Test
  void drawings_can_be_looked_at() throws Exception {
    Path folder = Files.createDirectories(Path.of("target/drawings"));
    int number = 0;
    for (Drawing drawing : all(Sample.layout()).toList()) {
      Path file = folder.resolve(String.format("%02d.png", number++));
      Files.write(file, drawing.png(1000));
      assertThat(file).isNotEmptyFile();
    }
  }
}
