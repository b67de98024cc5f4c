package squaresheet.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What was understood of a user's input, and what was not.
 *
 * @param <T> what was being read
 */
public final class Read<T> {

  private final Optional<T> value;
  private final List<Finding> findings;

  private Read(Optional<T> value, List<Finding> findings) {
    this.value = value;
    this.findings = List.copyOf(findings);
  }

  /** Read without a word. */
  public static <T> Read<T> of(T value) {
    return new Read<>(Optional.of(value), List.of());
  }

  /** Read, with something to say. */
  public static <T> Read<T> of(T value, List<Finding> findings) {
    return new Read<>(Optional.of(value), findings);
  }

  /** Not read, for these reasons; at least one. */
  public static <T> Read<T> nothing(List<Finding> findings) {
    if (findings.isEmpty()) {
      throw new IllegalArgumentException("what could not be read must have a reason, but has none");
    }
    return new Read<>(Optional.empty(), findings);
  }

  /** Not read, for this reason. */
  public static <T> Read<T> nothing(Finding reason) {
    return nothing(List.of(reason));
  }

  /** What was understood, if anything. */
  public Optional<T> value() {
    return value;
  }

  /** What there is to say about it, in the order of reading. */
  public List<Finding> findings() {
    return findings;
  }

  /** Whether something was understood and nothing in it is an error. */
  public boolean isClean() {
    return value.isPresent() && findings.stream().noneMatch(Finding::isError);
  }

  /** What was understood, turned into something else, with the same findings. */
  public <U> Read<U> map(Function<? super T, ? extends U> turn) {
    return new Read<>(value.map(turn), findings);
  }

  /** What was understood, read further, with the findings of both readings. */
  public <U> Read<U> flatMap(Function<? super T, Read<U>> readOn) {
    if (value.isEmpty()) {
      return new Read<>(Optional.empty(), findings);
    }
    Read<U> next = readOn.apply(value.get());
    List<Finding> both = new ArrayList<>(findings);
    both.addAll(next.findings);
    return new Read<>(next.value, both);
  }
}
