package squaresheet.binding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import squaresheet.sheet.Sheet;

/** The tables on the sheets of a workbook, each sheet looked over once, however many ask. */
final class SheetTables {

  private final String file;
  private final Map<String, List<FoundTable>> found = new HashMap<>();
  private final Map<String, Grid> grids = new HashMap<>();

  SheetTables(String file) {
    this.file = file;
  }

  Grid grid(Sheet sheet) {
    return grids.computeIfAbsent(sheet.name(), name -> new SheetGrid(file, sheet));
  }

  List<FoundTable> of(Sheet sheet) {
    return found.computeIfAbsent(sheet.name(), name -> TableFinder.find(grid(sheet)).stream()
        .map(FormulaEvidence::weigh)
        .toList());
  }
}
