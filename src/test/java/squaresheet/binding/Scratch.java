package squaresheet.binding;
import java.nio.file.*;
import java.util.*;
import squaresheet.finding.*;
import squaresheet.product.*;
import squaresheet.roof.*;
import squaresheet.sheet.*;
import squaresheet.takeoff.*;
class Scratch { 
  static JobParts parts() throws Exception {
    Read<FieldNotes> read = FieldSheet.read(Files.readString(Path.of("demo-data/tape-sheet.csv")), "tape-sheet.csv", Locale.ENGLISH);
    FieldNotes notes = read.value().orElseThrow();
    Roof roof = Roof.resolve(notes.roof()).value().orElseThrow();
    Catalogue c = Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow();
    Map<String,String> labels = new LinkedHashMap<>(); labels.put("Job name", "Alder Lane house"); labels.put("Measured by","Foreman");
    return new JobParts(labels, notes.roof(), roof, Optional.of(notes), c, Selection.firstOfEach(c), Rulebook.standard(), Map.of());
  }
  @org.junit.jupiter.api.Test void demo() throws Exception {
    Draft d = new JobWriter(parts()).write();
    squaresheet.xlsx.Xlsx.write(d, Path.of("/tmp/job.xlsx"), squaresheet.xlsx.Existing.REPLACE);
    Workbook w = d.workbook();
    for (Sheet s : w.sheets()) { System.out.println("== "+s.name()); s.cells().filter(p->p.cell().isFormula()).filter(p-> !(p.cell().stored() instanceof Content.Numeric) ).limit(12).forEach(p->System.out.println(p.ref()+" "+p.cell().stored()+" ="+p.cell().formula())); }
  }
}
