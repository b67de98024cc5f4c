package squaresheet.binding;
import java.nio.file.*;
import java.util.*;
import squaresheet.sheet.*;
class Scratch3 { 
  @org.junit.jupiter.api.Test void back() throws Exception {
    JobParts p = Scratch.parts();
    Draft d = new JobWriter(p).write();
    var read = new JobReader(d.workbook(), "job.xlsx", p.rulebook()).read();
    read.findings().forEach(f -> System.out.println(f.where()+": "+f.says()));
    BoundJob j = read.value().get();
    System.out.println(j.coverage()); System.out.println(j.labels());
    System.out.println(j.catalogue().equals(p.catalogue()));
    for (int i=0;i<j.catalogue().products().size();i++) if (!j.catalogue().products().get(i).equals(p.catalogue().products().get(i))) System.out.println(j.catalogue().products().get(i)+"\n  "+p.catalogue().products().get(i));
    System.out.println(j.selection().equals(p.selection()));
    System.out.println(j.settings().size());
    j.rules().stream().filter(r->!r.isAsInRulebook()).limit(20).forEach(r->System.out.println(r+"  "+p.rulebook().formula(r.name())));
    var roof = squaresheet.roof.Roof.resolve(j.roof());
    roof.findings().forEach(f -> System.out.println(f.where()+": "+f.says()));
    System.out.println(roof.value().get().slopedArea()+" "+p.roof().slopedArea());
    for (var k : squaresheet.roof.EdgeKind.values()) System.out.println(k+" "+roof.value().get().length(k)+" "+p.roof().length(k));
    System.out.println(j.cells().items().size()+" items");
  }
}
