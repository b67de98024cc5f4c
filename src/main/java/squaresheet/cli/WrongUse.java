package squaresheet.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import squaresheet.finding.Neighbours;

/** What is wrong with a command as it was given, in words of our own. */
final class WrongUse {

  private WrongUse() {}

  static String says(ParameterException wrong) {
    if (wrong instanceof MissingParameterException missing) {
      return missing.getMissing().stream().map(WrongUse::missing).collect(Collectors.joining("; "));
    }
    if (wrong instanceof UnmatchedArgumentException unmatched
        && !unmatched.getUnmatched().isEmpty()) {
      return unmatched(unmatched.getUnmatched().get(0), wrong.getCommandLine().getCommandSpec());
    }
    if (wrong instanceof OverwrittenOptionException twice) {
      return name(twice.getOverwritten()) + " must be given once, but is given twice";
    }
    ArgSpec arg = wrong.getArgSpec();
    return arg == null
        ? "the command must be one that can be understood, but is not"
        : name(arg) + must(arg, wrong.getValue());
  }

  private static String missing(ArgSpec arg) {
    return arg.isOption()
        ? name(arg) + " must be given with " + arg.paramLabel() + " behind it, but is not"
        : name(arg) + " must be given, but is not";
  }

  private static String unmatched(String word, CommandSpec spec) {
    boolean option = word.startsWith("-");
    List<String> known = new ArrayList<>();
    if (option) {
      spec.options().forEach(each -> known.addAll(List.of(each.names())));
    } else {
      known.addAll(spec.subcommands().keySet());
    }
    String what = option
        ? "no option '"
        : known.isEmpty() ? "nothing more must be given, but '" : "no command '";
    return what + word + "'"
        + (option || !known.isEmpty() ? Neighbours.sentence(word, known) : " is");
  }

  private static String name(ArgSpec arg) {
    return arg.isOption() ? ((OptionSpec) arg).longestName() : arg.paramLabel();
  }

  private static String must(ArgSpec arg, String value) {
    Object[] constants = arg.type().getEnumConstants();
    String given = value == null ? "" : ", but is '" + value + "'";
    return constants == null
        ? " must be given as --help says" + given
        : " must be "
            + Arrays.stream(constants)
                .map(it -> it.toString().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" or "))
            + given;
  }
}
