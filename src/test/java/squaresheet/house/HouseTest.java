package squaresheet.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the plan of the house: doors, floors, arrows, the homes of the libraries, and how large anything may grow. */
class HouseTest {

  private static final String BASE = "squaresheet.";
  private static final int PUBLIC_TYPES = 12;

  /** Library package prefix to the one room whose code may use it. */
  private static final Map<String, Set<String>> HOMES = Map.of(
      "org.apache.poi", Set.of("xlsx"),
      "org.openxmlformats", Set.of("xlsx"),
      "com.fasterxml.aalto", Set.of("xlsx"),
      "org.apache.commons.compress", Set.of("xlsx"),
      "net.objecthunter", Set.of("formula"),
      "org.locationtech", Set.of("geometry"),
      "org.joda.money", Set.of("units"),
      "org.apache.batik", Set.of("paper"),
      "picocli", Set.of("cli"),
      "me.tongfei", Set.of("cli"));

  private static final JavaClasses CLASSES = new ClassFileImporter()
      .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
      .importPackages("squaresheet");

  @Test
  void every_room_has_a_door_and_its_arrows_are_exactly_those_used() {
    Map<String, Set<String>> used = new TreeMap<>();
    CLASSES.forEach(
        type -> used.computeIfAbsent(room(type), name -> new TreeSet<>()).addAll(roomsUsed(type)));
    Map<String, Set<String>> stated = new TreeMap<>();
    used.keySet()
        .forEach(name -> stated.put(name, new TreeSet<>(List.of(door(name).uses()))));
    assertThat(stated).isEqualTo(used);
  }

  @Test
  void an_arrow_only_goes_to_a_lower_floor() {
    List<String> upward = new ArrayList<>();
    for (String from : rooms()) {
      for (String to : door(from).uses()) {
        if (door(to).floor() >= door(from).floor()) {
          upward.add(from + " (floor " + door(from).floor() + ") uses " + to + " (floor "
              + door(to).floor() + ")");
        }
      }
    }
    assertThat(upward).isEmpty();
  }

  @Test
  void a_library_is_used_only_in_its_home() {
    List<String> strays = new ArrayList<>();
    for (JavaClass type : CLASSES) {
      type.getDirectDependenciesFromSelf()
          .forEach(arrow -> HOMES.forEach((library, homes) -> {
            if (arrow.getTargetClass().getName().startsWith(library)
                && !homes.contains(room(type))) {
              strays.add(type.getName() + " uses " + arrow.getTargetClass().getName());
            }
          }));
    }
    assertThat(strays).isEmpty();
  }

  @Test
  void a_library_does_not_cross_the_door_of_its_home() {
    List<String> crossings = new ArrayList<>();
    for (JavaClass type : CLASSES) {
      if (type.getModifiers().contains(JavaModifier.PUBLIC) && !room(type).equals("cli")) {
        type.getMethods().stream()
            .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC))
            .filter(method -> isOfALibrary(method.getRawReturnType())
                || method.getRawParameterTypes().stream().anyMatch(HouseTest::isOfALibrary))
            .forEach(method -> crossings.add(method.getFullName()));
      }
    }
    assertThat(crossings).isEmpty();
  }

  @Test
  void only_the_command_line_prints_and_exits() {
    Set<String> printing = CLASSES.stream()
        .filter(type -> !room(type).equals("cli"))
        .filter(type -> type.getFieldAccessesFromSelf().stream()
                .anyMatch(access ->
                    access.getTarget().getFullName().matches("java\\.lang\\.System\\.(out|err)"))
            || type.getMethodCallsFromSelf().stream()
                .anyMatch(
                    call -> call.getTarget().getFullName().startsWith("java.lang.System.exit")))
        .map(JavaClass::getName)
        .collect(Collectors.toSet());
    assertThat(printing).isEmpty();
  }

  @Test
  void a_csv_file_is_written_in_one_place_only_where_every_text_is_made_safe() {
    Set<String> writing = CLASSES.stream()
        .filter(type -> type.getDirectDependenciesFromSelf().stream()
            .anyMatch(
                arrow -> arrow.getTargetClass().getName().startsWith("de.siegmar.fastcsv.writer")))
        .map(JavaClass::getName)
        .collect(Collectors.toSet());
    assertThat(writing).containsExactly("squaresheet.sheet.CsvText");
  }

  @Test
  void a_room_shows_at_most_twelve_public_types() {
    Map<String, Long> shown = CLASSES.stream()
        .filter(type -> type.isTopLevelClass() && type.getModifiers().contains(JavaModifier.PUBLIC))
        .filter(type -> !type.getSimpleName().equals("package-info"))
        .collect(Collectors.groupingBy(HouseTest::room, TreeMap::new, Collectors.counting()));
    shown.values().removeIf(count -> count <= PUBLIC_TYPES);
    assertThat(shown)
        .as("rooms with more than " + PUBLIC_TYPES + " public types")
        .isEmpty();
  }

  @Test
  void nobody_moves_into_a_room_without_a_name() {
    assertThat(rooms())
        .doesNotContain("util", "utils", "common", "helper", "helpers", "manager", "impl", "core");
  }

  @Test
  void the_map_is_written_from_the_doors() throws IOException {
    String map = HouseMap.write(rooms(), HouseTest::door, HouseTest::purpose);
    Path file = Path.of("docs/map.md");
    if (Boolean.getBoolean("squaresheet.rewrite.map")) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, map);
    }
    assertThat(Files.readString(file))
        .as("docs/map.md; run the tests with -Dsquaresheet.rewrite.map=true to write it anew")
        .isEqualTo(map);
  }

  private static Set<String> rooms() {
    return CLASSES.stream().map(HouseTest::room).collect(Collectors.toCollection(TreeSet::new));
  }

  private static String room(JavaClass type) {
    return type.getPackageName().substring(BASE.length());
  }

  private static Set<String> roomsUsed(JavaClass type) {
    return type.getDirectDependenciesFromSelf().stream()
        .map(arrow -> arrow.getTargetClass().getBaseComponentType())
        .filter(target -> target.getPackageName().startsWith(BASE))
        .map(HouseTest::room)
        .filter(target -> !target.equals(room(type)) && !target.equals("house"))
        .collect(Collectors.toSet());
  }

  private static boolean isOfALibrary(JavaClass type) {
    return HOMES.keySet().stream().anyMatch(type.getBaseComponentType().getName()::startsWith);
  }

  private static Room door(String room) {
    try {
      Class<?> door = Class.forName(BASE + room + ".package-info");
      Room notice = door.getAnnotation(Room.class);
      assertThat(notice).as("the door of " + room).isNotNull();
      return notice;
    } catch (ClassNotFoundException missing) {
      throw new AssertionError("room " + room + " has no package-info.java", missing);
    }
  }

  private static String purpose(String room) {
    try {
      String text =
          Files.readString(Path.of("src/main/java/squaresheet", room, "package-info.java"));
      String javadoc = text.substring(text.indexOf("/**") + 3, text.indexOf("*/"));
      return Arrays.stream(javadoc.split("\n"))
          .map(line -> line.strip().replaceFirst("^\\* ?", ""))
          .filter(line -> !line.isBlank())
          .collect(Collectors.joining(" "));
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }
}
