package squaresheet.units;

/** Which way a rounding goes when a value lies between two marks. */
public enum Direction {
  /** To the nearest mark; a tie goes away from zero. */
  NEAREST {
    @Override
    long divide(long value, long step) {
      long half = value < 0 ? -step : step;
      return Math.addExact(Math.multiplyExact(2, value), half) / (2 * step);
    }
  },
  /** Toward minus infinity. */
  DOWN {
    @Override
    long divide(long value, long step) {
      return Math.floorDiv(value, step);
    }
  },
  /** Toward plus infinity. */
  UP {
    @Override
    long divide(long value, long step) {
      return -Math.floorDiv(Math.negateExact(value), step);
    }
  };

  abstract long divide(long value, long step);
}
