package squaresheet.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import squaresheet.finding.Neighbours;

/** Reads the name of a language and a country, which says how numbers are written there. */
final class WrittenLocale {

  private WrittenLocale() {}

  /** The locale of a name such as {@code de-DE}, {@code de_DE} or {@code de}, which must be of a language and a country there are. */
  static Locale of(String text) {
    try {
      Locale locale =
          new Locale.Builder().setLanguageTag(text.strip().replace('_', '-')).build();
      boolean language = Arrays.asList(Locale.getISOLanguages()).contains(locale.getLanguage());
      boolean country = locale.getCountry().isEmpty()
          || Arrays.asList(Locale.getISOCountries()).contains(locale.getCountry());
      if (language && country) {
        return locale;
      }
    } catch (IllformedLocaleException noName) {
      // Said below, with those that are spelled well and mean nothing.
    }
    throw new CannotBeDone(
        Exit.WRONG_USE,
        "--locale must be a language and a country such as en-US or de-DE, but is '" + text + "'"
            + Neighbours.sentence(text, known()));
  }

  private static List<String> known() {
    List<String> known = new ArrayList<>();
    for (Locale each : Locale.getAvailableLocales()) {
      if (!each.getCountry().isEmpty()
          && each.getVariant().isEmpty()
          && each.getScript().isEmpty()) {
        known.add(each.toLanguageTag());
      }
    }
    return known;
  }
}
