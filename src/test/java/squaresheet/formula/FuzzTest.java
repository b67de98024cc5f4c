package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Read;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;
import squaresheet.units.Unit;

/**
 * Whatever is typed is read or refused with a sentence, in bounded time, and what is read can be printed, moved, evaluated,
 * explained and looked through for units. Seconds in the build, ten minutes with the profile {@code fuzz}.
 */
class FuzzTest {

  private static final List<String> PIECES = List.of(
      "(",
      ")",
      "((",
      "))",
      ",",
      ";",
      ":",
      "!",
      "#",
      "$",
      "%",
      "&",
      "'",
      "\"",
      "*",
      "+",
      "-",
      "--",
      "/",
      "<",
      "<=",
      "<>",
      "=",
      ">",
      "@",
      "[",
      "]",
      "[[",
      "{",
      "}",
      "^",
      " ",
      "  ",
      ".",
      "1",
      "2",
      "12",
      "0.1",
      "1E5",
      "1e-400",
      "A1",
      "$B$7",
      "B7:D9",
      "A:A",
      "2:3",
      "Planes!",
      "'Main roof'!",
      "[1]Book!A1",
      "SUM(",
      "IF(",
      "ROUNDUP(",
      "VLOOKUP(",
      "SUMPRODUCT(",
      "TEXT(",
      "INDEX(",
      "CEILING(",
      "MOD(",
      "REPT(",
      "DATE(",
      "net_area",
      "waste_rate",
      "TRUE",
      "\"x\"",
      "\"7\"",
      "#REF!",
      "#N/A",
      "Lines[Length]",
      "[@Length]",
      "{1,2;3,4}",
      "_xlfn.IFS(",
      "é",
      "²",
      "“",
      "\n",
      "\u0000",
      "\ud83c\udfe0",
      "XFD1048576",
      "A99999999",
      "ZZZZ1",
      "1:1048576",
      "TRANSPOSE(",
      "XLOOKUP(",
      "POWER(");

  private static final Labels LABELS = new Labels() {
    @Override
    public Optional<Unit> unit(Address cell) {
      return Optional.of(Unit.parse(cell.ref().column() % 2 == 0 ? "ft" : "$/bundle"));
    }
  };

  @Test
  void nothing_typed_breaks_the_reader_or_what_follows_it() {
    long seconds = Long.getLong("squaresheet.fuzz.seconds", 5);
    long end = System.nanoTime() + Duration.ofSeconds(seconds).toNanos();
    Random random = new Random(20_260_501);
    long tried = 0;
    long read = 0;
    while (System.nanoTime() < end) {
      String text = text(random);
      tried++;
      try {
        read += follow(text) ? 1 : 0;
      } catch (Throwable uncaught) {
        throw new AssertionError("'" + text + "' must be read or refused, but threw", uncaught);
      }
    }
    assertThat(tried).isGreaterThan(1000);
    assertThat(read).as("texts that were formulas").isGreaterThan(tried / 200);
  }

  private static String text(Random random) {
    StringBuilder text = new StringBuilder();
    int pieces = 1 + random.nextInt(random.nextInt(50) == 0 ? 600 : 14);
    for (int i = 0; i < pieces; i++) {
      text.append(PIECES.get(random.nextInt(PIECES.size())));
      if (random.nextInt(40) == 0) {
        text.append((char) random.nextInt(0x2100));
      }
    }
    if (random.nextBoolean()) {
      int open = (int) text.chars().filter(c -> c == '(').count();
      int close = (int) text.chars().filter(c -> c == ')').count();
      text.append(")".repeat(Math.max(0, open - close)));
    }
    return text.toString();
  }

  /** Whether the text was a formula. */
  private static boolean follow(String text) {
    Read<Formula> read = Formula.parse(text);
    if (read.value().isEmpty()) {
      assertThat(read.findings()).hasSize(1);
      assertThat(Formula.diagnose(text).split("\n")).hasSize(3);
      return false;
    }
    Formula formula = read.value().get();
    assertThat(Formula.parse(formula.toString()).value()).contains(formula);
    formula.filled(Ref.parse("B2"), Ref.parse("D9"));
    formula.relative(Ref.parse("B2"));
    Scope scope = new Cells();
    Value value = formula.evaluate(scope);
    assertThat(value).isNotNull();
    formula.evaluateArray(scope);
    formula.explain("B2", scope, LABELS);
    Inference.of(formula, scope, LABELS, Optional.empty());
    IntervalWalk.of(formula, scope, key -> Optional.of(new Interval(1, 2)));
    return true;
  }

  @Test
  void the_longest_texts_take_no_longer_than_a_second() {
    List<String> longest = List.of(
        "-".repeat(8191) + "1",
        "(".repeat(8192),
        "((((".repeat(2048),
        "1" + "+1".repeat(4095),
        "A1:".repeat(2730) + "A1",
        "A".repeat(8192),
        "{" + "1,".repeat(4095) + "1",
        "[".repeat(8192),
        "'".repeat(8192),
        "\"".repeat(8192),
        "IF(1,".repeat(1600),
        "A1 ".repeat(2730) + "A1",
        "1%".repeat(4000),
        "SUM(" + "A1,".repeat(2700) + "A1)",
        "9".repeat(8192),
        "$".repeat(8192),
        "A!".repeat(4096));
    for (String text : longest) {
      Assertions.assertTimeout(
          Duration.ofSeconds(1), () -> follow(text), () -> text.substring(0, 20));
    }
  }

  private static final class Cells implements Scope {
    @Override
    public Value cell(Address cell) {
      return switch ((cell.ref().row() + cell.ref().column()) % 6) {
        case 0 -> new Value.Number(12.5);
        case 1 -> new Value.Text("7");
        case 2 -> new Value.Truth(true);
        case 3 -> new Value.Fault("#DIV/0!");
        case 4 -> new Value.Number(-3);
        default -> new Value.Blank();
      };
    }

    @Override
    public Optional<squaresheet.sheet.Block> used(String sheet) {
      return Optional.of(squaresheet.sheet.Block.parse("A1:J40"));
    }

    @Override
    public Value names(String name) {
      return Value.Matrix.column(List.of(new Value.Number(1), new Value.Number(2)));
    }

    @Override
    public Optional<Address> here() {
      return Optional.of(Address.of("Sheet1", "B2"));
    }
  }
}
