package squaresheet.verify;

import java.util.List;

/**
 * Checks that people look for together.
 *
 * @param name what they are about
 * @param asks the checks, in the order they are asked
 */
record CheckGroup(String name, List<Ask<?>> asks) {

  CheckGroup {
    asks = List.copyOf(asks);
  }

  static CheckGroup of(String name, Ask<?>... asks) {
    return new CheckGroup(name, List.of(asks));
  }
}
