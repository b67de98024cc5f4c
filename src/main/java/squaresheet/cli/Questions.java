package squaresheet.cli;

import java.util.Optional;
import squaresheet.binding.AnyLayout;
import squaresheet.binding.Guess;
import squaresheet.finding.Read;

/** Asks the person at the terminal what unsure cells are. */
final class Questions implements AnyLayout.Asker {

  private final Console console;
  private boolean stopped;
  private boolean explained;

  Questions(Console console) {
    this.console = console;
  }

  @Override
  public Optional<Guess> ask(Guess guess) {
    if (stopped) {
      return Optional.empty();
    }
    explain();
    console.say("");
    console.say(guess.toString());
    while (true) {
      String answer = console.ask("  is it? ").orElse("stop").strip();
      if (answer.isEmpty() || answer.equals("-") || answer.matches("(?i)n|no")) {
        return Optional.empty();
      }
      if (answer.matches("(?i)stop|q|quit")) {
        stopped = true;
        return Optional.empty();
      }
      Optional<Guess> taken = taken(guess, answer);
      if (taken.isPresent()) {
        return taken;
      }
    }
  }

  private Optional<Guess> taken(Guess guess, String answer) {
    if (answer.equals("?")) {
      console.say("  it can be: " + String.join(", ", guess.choices()));
      return Optional.empty();
    }
    Read<Guess> read = guess.told(answer);
    read.findings().forEach(finding -> console.say("  " + finding.says()));
    return read.value().flatMap(this::withUnit);
  }

  /** Lengths and areas need a unit; without one they are not read where a cell holds a bare number. */
  private Optional<Guess> withUnit(Guess guess) {
    if (!guess.wantsUnit()) {
      return Optional.of(guess);
    }
    String unit = console
        .ask("  in which unit? (Enter: each cell says its own) ")
        .orElse("")
        .strip();
    if (unit.isEmpty()) {
      return Optional.of(guess);
    }
    Read<Guess> read = guess.told("y " + unit);
    read.findings().forEach(finding -> console.say("  " + finding.says()));
    return read.value();
  }

  private void explain() {
    if (!explained) {
      console.say(
          "Some cells are not sure. Answer y (yes), y and a unit (y ft), what it is (eave ft),");
      console.say("? (what it can be), Enter (leave it unbound) or stop.");
      explained = true;
    }
  }
}
