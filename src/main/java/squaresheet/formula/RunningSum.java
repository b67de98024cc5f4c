package squaresheet.formula;

/**
 * The sum of a column from one row down to another, which goes on from there: a column of running totals takes no more work
 * than its rows. Added up in the same order and with the same care as any sum, it is the same to the last digit.
 */
final class RunningSum {

  /** Less than this share of the largest number is what adding leaves over, and counts as 0. */
  private static final double LEFT_OVER = 0x1p-49;

  private int place;
  private int lastRow;
  private long count;
  private double sum;
  private double lost;
  private double largest;

  /**
   * Begins at a place.
   *
   * @param place the place in the column of the first cell to be added
   */
  RunningSum(int place) {
    this.place = place;
  }

  /** The place of the next cell to be added. */
  int place() {
    return place;
  }

  /** Whether nothing below that row is added yet. */
  boolean endsBy(int row) {
    return lastRow <= row;
  }

  /** Adds the cell at its place. */
  void add(int row, Value value) {
    if (value instanceof Value.Number number) {
      add(number.value());
    }
    lastRow = row;
    place++;
  }

  void add(double number) {
    double next = sum + number;
    lost += Math.abs(sum) >= Math.abs(number) ? (sum - next) + number : (number - next) + sum;
    sum = next;
    largest = Math.max(largest, Math.abs(number));
    count++;
  }

  double total() {
    double exact = sum + lost;
    return Math.abs(exact) <= (count < 2 ? 0 : largest) * LEFT_OVER ? 0 : exact;
  }
}
