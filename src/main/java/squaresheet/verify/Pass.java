package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import squaresheet.finding.Finding;

/** One run of the checks over a workbook. */
final class Pass {

  private final Book book;
  private final Subjects subjects;

  Pass(Book book) {
    this.book = book;
    subjects = Subjects.of(book);
  }

  Verdict run() {
    List<Tally> tallies = new ArrayList<>();
    List<Finding> said = new ArrayList<>(book.unreadable().values());
    for (Ask<?> ask : Checks.ofAnyWorkbook()) {
      Ask.Answer answer = ask.ask(subjects, book.file());
      tallies.add(answer.tally());
      said.addAll(answer.findings());
    }
    List<Finding> kept = new Folding(book).fold(said);
    return new Verdict(book.file(), kept, tallies);
  }
}
