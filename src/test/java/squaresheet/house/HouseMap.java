package squaresheet.house;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Writes the map of the house from its doors. */
final class HouseMap {

  private HouseMap() {}

  static String write(
      Collection<String> rooms, Function<String, Room> door, Function<String, String> purpose) {
    List<String> byFloor = rooms.stream()
        .sorted(Comparator.comparingInt((String room) -> door.apply(room).floor())
            .thenComparing(room -> room))
        .toList();
    String rows = byFloor.stream()
        .map(room ->
            "| " + door.apply(room).floor() + " | `" + room + "` | " + purpose.apply(room) + " | "
                + Arrays.stream(door.apply(room).uses()).collect(Collectors.joining(" ")) + " |\n")
        .collect(Collectors.joining());
    return "# The house\n\nWritten from the doors (`package-info.java`) by the test `HouseTest`; an arrow only goes to a"
        + " lower floor.\n\n| Floor | Room | Purpose | Uses |\n|---|---|---|---|\n" + rows;
  }
}
