/**
 * What is printed and taken to the roof: drawings of the layout, the crew sheet, the order list, and the pictures of what to
 * measure, with the cautions that belong to them. Black on white, told apart by line pattern and label.
 */
@Room(
    floor = 6,
    uses = {"units", "sheet", "geometry", "product", "roof", "courses", "estimate"})
package squaresheet.paper;

import squaresheet.house.Room;
