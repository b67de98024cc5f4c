/**
 * Quantities by rule: named formulas over what the roof, the products and the estimator's settings give. What a rule says
 * is data, kept in the standard rulebook and overridden by a company's own.
 */
@Room(
    floor = 4,
    uses = {"units", "sheet", "finding", "formula", "tape", "product", "geometry", "roof"})
package squaresheet.takeoff;

import squaresheet.house.Room;
