/** The door notice that every room hangs out. Holds no code of the trade. */
@Room(floor = 0)
package squaresheet.house;
