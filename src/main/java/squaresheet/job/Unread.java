package squaresheet.job;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import squaresheet.finding.Where;

/**
 * Something on the tape sheet that is not in the job because it could not be read, and what a person answers to that.
 *
 * @param where its place on the tape sheet
 * @param kind what it is a row of
 * @param name what it is called there, or empty
 * @param written its cells as written, blank ones left out
 * @param understood what was understood of it, in words
 * @param why what kept it from being read
 * @param answer what has become of it
 * @param reason why it is left out, or the name it was typed under where that is another one; may be empty
 */
public record Unread(
    String where,
    Kind kind,
    String name,
    List<String> written,
    String understood,
    String why,
    Answer answer,
    String reason) {

  public Unread {
    name = name.strip();
    written = List.copyOf(written);
    reason = reason.strip();
  }

  /** Not answered yet. */
  public static Unread of(
      Where where, Kind kind, String name, List<String> written, String understood, String why) {
    return new Unread(where.toString(), kind, name, written, understood, why, Answer.NONE, "");
  }

  /** What it is a row of, what is missed most first. Text form: the lower-case word. */
  public enum Kind {
    /** A plane. */
    PLANE,
    /** Something cut out of a plane. */
    OPENING,
    /** A corner of a plane. */
    CORNER,
    /** Readings outside every table. */
    ROW,
    /** A setting of the job. */
    SETTING,
    /** An edge that was taped once more. */
    EDGE;

    /** The kind with this word. */
    public static Optional<Kind> from(String word) {
      return List.of(values()).stream()
          .filter(kind -> kind.toString().equals(word.strip().toLowerCase(Locale.ROOT)))
          .findFirst();
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What has become of it. Text form: the words. */
  public enum Answer {
    /** Nothing was answered. */
    NONE(""),
    /** It stands in the workbook now. */
    TYPED("typed after all"),
    /** It is no part of the job; the reason says why. */
    LEFT_OUT("left out on purpose");

    private final String words;

    Answer(String words) {
      this.words = words;
    }

    /** The answer of these words; empty where they are none. */
    public static Optional<Answer> from(String text) {
      String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
      return List.of(values()).stream().filter(it -> it.words.equals(plain)).findFirst();
    }

    /** The answers a person can give. */
    public static List<String> words() {
      return List.of(TYPED.words, LEFT_OUT.words);
    }

    @Override
    public String toString() {
      return words;
    }
  }

  /** The same with what a person answered. */
  public Unread answered(Answer said, String because) {
    return new Unread(where, kind, name, written, understood, why, said, because);
  }

  /** Whether it still keeps the job from being ordered: without an answer, or left out without a reason. */
  public boolean isOpen() {
    return answer == Answer.NONE || (answer == Answer.LEFT_OUT && reason.isEmpty());
  }

  /** {@code plane Front}, or {@code plane without a name}. */
  public String subject() {
    return kind + (name.isEmpty() ? " without a name" : " " + name);
  }

  /** Those that are open, what is missed most first. */
  public static List<Unread> open(List<Unread> all) {
    return all.stream()
        .filter(Unread::isOpen)
        .sorted(Comparator.comparing(Unread::kind))
        .toList();
  }

  /** {@code plane Front and 6 more rows are missing}; empty where nothing is open. */
  public static String sentence(List<Unread> all) {
    List<Unread> open = open(all);
    if (open.isEmpty()) {
      return "";
    }
    int more = open.size() - 1;
    return open.get(0).subject()
        + (more == 0
            ? " is missing"
            : " and " + more + (more == 1 ? " more row" : " more rows") + " are missing");
  }
}
