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
      return (long) Math.ceil(need - Math.abs(need) * SAME_PACK);
    }
  },
  /** Down to whole packs: for what is already on hand, never for an order. */
  DOWN_TO_PACK {
    @Override
    public long apply(double need) {
      return (long) Math.floor(need + Math.abs(need) * SAME_PACK);
    }
  };

  /** Relative distance under which a need is the whole number beside it: a thousand million times finer than a pack. */
  private static final double SAME_PACK = 1e-9;

  /** The whole number that {@code need} rounds to. */
  public abstract long apply(double need);
}
