package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;

/** Every job is added up once, and what is not is said: copies, the same file again, the same job again, what cannot be read. */
class TotalsTest {

  private static final String ONE = "total of 1 job: 10,151.79 USD";

  @TempDir
  static Path made;

  private static Path job;

  @TempDir
  Path folder;

  private Path alder;

  @BeforeEach
  void job() throws IOException {
    if (job == null) {
      job = JobFile.imported(made.resolve("alder.xlsx")).path();
    }
    alder = Files.copy(job, folder.resolve("alder.xlsx"));
  }

  private Path copy(String name) throws IOException {
    return Files.copy(job, folder.resolve(name));
  }

  private static Ran totals(Object... args) {
    return Ran.of(Stream.concat(Stream.of("totals"), Stream.of(args).map(Object::toString))
        .toArray(String[]::new));
  }

  /** A cell of another job's name, number or customer. */
  private static void type(Path file, String name, String text) {
    JobFile book = new JobFile(file);
    book.type(book.at(name, 0), text);
  }

  @Test
  void our_own_copies_and_locks_are_left_out_and_said() throws IOException {
    List<String> copies = List.of(
        "alder (previous 1).xlsx",
        "alder.marked.xlsx",
        "alder.corrected.xlsx",
        "alder.marked (previous 2).xlsx",
        "alder (previous 1).marked.xlsx");
    for (String name : copies) {
      copy(name);
    }
    Files.writeString(folder.resolve("~$alder.xlsx"), "someone");
    Files.writeString(folder.resolve(".~lock.alder.xlsx#"), "someone");
    try (Stream<Path> all = Files.list(folder)) {
      Ran named = totals(all.sorted().toArray());
      Ran whole = totals(folder);
      assertThat(named.exit()).as(named.all()).isZero();
      for (Ran ran : List.of(named, whole)) {
        assertThat(ran.out()).contains(ONE);
        assertThat(ran.out().lines().filter(line -> line.startsWith("left out: ")))
            .hasSize(7);
        copies.forEach(name -> assertThat(ran.out()).contains(name + ": a copy of ours of alder"));
      }
    }
  }

  @Test
  void a_copy_of_ours_is_taken_where_what_it_is_a_copy_of_is_gone() throws IOException {
    Path corrected = Files.move(alder, folder.resolve("alder.corrected.xlsx"));
    assertThat(totals(corrected).out()).contains(ONE);
    assertThat(Ran.of("verify", corrected.toString()).exit()).isZero();
  }

  @Test
  void where_only_copies_were_given_nothing_is_given() throws IOException {
    Ran ran = totals(copy("alder (previous 1).xlsx"));
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out()).contains("no workbook is left to add up").doesNotContain("total of");
  }

  @Test
  void the_same_file_by_another_path_is_counted_once() throws IOException {
    Path other = Files.createDirectory(folder.resolve("in")).resolve("..").resolve("alder.xlsx");
    Path link = Files.createSymbolicLink(folder.resolve("linked.xlsx"), alder);
    for (Object again : new Object[] {alder, other, link}) {
      Ran ran = totals(alder, again);
      assertThat(ran.exit()).isEqualTo(3);
      assertThat(ran.out()).contains(ONE, "is the same file as", "file-given-twice");
    }
  }

  @Test
  void the_same_bytes_are_counted_once_under_the_shorter_name() throws IOException {
    Ran ran = totals(copy("Copy of alder.xlsx"), alder);
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out())
        .contains(
            ONE,
            "Alder Lane house,alder.xlsx,USD",
            "withheld: Copy of alder.xlsx: holds the same as alder.xlsx, byte for byte",
            "a job number or another job name");
  }

  @Test
  void the_same_job_in_two_files_is_withheld_until_told_apart() throws IOException {
    Path other = copy("barn.xlsx");
    type(other, "job_measured_by", "Somebody else");
    Ran same = totals(alder, other);
    assertThat(same.exit()).isEqualTo(3);
    assertThat(same.out())
        .doesNotContain("total of")
        .contains(
            "withheld: alder.xlsx: is the job Alder Lane house, which stands in barn.xlsx too",
            "withheld: barn.xlsx: is the job Alder Lane house, which stands in alder.xlsx too",
            "tell them apart by a job number or another job name");
    type(other, "job_number", "W14");
    Ran apart = totals(alder, other);
    assertThat(apart.exit()).as(apart.all()).isZero();
    assertThat(apart.out())
        .contains("total of 2 jobs: 20,303.58 USD", "\"Alder Lane house, W14\",barn.xlsx");
    type(other, "job_number", "");
    type(other, "job_name", "ALDER  lane House");
    assertThat(totals(alder, other).exit()).isEqualTo(3);
    type(other, "job_name", "Barn");
    assertThat(totals(alder, other).exit()).isZero();
  }

  @Test
  void a_workbook_without_a_job_name_goes_by_its_file_however_often_copied() throws IOException {
    Path bid = Files.copy(Path.of("demo-data/birch-court.xlsx"), folder.resolve("bid.xlsx"));
    for (String name : List.of("Copy of bid.xlsx", "bid - Copy.xlsx", "bid (2).xlsx")) {
      Path copy = Files.copy(bid, folder.resolve(name));
      new JobFile(copy).edit(new Edit.SetContent(Address.of("Bid", "A1"), new Content.Text(name)));
      assertThat(totals(bid, copy).out()).contains("which stands in", name);
    }
    Path elsewhere = Files.createDirectory(folder.resolve("elm")).resolve("bid.xlsx");
    Files.copy(bid, elsewhere);
    new JobFile(elsewhere)
        .edit(new Edit.SetContent(Address.of("Bid", "A1"), new Content.Text("Elm")));
    assertThat(totals(bid, elsewhere).out()).contains("total of 2 jobs");
  }

  @Test
  void what_cannot_be_read_stands_in_the_list_and_stops_nothing() throws IOException {
    Path bad = Files.writeString(folder.resolve("bad.xlsx"), "no workbook");
    Path old = Files.writeString(folder.resolve("old.xls"), "no workbook");
    Path out = folder.resolve("sums.csv");
    Ran ran = totals(folder, folder.resolve("gone.xlsx"), "-o", out);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).contains(ONE);
    assertThat(Files.readString(folder.resolve("sums-withheld.csv")))
        .contains(Books.name(bad), Books.name(old), "gone.xlsx")
        .contains("workbook-not-read");
  }

  @Test
  void an_old_list_of_what_was_withheld_does_not_stay_beside_new_totals() throws IOException {
    Path out = folder.resolve("sums.csv");
    Path list = folder.resolve("sums-withheld.csv");
    Path bad = Files.writeString(folder.resolve("bad.xlsx"), "no workbook");
    totals(alder, bad, "-o", out);
    String before = Files.readString(list);
    Files.delete(out);
    Ran refused = totals(alder, "-o", out);
    assertThat(refused.exit()).isEqualTo(1);
    assertThat(refused.err()).contains("'sums-withheld.csv' is there already");
    assertThat(out).doesNotExist();
    Ran forced = totals(alder, "-o", out, "--force");
    assertThat(forced.exit()).as(forced.all()).isZero();
    assertThat(Files.readString(list).strip()).isEqualTo("file,place,check,why");
    assertThat(Files.readString(folder.resolve("sums-withheld (previous 1).csv")))
        .isEqualTo(before);
  }

  @Test
  void a_folder_is_its_workbooks_and_what_lies_deeper_is_said() throws IOException {
    Path deeper = Files.createDirectory(folder.resolve("2025"));
    Files.copy(job, deeper.resolve("elm.xlsx"));
    Files.writeString(folder.resolve("notes.txt"), "to do");
    Ran ran = totals(folder);
    assertThat(ran.exit()).as(ran.all()).isZero();
    assertThat(ran.out()).contains(ONE, "left out: " + deeper + ": a folder within a folder");
    Ran empty = totals(Files.createDirectory(folder.resolve("empty")));
    assertThat(empty.exit()).isEqualTo(3);
    assertThat(empty.out()).contains("a folder without a workbook");
    assertThat(Ran.of("verify", folder.toString()).out()).contains("alder.xlsx: 0 findings");
  }
}
