package squaresheet.paper;

import squaresheet.geometry.Outline;
import squaresheet.units.Length;

/**
 * From inches on a plane, y up the slope, to points on a page, y downward.
 *
 * @param left where x = {@code fromX} lies on the page
 * @param base where y = {@code fromY} lies on the page
 * @param fromX the x in inches that lies at the left
 * @param fromY the y in inches that lies at the base
 * @param points points to the inch
 */
record Scale(double left, double base, double fromX, double fromY, double points) {

  /** The largest scale at which an outline fits a box, in the middle of it. */
  static Scale fitting(Outline outline, double x, double y, double width, double height) {
    double points = Math.min(width / across(outline), height / up(outline));
    return at(points, outline, x, y, width, height);
  }

  /** An outline in the middle of a box at a given scale. */
  static Scale at(double points, Outline outline, double x, double y, double width, double height) {
    return new Scale(
        x + (width - across(outline) * points) / 2,
        y + height - (height - up(outline) * points) / 2,
        outline.left().toInches(),
        outline.bottom().toInches(),
        points);
  }

  static double across(Outline outline) {
    return outline.right().minus(outline.left()).toInches();
  }

  static double up(Outline outline) {
    return outline.top().minus(outline.bottom()).toInches();
  }

  double x(double inches) {
    return left + (inches - fromX) * points;
  }

  double y(double inches) {
    return base - (inches - fromY) * points;
  }

  double x(Length length) {
    return x(length.toInches());
  }

  double y(Length length) {
    return y(length.toInches());
  }
}
