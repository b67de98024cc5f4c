package squaresheet.binding;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
import squaresheet.finding.Where;

/** What a person says a cell is: a table, a property and a unit, most of which may stay away. */
final class Told {

  private final Guess guess;
  private final String words;

  private Told(Guess guess, String words) {
    this.guess = guess;
    this.words = words.strip();
  }

  static Read<Guess> of(Guess guess, String words) {
    return new Told(guess, words).read();
  }

  /** Takes as many words from the left as make a property; the rest is a unit. */
  private Read<Guess> read() {
    String[] parts = words.split("\\s+");
    for (int taken = parts.length; taken > 0; taken--) {
      String name = String.join("_", Arrays.copyOfRange(parts, 0, taken)).toLowerCase(Locale.ROOT);
      String rest = String.join(" ", Arrays.copyOfRange(parts, taken, parts.length));
      Optional<Meaning> meaning = meaning(name);
      if (meaning.isPresent()) {
        return with(meaning.get(), rest.replaceFirst("^in ", ""));
      }
    }
    return refused("it must be y, or one of what it can be, but is '" + words + "'"
        + Neighbours.sentence(words, guess.choices()));
  }

  private Optional<Meaning> meaning(String name) {
    if (List.of("y", "yes").contains(name)) {
      return Words.find(guess.table(), guess.property());
    }
    int dot = name.indexOf('.');
    boolean job = guess.table().equals("job");
    return dot < 0
        ? Words.find(guess.table(), name)
        : Words.find(name.substring(0, dot), name.substring(dot + 1))
            .filter(it -> it.table().equals("job") == job);
  }

  private Read<Guess> with(Meaning meaning, String unit) {
    if (unit.isEmpty()) {
      boolean same = meaning.holds()
          == Words.find(guess.table(), guess.property()).map(Meaning::holds).orElse(Holds.TEXT);
      return Read.of(guess.as(meaning.table(), meaning.property(), same ? guess.unit() : ""));
    }
    Optional<UnitWord> known = UnitWords.find(unit);
    if (known.isEmpty()) {
      return refused("no unit '" + unit + "'" + Neighbours.sentence(unit, UnitWords.symbols()));
    }
    return meaning.holds().takes(known.get().kind())
        ? Read.of(guess.as(meaning.table(), meaning.property(), known.get().toString()))
        : refused(meaning.inWords() + " cannot be in " + known.get());
  }

  private Read<Guess> refused(String sentence) {
    return Read.nothing(Complaint.MAPPING_LINE.at(new Where.InCell("", guess.at()), sentence));
  }
}
