package squaresheet.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import squaresheet.binding.AnyLayout;
import squaresheet.binding.BookUnits;
import squaresheet.formula.Calculation;
import squaresheet.formula.Labels;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;

/** Tells how a cell of a workbook came to its value. */
@Command(
    name = "explain",
    description = "Tell, step by step, how the formula in a cell comes to its value.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet explain alder-lane.job.xlsx shingle_bundles"})
final class ExplainCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "WORKBOOK", description = "The workbook.")
  private Path file;

  @Parameters(
      index = "1",
      paramLabel = "CELL",
      description =
          "The cell, such as Takeoff!C12 or 'Main roof'!B7, or a defined name that stands for one.")
  private String cell;

  @Mixin
  private CompanyOption company;

  ExplainCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Workbook workbook = AnyLayout.withoutNotes(Books.read(file).value().orElseThrow());
    Address address = address(workbook);
    Calculation calculation = Calculation.of(Books.name(file), workbook);
    Labels labels = BookUnits.of(workbook, Books.name(file), company.rulebook(console));
    List<String> lines = calculation.explain(address, labels);
    if (lines.isEmpty()) {
      console.say(address + withoutSteps(calculation.value(address)));
    }
    lines.forEach(console::say);
    return Exit.FINE.code();
  }

  private static String withoutSteps(Value value) {
    String formula = value instanceof Value.NotChecked ? "" : " holds no formula; it";
    return formula + " is " + value.show();
  }

  private Address address(Workbook workbook) {
    Optional<Address> found = workbook
        .name(cell)
        .map(name -> name.text())
        .or(() -> Optional.of(cell))
        .flatMap(text -> parsed(text, workbook));
    return found
        .filter(at -> workbook.sheet(at.sheet()).isPresent())
        .orElseThrow(() -> new CannotBeDone(
            Exit.WRONG_USE,
            "the cell must read like Takeoff!C12 or be a defined name of one cell, but '" + cell
                + "' is neither in " + Books.name(file)));
  }

  /** A cell alone is meant on the only sheet. */
  private static Optional<Address> parsed(String text, Workbook workbook) {
    int mark = text.lastIndexOf('!');
    try {
      String sheet = mark < 0 && workbook.sheets().size() == 1
          ? workbook.sheets().get(0).name()
          : text.substring(0, Math.max(mark, 0)).replaceAll("^'|'$", "").replace("''", "'");
      return Optional.of(new Address(sheet, Ref.parse(text.substring(mark + 1).replace("$", ""))));
    } catch (IllegalArgumentException notACell) {
      return Optional.empty();
    }
  }
}
