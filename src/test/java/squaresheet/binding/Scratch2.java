package squaresheet.binding;
import java.nio.file.*;
import java.util.*;
import squaresheet.sheet.*;
class Scratch2 { 
  @org.junit.jupiter.api.Test void compare() throws Exception {
    Draft d = new JobWriter(Scratch.parts()).write();
    Map<Address, Content> ours = new LinkedHashMap<>();
    for (DraftSheet s : d.sheets()) for (var e : s.entries().entrySet()) if (!e.getValue().formula().isEmpty()) ours.put(new Address(s.name(), e.getKey()), e.getValue().stored());
    for (DraftSheet s : d.sheets()) for (var e : Map.copyOf(s.entries()).entrySet()) if (!e.getValue().formula().isEmpty()) s.put(e.getKey(), new DraftSheet.Entry(new Content.Blank(), e.getValue().formula(), e.getValue().role(), e.getValue().format()));
    Files.createDirectories(Path.of("/tmp/bw/lo"));
    squaresheet.xlsx.Xlsx.write(d, Path.of("/tmp/bw/lo/bare.xlsx"), squaresheet.xlsx.Existing.REPLACE);
    Process p = new ProcessBuilder("timeout","120","soffice","-env:UserInstallation=file:///tmp/bw/lop","--headless","--convert-to","xlsx:Calc MS Excel 2007 XML","--outdir","/tmp/bw/lo/out","/tmp/bw/lo/bare.xlsx").inheritIO().start(); p.waitFor();
    Workbook w = squaresheet.xlsx.Xlsx.read(Path.of("/tmp/bw/lo/out/bare.xlsx")).value().orElseThrow();
    int bad = 0, n = 0;
    for (var e : ours.entrySet()) { Content lo = w.cell(e.getKey()).stored(); n++;
      boolean same = lo.equals(e.getValue()) || (lo instanceof Content.Numeric a && e.getValue() instanceof Content.Numeric b && Math.abs(a.value()-b.value()) <= 1e-9*Math.max(1,Math.abs(b.value())))
         || (lo.isBlank() && e.getValue() instanceof Content.Text t && t.value().isEmpty());
      if (!same && bad++ < 40) System.out.println(e.getKey()+" ours "+e.getValue()+" LO "+lo + "  ="+d.find(e.getKey().sheet()).get().entry(e.getKey().ref()).get().formula()); }
    System.out.println(n+" cells, "+bad+" differ");
    // against the takeoff
    var t = squaresheet.takeoff.Takeoff.of(Scratch.parts().rulebook(), squaresheet.takeoff.Names.of(Scratch.parts().roof()), Scratch.parts().selection());
    System.out.println(t.findings().size());
    for (var r : Scratch.parts().rulebook().rules()) if (r.per()==squaresheet.takeoff.Rule.Per.JOB) {
      var name = d.names().stream().filter(x->x.name().equals(r.name())).findFirst(); if (name.isEmpty()) {System.out.println("no name "+r.name()); continue;}
      Content mine = ours.getOrDefault(name.get().cell().get(), d.workbook().cell(name.get().cell().get()).stored());
      Content model = Entries.content(t.value().get().value(r.name()));
      boolean same = mine.equals(model) || (mine instanceof Content.Numeric a && model instanceof Content.Numeric b && Math.abs(a.value()-b.value()) <= 1e-6*Math.max(1,Math.abs(b.value())));
      if (!same) System.out.println(r.name()+" sheet "+mine+" model "+model); }
  }
}
