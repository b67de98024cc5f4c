package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Finding;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;

/** Places where saving is harder than elsewhere: the file that was there stays whole, and one sentence says why. */
class SafePlacesTest {

  private static final Edit EDIT =
      new Edit.SetContent(Address.of("Planes", "B2"), new Content.Numeric(25.25));

  @TempDir
  Path folder;

  @AfterEach
  void open_the_folder_again() throws IOException {
    permit(folder, "rwxr-xr-x");
  }

  private static void permit(Path path, String permissions) throws IOException {
    if (Files.getFileStore(path).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(permissions));
    }
  }

  private static byte[] book() {
    return ZipParts.zip(Everything.parts());
  }

  private Path book(String name) throws IOException {
    return Files.write(folder.resolve(name), book());
  }

  private static List<String> edit(Path file) {
    return Xlsx.edit(file, List.of(EDIT)).findings().stream().map(Finding::says).toList();
  }

  private static List<String> names(Path in) throws IOException {
    try (Stream<Path> files = Files.list(in)) {
      return files.map(it -> it.getFileName().toString()).sorted().toList();
    }
  }

  /** The system itself refuses more bytes, as on a full disk. */
  @Test
  void where_no_more_bytes_can_be_written_the_file_stays_and_nothing_is_left_beside_it()
      throws IOException, InterruptedException {
    Path shell = Path.of("/bin/bash");
    assumeThat(Files.isExecutable(shell)).isTrue();
    Path file = book("job.xlsx");
    Process process = new ProcessBuilder(
            shell.toString(),
            "-c",
            "ulimit -f 4; exec \"$0\" \"$@\"",
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:-UsePerfData",
            "-Xmx256m",
            "-cp",
            System.getProperty("java.class.path"),
            Once.class.getName(),
            file.toString())
        .redirectErrorStream(true)
        .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(said.strip())
        .isEqualTo(
            "'job.xlsx' could not be saved (it is larger than is allowed there); nothing was changed");
    assertThat(file).hasBinaryContent(book());
    assertThat(names(folder)).containsExactly("job.xlsx");
  }

  @Test
  void a_folder_that_takes_no_files_is_said() throws IOException {
    Path file = book("job.xlsx");
    permit(folder, "r-xr-xr-x");
    assumeThat(Files.isWritable(folder)).as("may write anywhere").isFalse();
    assertThat(edit(file))
        .containsExactly(
            "'job.xlsx' must be writable, but access to it or its folder is denied; nothing was changed");
    assertThat(file).hasBinaryContent(book());
  }

  /** This folder of the system takes files from nobody, whatever a user may do elsewhere. */
  @Test
  void a_place_that_takes_files_from_nobody_is_said_in_one_line() throws IOException {
    Path nowhere = Path.of("/proc");
    assumeThat(Files.isDirectory(nowhere.resolve("self"))).isTrue();
    Path file = book("job.xlsx");
    List<String> said =
        Xlsx.edit(file, List.of(EDIT), nowhere.resolve("job.xlsx"), Existing.REFUSE)
            .findings()
            .stream()
            .map(Finding::says)
            .toList();
    assertThat(said).singleElement().asString().startsWith("'job.xlsx' ").doesNotContain("\n");
    assertThat(file).hasBinaryContent(book());
  }

  @Test
  void a_read_only_file_is_said() throws IOException {
    Path file = book("job.xlsx");
    permit(file, "r--r--r--");
    assumeThat(Files.isWritable(file)).as("may write anywhere").isFalse();
    assertThat(edit(file))
        .containsExactly("'job.xlsx' must be writable, but is read-only; nothing was changed");
    assertThat(file).hasBinaryContent(book());
  }

  /** A socket stands for all that has a name among files and is none: replacing a device would harm the whole machine. */
  @Test
  void what_is_no_file_is_neither_replaced_nor_read() throws IOException {
    Path file = book("job.xlsx");
    Path socket = folder.resolve("socket.xlsx");
    try (ServerSocketChannel open = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
      open.bind(UnixDomainSocketAddress.of(socket));
      for (Existing existing : List.of(Existing.REPLACE, Existing.KEEP_COPY)) {
        assertThat(Xlsx.edit(file, List.of(EDIT), socket, existing).findings())
            .extracting(Finding::says)
            .containsExactly(
                "'socket.xlsx' must be a file, but is a device or a pipe; nothing was changed");
      }
      assertThat(Xlsx.read(socket).findings())
          .extracting(Finding::says)
          .containsExactly("'socket.xlsx' must be a workbook file, but is a device or a pipe");
      assertThat(Files.readAttributes(socket, BasicFileAttributes.class).isOther())
          .isTrue();
    }
    assertThat(names(folder)).containsExactly("job.xlsx", "socket.xlsx");
  }

  @Test
  void a_link_stays_a_link_and_leads_to_the_new_version() throws IOException {
    Path shared = Files.createDirectory(folder.resolve("shared"));
    Path file = Files.write(shared.resolve("boat-house.xlsx"), book());
    Path link = Files.createSymbolicLink(folder.resolve("job.xlsx"), file);
    assertThat(edit(link)).isEmpty();
    assertThat(link).isSymbolicLink();
    assertThat(file).isRegularFile();
    assertThat(Xlsx.read(link)
            .value()
            .orElseThrow()
            .cell(Address.of("Planes", "B2"))
            .stored())
        .isEqualTo(new Content.Numeric(25.25));
    assertThat(shared.resolve("boat-house (previous 1).xlsx")).hasBinaryContent(book());
    assertThat(names(folder)).containsExactly("job.xlsx", "shared");
  }

  @Test
  void a_link_to_a_file_yet_to_come_stays_a_link() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("job.xlsx"), Path.of("later.xlsx"));
    assertThat(SafeFile.save(link, book(), Existing.KEEP_COPY).findings()).isEmpty();
    assertThat(link).isSymbolicLink();
    assertThat(folder.resolve("later.xlsx")).hasBinaryContent(book());
  }

  @Test
  void a_link_that_leads_to_itself_is_said() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("job.xlsx"), Path.of("job.xlsx"));
    assertThat(SafeFile.save(link, book(), Existing.KEEP_COPY).findings())
        .extracting(Finding::says)
        .containsExactly("'job.xlsx' is a link that leads nowhere");
  }

  @Test
  void a_file_on_another_file_system_than_that_of_passing_files_is_saved() throws IOException {
    Path memory = Path.of("/dev/shm");
    assumeThat(Files.isDirectory(memory) && Files.isWritable(memory)).isTrue();
    Path other = Files.createTempDirectory(memory, "squaresheet");
    Path file = Files.write(other.resolve("job.xlsx"), book());
    try {
      assertThat(edit(file)).isEmpty();
      assertThat(names(other)).containsExactly("job (previous 1).xlsx", "job.xlsx");
      assertThat(other.resolve("job (previous 1).xlsx")).hasBinaryContent(book());
    } finally {
      for (String name : names(other)) {
        Files.delete(other.resolve(name));
      }
      Files.delete(other);
    }
  }

  @Test
  void the_longest_names_are_saved_and_their_copies_get_shorter_ones() throws IOException {
    String longest = "a".repeat(250) + ".xlsx";
    Path file = book(longest);
    assertThat(edit(file)).isEmpty();
    assertThat(edit(file)).isEmpty();
    assertThat(names(folder))
        .containsExactly(
            "a".repeat(237) + " (previous 1).xlsx",
            "a".repeat(237) + " (previous 2).xlsx",
            longest);
    assertThat(folder.resolve("a".repeat(237) + " (previous 1).xlsx")).hasBinaryContent(book());
  }

  @Test
  void names_in_any_letters_are_saved() throws IOException {
    String name = "Dachfläche – 屋根 ½ 🏠.xlsx";
    Charset letters =
        Charset.forName(System.getProperty("sun.jnu.encoding", StandardCharsets.UTF_8.name()));
    assumeThat(letters.newEncoder().canEncode(name)).isTrue();
    Path file = book(name);
    assertThat(edit(file)).isEmpty();
    assertThat(names(folder)).containsExactly("Dachfläche – 屋根 ½ 🏠 (previous 1).xlsx", name);
  }

  @Test
  void a_copy_with_a_shorter_name_is_cut_between_letters() {
    assertThat(SafeFile.copyName("屋".repeat(83) + ".xlsx", 1))
        .isEqualTo("屋".repeat(79) + " (previous 1).xlsx");
    assertThat(SafeFile.copyName("🏠".repeat(62) + ".xlsx", 10))
        .isEqualTo("🏠".repeat(59) + " (previous 10).xlsx");
  }

  /** Edits a file in a program of its own, and prints what is said. */
  static final class Once {

    private Once() {}

    public static void main(String[] arguments) {
      edit(Path.of(arguments[0])).forEach(System.out::println);
    }
  }
}
