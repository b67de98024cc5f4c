package squaresheet.binding;

import java.util.List;

/**
 * What a column, or a label with its value, can mean.
 *
 * @param table the table it belongs to, such as {@code planes}; {@code job} for labels
 * @param property the property, lower_snake_case
 * @param role what the column does in its table
 * @param holds what the cells must hold
 * @param words the headings that say so, our own first
 */
record Meaning(String table, String property, Role role, Holds holds, List<Word> words) {

  /** What a column does in its table. */
  enum Role {
    /** Names the row. */
    KEY,
    /** Is typed. */
    INPUT,
    /** Is worked out from the inputs. */
    COMPUTED,
    /** Is for people. */
    NOTE,
    /** Stands beside its label, typed. */
    VALUE,
    /** Stands beside its label, worked out. */
    TOTAL,
    /** Stands over the table, or names its sheet. */
    TITLE
  }

  /**
   * A heading that says so.
   *
   * @param tokens its words, lower case, singular
   * @param certain whether it may be bound without asking
   */
  record Word(List<String> tokens, boolean certain) {}

  /** Whether its numbers mean nothing without a unit. */
  boolean isMeasured() {
    return holds == Holds.LENGTH || holds == Holds.AREA;
  }

  /** The property in words, as items of the model spell it: {@code sloped area}. */
  String inWords() {
    return property.replace('_', ' ');
  }
}
