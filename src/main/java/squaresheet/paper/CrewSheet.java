package squaresheet.paper;

import java.util.ArrayList;
import java.util.List;
import squaresheet.courses.RoofLayout;

/**
 * One page for the crew: what to do in which order, and every number they need, in few words. The same as a drawing to print
 * and as lines of text for a worksheet or a screen.
 *
 * @param title what it is for
 * @param sections in the order they are read
 */
public record CrewSheet(String title, List<Section> sections) {

  /**
   * One block of the page.
   *
   * @param heading what it is about
   * @param lines one short sentence each
   */
  public record Section(String heading, List<String> lines) {

    public Section {
      lines = List.copyOf(lines);
    }
  }

  /**
   * What lies under the courses.
   *
   * @param layersTornOff old layers that come off first; 0 on a bare deck
   * @param doubled names of the planes that take two layers of underlayment
   */
  public record Deck(double layersTornOff, List<String> doubled) {

    /** Nothing to tear off, one layer of underlayment everywhere. */
    public static final Deck BARE = new Deck(0, List.of());

    public Deck {
      doubled = List.copyOf(doubled);
    }
  }

  public CrewSheet {
    sections = List.copyOf(sections);
  }

  /** The crew sheet of a layout on a bare deck. */
  public static CrewSheet of(RoofLayout layout, String job) {
    return of(layout, job, Deck.BARE);
  }

  /** The crew sheet of a layout over such a deck. */
  public static CrewSheet of(RoofLayout layout, String job, Deck deck) {
    return new CrewSheet("Crew sheet: " + job, new CrewWords(layout, deck).sections());
  }

  /** All of it as lines of text: the title, then each heading and its lines; no empty lines. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(List.of(title));
    for (Section section : sections) {
      lines.add(section.heading());
      lines.addAll(section.lines());
    }
    return List.copyOf(lines);
  }

  /** One page in large type, black on white. */
  public Drawing drawing() {
    return CrewPage.of(this);
  }
}
