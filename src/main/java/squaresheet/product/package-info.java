/**
 * The catalogue: each product by its physical size and packing, with its source. What follows from those is derived here,
 * never typed twice.
 */
@Room(
    floor = 3,
    uses = {"units", "finding", "tape"})
package squaresheet.product;

import squaresheet.house.Room;
