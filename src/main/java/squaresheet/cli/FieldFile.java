package squaresheet.cli;

import java.nio.file.Path;
import java.util.Locale;
import squaresheet.binding.FieldNotes;
import squaresheet.binding.FieldSheet;
import squaresheet.finding.Read;
import squaresheet.takeoff.Rulebook;

/** Reads a filled field sheet, whichever of the two kinds of file it is. */
final class FieldFile {

  private FieldFile() {}

  static Read<FieldNotes> read(Path file, Locale locale, Rulebook rulebook) {
    String name = Books.name(file);
    return TextFile.isOne(file)
        ? FieldSheet.read(TextFile.read(file), name, locale, rulebook)
        : Books.read(file).flatMap(workbook -> FieldSheet.read(workbook, name, locale, rulebook));
  }
}
