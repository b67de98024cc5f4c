package squaresheet.judge.score;

import java.util.Locale;

/**
 * So many of so many, with the bounds within which the true share lies at 95 %.
 *
 * @param hits 0 to {@code of}
 * @param of 0 and up
 */
record Share(long hits, long of) {

  /** The 97.5 % point of the normal distribution. */
  private static final double Z = 1.959964;

  /** The lower bound: E. B. Wilson, "Probable inference", Journal of the American Statistical Association 22, 1927. */
  double low() {
    return of == 0 ? 0 : Math.max(0, centre() - spread());
  }

  /** The upper bound: Wilson's; 3/n where there is no hit in n (Hanley and Lippman-Hand, JAMA 249, 1983). */
  double high() {
    return of == 0 ? 1 : hits == 0 ? Math.min(1, 3.0 / of) : Math.min(1, centre() + spread());
  }

  private double centre() {
    double n = of;
    return (hits / n + Z * Z / (2 * n)) / (1 + Z * Z / n);
  }

  private double spread() {
    double n = of;
    double p = hits / n;
    return Z / (1 + Z * Z / n) * Math.sqrt(p * (1 - p) / n + Z * Z / (4 * n * n));
  }

  @Override
  public String toString() {
    return of == 0
        ? "–"
        : String.format(
            Locale.ROOT,
            "%.0f %% (%.0f–%.0f, n = %d)",
            100.0 * hits / of,
            100 * low(),
            100 * high(),
            of);
  }
}
