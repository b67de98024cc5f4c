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

  public CrewSheet {
    sections = List.copyOf(sections);
  }

  /** The crew sheet of a layout on a bare deck. */
  public static CrewSheet of(RoofLayout layout, String job) {
    return of(layout, job, 0);
  }

  /** The crew sheet of a layout where so many old layers come off first. */
  public static CrewSheet of(RoofLayout layout, String job, double layersTornOff) {
    return new CrewSheet("Crew sheet: " + job, new CrewWords(layout, layersTornOff).sections());
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
