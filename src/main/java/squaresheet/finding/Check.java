package squaresheet.finding;

import java.util.stream.Stream;

/**
 * One question, asked of the smallest subject that can answer it. No state, no order, no throwing.
 *
 * @param <S> the subject
 */
public interface Check<S> {

  /** The card of this check. */
  CheckInfo info();

  /** What there is to say about the subject; nothing where all is well. */
  Stream<Finding> examine(S subject);
}
