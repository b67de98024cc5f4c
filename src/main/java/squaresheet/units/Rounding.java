package squaresheet.units;

/** The roundings of quantities, each a step with a name. */
public enum Rounding {
  /**
   * Up to whole packs, once, at the end, per product. A need within 1e-9 (relative) above a whole number counts as that
   * whole, so that 30.0000000004 bundles, which is how a computer may spell 30, does not order a 31st.
   */
  UP_TO_PACK {
    @Override
    public long apply(double need) {
      return whole(need, isWhole(need) ? Math.rint(need) : Math.ceil(need));
    }
  },
  /** Down to whole packs: for what is already on hand, never for an order. */
  DOWN_TO_PACK {
    @Override
    public long apply(double need) {
      return whole(need, isWhole(need) ? Math.rint(need) : Math.floor(need));
    }
  };

  /** Relative distance under which a need is the whole number beside it: a thousand million times finer than a pack. */
  private static final double SAME_PACK = 1e-9;

  /** Up to here a double still counts every whole number. */
  private static final double MOST = 9.0e15;

  private static boolean isWhole(double need) {
    return Math.abs(need - Math.rint(need)) <= Math.abs(need) * SAME_PACK;
  }

  private static long whole(double need, double rounded) {
    if (!(Math.abs(rounded) <= MOST)) {
      throw new IllegalArgumentException(
          "a number of packs must lie within 9.0e15, but is " + need);
    }
    return (long) rounded;
  }

  /**
   * The whole number that {@code need} rounds to.
   *
   * @throws IllegalArgumentException if the need is not a number or lies beyond 9.0e15 either way
   */
  public abstract long apply(double need);
}
