package squaresheet.formula;

/** What names and references become when a formula is moved into another workbook or out of it. */
public interface Respelling {

  /**
   * What a name becomes; the name itself where it stays.
   *
   * @param many whether it stands where a function takes many values, as in {@code SUM(name)}
   */
  default Node name(Node.Name name, boolean many) {
    return name;
  }

  /**
   * What a reference becomes; the reference itself where it stays.
   *
   * @param many whether it stands where a function takes many values
   */
  default Node reference(Node.Reference reference, boolean many) {
    return reference;
  }
}
