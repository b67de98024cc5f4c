package squaresheet.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Where;
import squaresheet.geometry.Point;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * A plane as written down.
 *
 * @param id its name, such as {@code A} or {@code porch}; no two planes of a roof share one
 * @param shape the shape with the lengths as measured
 * @param measured whether lengths across the slope were taken on the slope or in plan
 * @param pitch the pitch
 * @param doubt what the pitch may be as well, where it was written too coarsely to say; empty where that does not matter
 * @param sides what was said about single sides; the others are as usual for the shape
 * @param openings what is cut out
 * @param places where each property was written, by name ({@code eave}, {@code pitch}, {@code bottom}, …); the name {@code
 *     plane} is the place of all others
 */
public record PlaneNotes(
    String id,
    Shape shape,
    Measured measured,
    Pitch pitch,
    Optional<Pitch.Span> doubt,
    List<SideNotes> sides,
    List<OpeningNotes> openings,
    Map<String, Where> places) {

  public PlaneNotes {
    id = id.strip();
    sides = List.copyOf(sides);
    openings = List.copyOf(openings);
    places = Map.copyOf(places);
  }

  /** A plane whose pitch is in no doubt. */
  public PlaneNotes(
      String id,
      Shape shape,
      Measured measured,
      Pitch pitch,
      List<SideNotes> sides,
      List<OpeningNotes> openings,
      Map<String, Where> places) {
    this(id, shape, measured, pitch, Optional.empty(), sides, openings, places);
  }

  /** A plane of which nothing more is said. */
  public PlaneNotes(String id, Shape shape, Measured measured, Pitch pitch) {
    this(id, shape, measured, pitch, List.of(), List.of(), Map.of());
  }

  /** This plane with one more thing said about a side. */
  public PlaneNotes with(SideNotes side) {
    List<SideNotes> more = new ArrayList<>(sides);
    more.add(side);
    return with(more, places);
  }

  /** This plane with one more opening. */
  public PlaneNotes with(OpeningNotes opening) {
    List<OpeningNotes> more = new ArrayList<>(openings);
    more.add(opening);
    return new PlaneNotes(id, shape, measured, pitch, doubt, sides, more, places);
  }

  /** This plane with other sides, or other places where things are written. */
  public PlaneNotes with(List<SideNotes> others, Map<String, Where> written) {
    return new PlaneNotes(id, shape, measured, pitch, doubt, others, openings, written);
  }

  /** This plane with a pitch that is in no doubt. */
  public PlaneNotes with(Pitch settled) {
    return new PlaneNotes(id, shape, measured, settled, sides, openings, places);
  }

  /** This plane, whose pitch may be something else as well. */
  public PlaneNotes doubting(Optional<Pitch.Span> span) {
    return new PlaneNotes(id, shape, measured, pitch, span, sides, openings, places);
  }

  /** What was said about the plane on the other side of one of its sides. */
  public Meets meets(String side) {
    return sides.stream()
        .filter(note -> note.side().equals(side))
        .map(SideNotes::meets)
        .findFirst()
        .orElse(new Meets.Unsaid());
  }

  /** The place of a property: the one given, else that of the plane, else the plane itself. */
  public Where at(String property) {
    Where plane = places.getOrDefault("plane", new Where.OfItem("plane " + id, property));
    return places.getOrDefault(property, plane);
  }

  /** How lengths across the slope were taken; lengths along the eave are level either way. */
  public enum Measured {
    /** With the tape on the roof, or up the rake: true lengths. */
    ON_SLOPE,
    /** On the level, from a plan or on the ground: multiplied by the pitch factor. */
    IN_PLAN;

    /** What lengths across a slope of this pitch are multiplied by. */
    double factor(Pitch pitch) {
      return this == IN_PLAN ? pitch.factor() : 1;
    }
  }

  /**
   * What was said about one side.
   *
   * @param side its name, such as {@code right} or {@code side 3}
   * @param kind what it is, or empty where it is as usual
   * @param taped its length read off the tape, as a check on the shape; empty where it was not measured
   * @param meets what was said about the plane on its other side
   */
  public record SideNotes(
      String side, Optional<EdgeKind> kind, Optional<Length> taped, Meets meets) {

    public SideNotes {
      side = Words.plain(side);
    }

    /** A side of this kind. */
    public static SideNotes of(String side, EdgeKind kind) {
      return new SideNotes(side, Optional.of(kind), Optional.empty(), new Meets.Unsaid());
    }

    /** A side of this kind that meets the plane of that name. */
    public static SideNotes of(String side, EdgeKind kind, String plane) {
      return of(side, kind).with(new Meets.Named(plane, ""));
    }

    /** This side, measured with the tape. */
    public SideNotes taped(Length length) {
      return new SideNotes(side, kind, Optional.of(length), meets);
    }

    /** This side, with something said about the plane on its other side. */
    public SideNotes with(Meets other) {
      return new SideNotes(side, kind, taped, other);
    }
  }

  /** What was said about the plane on the other side of an edge. */
  public sealed interface Meets {

    /** What {@link #read} reads as this. */
    String written();

    /** Nothing; a partner is looked for. */
    record Unsaid() implements Meets {
      @Override
      public String written() {
        return "";
      }
    }

    /** There is none, as at the ridge of a shed roof. */
    record Nothing() implements Meets {
      @Override
      public String written() {
        return "none";
      }
    }

    /**
     * The plane of that name.
     *
     * @param plane its name
     * @param side the name of its side, or empty where it is not said
     */
    record Named(String plane, String side) implements Meets {
      /** Takes the names without spaces around them. */
      public Named {
        plane = plane.strip();
        side = Words.plain(side);
      }

      @Override
      public String written() {
        return side.isEmpty() ? plane : plane + " / " + side;
      }
    }

    /** Reads a cell: empty is unsaid, {@code none} or {@code -} is nothing, else a plane's name, or {@code B / left}. */
    static Meets read(String text) {
      String stripped = text.strip();
      if (stripped.isEmpty()) {
        return new Unsaid();
      }
      if (isNothing(stripped)) {
        return new Nothing();
      }
      int slash = stripped.indexOf('/');
      return slash < 0
          ? new Named(stripped, "")
          : new Named(stripped.substring(0, slash), stripped.substring(slash + 1));
    }

    /** Whether the text says that an edge meets no other plane. */
    static boolean isNothing(String text) {
      return text.strip().equals("-") || Words.plain(text).equals("none");
    }
  }

  /**
   * Something cut out of a plane, as written down. Its lengths are taken as the plane's are.
   *
   * @param id its name
   * @param kind what it is
   * @param shape its outline, from its own lower left corner
   * @param at where the lower left corner lies on the plane, or empty where only the size was measured
   */
  public record OpeningNotes(String id, Opening.Kind kind, Shape shape, Optional<Point> at) {

    /** An opening square to the eave, of which only the size is known. */
    public static OpeningNotes of(String id, Opening.Kind kind, Length width, Length height) {
      return new OpeningNotes(id, kind, new Shape.Rectangle(width, height), Optional.empty());
    }

    /** This opening, with its lower left corner so far along the eave and up the slope. */
    public OpeningNotes at(Length along, Length up) {
      return new OpeningNotes(id, kind, shape, Optional.of(new Point(along, up)));
    }
  }
}
