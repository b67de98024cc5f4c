package squaresheet.xlsx;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Edit;

/** Sets custom document properties. */
final class PropertyEditor {

  private static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
  /** The format id that every custom property carries (ECMA-376 Part 1, 22.3). */
  private static final String FORMAT = "{D5CDD505-2E9C-101B-9397-08002B2CF9AE}";

  private PropertyEditor() {}

  static void edit(List<Edit.SetProperty> edits, Bundle bundle, Relations relations, Family family)
      throws IOException {
    if (edits.isEmpty()) {
      return;
    }
    PartText text = bundle.text(part(bundle, relations, family));
    int number =
        text.root().children.stream().mapToInt(each -> each.number("pid", 1)).reduce(1, Math::max);
    for (Edit.SetProperty edit : edits) {
      Optional<Element> old = text.root().children.stream()
          .filter(each -> each.attribute("name").equals(edit.name()))
          .findFirst();
      if (old.isPresent()) {
        text.replace(old.get(), property(text, family, edit, old.get().number("pid", ++number)));
      } else {
        text.append(text.root(), property(text, family, edit, ++number));
      }
    }
  }

  private static String part(Bundle bundle, Relations relations, Family family) throws IOException {
    Optional<String> known = bundle.text(Relations.partOf("")).root().children.stream()
        .filter(each -> each.attribute("Type").equals(family.propertiesRelation()))
        .map(each -> PartPath.resolve("", each.attribute("Target")))
        .findFirst();
    if (known.isPresent()) {
      return known.get();
    }
    String part = bundle.has("/docProps/custom.xml")
        ? bundle.freeName("/docProps/custom%d.xml")
        : "/docProps/custom.xml";
    bundle.put(
        part, PartText.of(HEAD + "<Properties xmlns=\"" + family.properties + "\"></Properties>"));
    relations.add("", family.propertiesRelation(), part);
    relations.type(part, "application/vnd.openxmlformats-officedocument.custom-properties+xml");
    return part;
  }

  private static Markup property(PartText text, Family family, Edit.SetProperty edit, int number) {
    Markup markup = text.markup().open("property").attribute("fmtid", FORMAT);
    markup.attribute("pid", number).attribute("name", edit.name());
    markup.open("vt", "lpwstr").namespace("vt", family.propertyTypes).text(edit.value());
    return markup.close().close();
  }
}
