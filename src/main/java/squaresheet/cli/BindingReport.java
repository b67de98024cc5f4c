package squaresheet.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.binding.AnyLayout;
import squaresheet.binding.BoundBook;
import squaresheet.binding.Guess;
import squaresheet.sheet.Content;
import squaresheet.sheet.Workbook;

/** Shows what of a workbook is bound, how sure that is and why, what is not sure, and what is not bound. */
final class BindingReport {

  private final Console console;
  private final Workbook workbook;

  BindingReport(Console console, Workbook workbook) {
    this.console = console;
    this.workbook = workbook;
  }

  void say(AnyLayout layout) {
    list("Bound:", layout.bound());
    list("Not sure, so not bound until you say:", layout.questions());
    BoundBook read = layout.read();
    console.say("");
    console.say("How much of each part is bound:");
    read.coverage().forEach(part -> console.say("  " + part));
    if (!read.findings().isEmpty()) {
      console.say("");
      console.say("Not bound, or not read; not checked:");
      read.findings().forEach(it -> console.say("  " + it.where() + ": " + it.says()));
    }
    console.say("");
  }

  private void list(String title, List<Guess> guesses) {
    if (guesses.isEmpty()) {
      return;
    }
    console.say("");
    console.say(title);
    groups(guesses).forEach((group, members) -> {
      console.say("  " + group);
      members.forEach(guess -> console.say(line(guess)));
    });
  }

  private static Map<String, List<Guess>> groups(List<Guess> guesses) {
    Map<String, List<Guess>> groups = new LinkedHashMap<>();
    guesses.forEach(guess -> groups
        .computeIfAbsent(
            guess.isHeading()
                ? "table of " + guess.table() + " on " + guess.at().sheet()
                : "single values",
            key -> new ArrayList<>())
        .add(guess));
    return groups;
  }

  private String line(Guess guess) {
    String unit = guess.unit().isEmpty() ? "" : ", " + guess.unit();
    String place = guess.isHeading() ? guess.at().ref().toString() : guess.at().toString();
    return String.format(
        "    %-12s %-28s %-26s %3d %%  %s",
        place, written(guess), guess.inWords() + unit, Math.round(guess.sure() * 100), guess.why());
  }

  /** What stands in the cell, in quotes, cut where it is long. */
  private String written(Guess guess) {
    Content content = workbook.cell(guess.at()).stored();
    String text = content instanceof Content.Text words
        ? "'" + words.value().strip().replaceAll("\\s+", " ") + "'"
        : content instanceof Content.Numeric number ? String.valueOf(number.value()) : "";
    return text.length() > 28 ? text.substring(0, 26) + "…'" : text;
  }
}
