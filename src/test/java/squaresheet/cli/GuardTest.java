package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;

/** What goes wrong at one file names it and leaves the others alone. */
class GuardTest {

  @TempDir
  Path folder;

  @Test
  void whatever_is_thrown_becomes_a_finding_at_the_file() {
    List<Supplier<String>> broken = List.of(
        () -> {
          throw new IllegalStateException("no value present");
        },
        () -> {
          throw new StackOverflowError();
        },
        () -> {
          throw new OutOfMemoryError();
        },
        () -> {
          throw new CannotBeDone(Exit.FAILED, "it could not be done");
        });
    for (Supplier<String> work : broken) {
      Read<String> read = Guard.over("a.xlsx", () -> Read.of(work.get()));
      assertThat(read.value()).isEmpty();
      assertThat(read.findings()).singleElement().matches(Finding::isError);
      assertThat(read.findings().get(0).where().toString()).isEqualTo("a.xlsx");
      assertThat(read.findings().get(0).says()).startsWith("it could not be done");
    }
    assertThat(Guard.over("a.xlsx", () -> Read.of("done")).value()).contains("done");
  }

  @Test
  void the_files_behind_one_that_cannot_be_read_are_still_gone_through() throws IOException {
    Path bad = Files.writeString(folder.resolve("bad.xlsx"), "no workbook");
    for (String command : new String[] {"verify", "totals"}) {
      Ran ran = Ran.of(command, bad.toString(), "demo-data/birch-court.xlsx");
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.out()).contains("bad.xlsx", "birch-court.xlsx");
    }
  }

  @Test
  void every_command_names_the_file_it_could_not_take() throws IOException {
    Path bad = Files.writeString(folder.resolve("bad.xlsx"), "no workbook");
    List<List<String>> commands = List.of(
        List.of("verify"),
        List.of("totals"),
        List.of("mark"),
        List.of("correct"),
        List.of("bind"),
        List.of("draw"),
        List.of("readings"),
        List.of("import", "--company", "demo-data"),
        List.of("fill", "--from", "demo-data/tape-sheet.csv"),
        List.of("explain", "Planes!B3"));
    for (List<String> command : commands) {
      List<String> args = new java.util.ArrayList<>(command);
      args.add(1, bad.toString());
      Ran ran = Ran.of(args.toArray(String[]::new));
      assertThat(ran.exit()).as(command.toString()).isIn(1, 2);
      assertThat(ran.all()).as(command.toString()).contains("bad.xlsx");
    }
  }
}
