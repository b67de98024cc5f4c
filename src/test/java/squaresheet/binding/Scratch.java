package squaresheet.binding;
import java.nio.file.*;
class Scratch { 
  @org.junit.jupiter.api.Test void demo() throws Exception {
    Grid g = LineGrid.of("t.csv", Files.readString(Path.of("demo-data/tape-sheet.csv")));
    System.out.println(g.rows()+"x"+g.columns());
    for (FoundTable t : TableFinder.find(g)) System.out.println(t.table()+" "+t.heading()+" "+t.sure()+" "+t.rows()+" "+t.columns().stream().map(c->c.property()+":"+c.sure()).toList());
    for (FoundLabel l : LabelFinder.find(g, TableFinder.find(g), "job")) System.out.println(l.meaning().property()+" "+l.text()+" "+l.sure());
  }
}
