/**
 * The catalogue: each product by its physical size and packing, with its source. What follows from those is derived here,
 * never typed twice.
 */
@Room(
    floor = 2,
    uses = {"units", "finding"})
package squaresheet.product;

import squaresheet.house.Room;
