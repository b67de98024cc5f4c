package squaresheet.paper;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;

/** The crew sheet on a page: as large as it fits. */
final class CrewPage {

  private static final int WIDTH = 612;
  private static final int HEIGHT = 792;
  private static final double MARGIN = 27;
  private static final double LARGEST = 17;
  private static final double SMALLEST = 7;
  private static final double STEP = 0.5;
  private static final double AFTER_SECTION = 0.4;

  private final CrewSheet sheet;
  private final double size;

  private CrewPage(CrewSheet sheet, double size) {
    this.sheet = sheet;
    this.size = size;
  }

  static Drawing of(CrewSheet sheet) {
    return new Drawing(sheet.title(), WIDTH, HEIGHT, pen -> fitting(sheet).paint(pen));
  }

  private static CrewPage fitting(CrewSheet sheet) {
    CrewPage page = new CrewPage(sheet, LARGEST);
    while (page.height() > HEIGHT - 2 * MARGIN && page.size > SMALLEST) {
      page = new CrewPage(sheet, page.size - STEP);
    }
    return page;
  }

  private Font text() {
    return Type.bold(size);
  }

  private Font heading() {
    return Type.bold(size * 0.95);
  }

  private Font title() {
    return Type.bold(size * 1.5);
  }

  private static double wide() {
    return WIDTH - 2 * MARGIN;
  }

  private double bar() {
    return size * 1.35;
  }

  private double height() {
    double high = Pen.height(sheet.title(), wide(), title());
    for (CrewSheet.Section section : sheet.sections()) {
      high += bar() + size * 0.2 + size * AFTER_SECTION;
      for (String line : section.lines()) {
        high += Pen.height(line, wide() - size, text());
      }
    }
    return high;
  }

  private void paint(Pen pen) {
    double y = MARGIN + pen.paragraph(sheet.title(), MARGIN, MARGIN, wide(), title());
    for (CrewSheet.Section section : sheet.sections()) {
      pen.fill(new Rectangle2D.Double(MARGIN, y, wide(), bar()), Color.BLACK);
      pen.textAt(Color.WHITE, section.heading(), MARGIN + size * 0.5, y + bar() / 2, heading());
      y += bar() + size * 0.2;
      for (String line : section.lines()) {
        y += pen.paragraph(line, MARGIN + size * 0.5, y, wide() - size, text());
      }
      y += size * AFTER_SECTION;
    }
  }
}
