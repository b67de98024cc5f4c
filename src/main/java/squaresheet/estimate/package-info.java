/**
 * The price: lines by category and cost code, from packs, prices, hours and rates to markup, tax and the payment schedule.
 * Decimal money only, and totals that foot and cross-foot to the cent.
 */
@Room(
    floor = 5,
    uses = {"units", "finding", "tape", "product", "takeoff"})
package squaresheet.estimate;

import squaresheet.house.Room;
