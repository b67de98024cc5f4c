package squaresheet.xlsx;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;

/** Pins notes to cells: the text in one part, the yellow box in another. */
final class CommentsEditor {

  private static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
  private static final String BOX_TYPE = "<v:shapetype xmlns:v=\"urn:schemas-microsoft-com:vml\""
      + " xmlns:o=\"urn:schemas-microsoft-com:office:office\" id=\"_x0000_t202\""
      + " coordsize=\"21600,21600\" o:spt=\"202\" path=\"m,l,21600r21600,l21600,xe\">"
      + "<v:stroke joinstyle=\"miter\"/><v:path gradientshapeok=\"t\" o:connecttype=\"rect\"/>"
      + "</v:shapetype>";
  private static final Pattern ROW_AND_COLUMN =
      Pattern.compile("<x:Row>(\\d+)</x:Row>\\s*<x:Column>(\\d+)</x:Column>");
  private static final String BOXES = "<xml xmlns:v=\"urn:schemas-microsoft-com:vml\""
      + " xmlns:o=\"urn:schemas-microsoft-com:office:office\""
      + " xmlns:x=\"urn:schemas-microsoft-com:office:excel\">" + BOX_TYPE + "</xml>";

  private final Bundle bundle;
  private final Relations relations;
  private final Family family;
  private final String sheet;

  CommentsEditor(Bundle bundle, Relations relations, Family family, String sheet) {
    this.bundle = bundle;
    this.relations = relations;
    this.family = family;
    this.sheet = sheet;
  }

  /** Pins the notes; tells the id of a fresh part with boxes that the sheet must then name. */
  Optional<String> edit(List<Edit.SetComment> comments, Optional<Element> boxes)
      throws IOException {
    PartText text = text();
    Map<String, Integer> authors = new HashMap<>();
    Element list =
        text.root().child("authors").orElseThrow(() -> new Refusal("has notes without authors"));
    list.children.forEach(each -> authors.putIfAbsent(text.inside(each), authors.size()));
    StringBuilder fresh = new StringBuilder();
    Set<String> conversations = conversations();
    for (Edit.SetComment comment : comments) {
      refuseWithin(conversations, comment.cell().ref());
      if (pin(text, comment, author(text, list, authors, comment.author()))) {
        fresh.append(box(comment.cell().ref()));
      }
    }
    return fresh.isEmpty() ? Optional.empty() : addBoxes(fresh.toString(), boxes);
  }

  /** Takes notes away with their boxes. */
  void drop(List<Ref> refs, Optional<Element> boxes) throws IOException {
    if (refs.isEmpty() || related("/comments").isEmpty()) {
      return;
    }
    Set<String> conversations = conversations();
    refs.forEach(ref -> refuseWithin(conversations, ref));
    PartText text = text();
    text.root().child("commentList").stream()
        .flatMap(list -> list.children.stream())
        .filter(each -> refs.stream().anyMatch(it -> each.attribute("ref").equals(it.toString())))
        .forEach(text::remove);
    if (boxes.isPresent()) {
      String part = PartPath.resolve(sheet, relations.target(sheet, boxes.get().attribute("r:id")));
      String old = new String(Wide.narrowed(bundle.bytes(part)), StandardCharsets.UTF_8);
      bundle.put(part, withoutBoxes(old, refs).getBytes(StandardCharsets.UTF_8));
    }
  }

  private static String withoutBoxes(String old, List<Ref> refs) {
    String text = old;
    for (Ref ref : refs) {
      int place = ROW_AND_COLUMN
          .matcher(text)
          .results()
          .filter(it -> it.group(1).equals(Integer.toString(ref.row()))
              && it.group(2).equals(Integer.toString(ref.column())))
          .mapToInt(java.util.regex.MatchResult::start)
          .findFirst()
          .orElse(-1);
      int start = text.lastIndexOf("<v:shape ", Math.max(0, place));
      int end = place < 0 ? -1 : text.indexOf("</v:shape>", place);
      if (place >= 0 && start >= 0 && end >= 0) {
        text = text.substring(0, start) + text.substring(end + "</v:shape>".length());
      }
    }
    return text;
  }

  private PartText text() throws IOException {
    Optional<String> known = related("/comments");
    if (known.isPresent()) {
      return bundle.text(known.get());
    }
    String part = bundle.freeName("/xl/comments%d.xml");
    bundle.put(
        part,
        PartText.of(HEAD + "<comments xmlns=\"" + family.main
            + "\"><authors></authors><commentList></commentList></comments>"));
    relations.add(sheet, family.relationships + "/comments", part);
    relations.type(
        part, "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml");
    return bundle.text(part);
  }

  /** The cells that people talk about; there a note only repeats the talk for programs that know of none. */
  private Set<String> conversations() throws IOException {
    Optional<String> talk = related("/threadedComment");
    return talk.isEmpty()
        ? Set.of()
        : bundle.text(talk.get()).root().children.stream()
            .map(each -> each.attribute("ref"))
            .collect(Collectors.toSet());
  }

  private static void refuseWithin(Set<String> conversations, Ref ref) {
    if (conversations.contains(ref.toString())) {
      throw new Refusal(
          "has a conversation on " + ref + ", which only the program it was written in can change");
    }
  }

  private Optional<String> related(String kind) throws IOException {
    if (!bundle.has(Relations.partOf(sheet))) {
      return Optional.empty();
    }
    return bundle.text(Relations.partOf(sheet)).root().children.stream()
        .filter(each -> each.attribute("Type").endsWith(kind))
        .map(each -> PartPath.resolve(sheet, each.attribute("Target")))
        .findFirst();
  }

  private static int author(
      PartText text, Element list, Map<String, Integer> authors, String name) {
    String spelled = text.markup().leaf("author", name).toString();
    String inside = spelled.substring(
        spelled.indexOf('>') + 1, Math.max(spelled.indexOf('>') + 1, spelled.lastIndexOf("</")));
    if (!authors.containsKey(inside)) {
      authors.put(inside, authors.size());
      text.append(list, spelled);
    }
    return authors.get(inside);
  }

  /** Writes the note; true where the cell had none and so has no box yet. */
  private boolean pin(PartText text, Edit.SetComment comment, int author) {
    Ref ref = comment.cell().ref();
    Markup markup = text.markup().open("comment").attribute("ref", ref.toString());
    markup
        .attribute("authorId", author)
        .open("text")
        .open("t")
        .attribute("xml", "space", "preserve");
    markup.text(comment.text()).close().close().close();
    Element list = text.root()
        .child("commentList")
        .orElseThrow(() -> new Refusal("has a part for notes without a list of them"));
    Optional<Element> old = list.children.stream()
        .filter(each -> each.attribute("ref").equals(ref.toString()))
        .findFirst();
    if (old.isEmpty()) {
      text.append(list, markup);
      return true;
    }
    text.replace(old.get(), markup);
    return false;
  }

  private static String box(Ref ref) {
    return "<v:shape xmlns:v=\"urn:schemas-microsoft-com:vml\""
        + " xmlns:o=\"urn:schemas-microsoft-com:office:office\""
        + " xmlns:x=\"urn:schemas-microsoft-com:office:excel\" id=\"_note_" + ref + "\""
        + " type=\"#_x0000_t202\" style=\"position:absolute;width:150pt;height:70pt;z-index:1;visibility:hidden\""
        + " fillcolor=\"#ffffe1\" o:insetmode=\"auto\"><v:fill color2=\"#ffffe1\"/>"
        + "<v:shadow on=\"t\" color=\"black\" obscured=\"t\"/><v:path o:connecttype=\"none\"/>"
        + "<v:textbox style=\"mso-direction-alt:auto\"/><x:ClientData ObjectType=\"Note\">"
        + "<x:MoveWithCells/><x:SizeWithCells/><x:Anchor>" + anchor(ref) + "</x:Anchor>"
        + "<x:AutoFill>False</x:AutoFill><x:Row>" + ref.row() + "</x:Row><x:Column>" + ref.column()
        + "</x:Column></x:ClientData></v:shape>";
  }

  /** Column and row with their offsets in pixels, for two corners. */
  private static String anchor(Ref ref) {
    int left = Math.min(ref.column() + 1, CellPlace.COLUMNS - 4);
    int top = Math.min(ref.row(), CellPlace.ROWS - 6);
    return left + ", 12, " + top + ", 2, " + (left + 3) + ", 0, " + (top + 4) + ", 0";
  }

  private Optional<String> addBoxes(String fresh, Optional<Element> known) throws IOException {
    if (known.isPresent()) {
      String part = PartPath.resolve(sheet, relations.target(sheet, known.get().attribute("r:id")));
      String old = new String(Wide.narrowed(bundle.bytes(part)), StandardCharsets.UTF_8);
      bundle.put(part, withBoxes(old, fresh).getBytes(StandardCharsets.UTF_8));
      return Optional.empty();
    }
    String part = bundle.freeName("/xl/drawings/vmlDrawing%d.vml");
    bundle.put(part, withBoxes(BOXES, fresh).getBytes(StandardCharsets.UTF_8));
    relations.typeOfEnding(part, "vml", "application/vnd.openxmlformats-officedocument.vmlDrawing");
    return Optional.of(relations.add(sheet, family.relationships + "/vmlDrawing", part));
  }

  /** That part is not always XML in good order, so the fresh boxes go before its last tag. */
  private static String withBoxes(String old, String fresh) {
    int end = old.lastIndexOf("</xml>");
    if (end < 0) {
      throw new Refusal("has a part with boxes for notes that ends in no known way");
    }
    String type = old.contains("_x0000_t202") ? "" : BOX_TYPE;
    return old.substring(0, end) + type + fresh + old.substring(end);
  }
}
