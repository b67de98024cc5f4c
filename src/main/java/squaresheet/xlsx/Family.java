package squaresheet.xlsx;

/** The two families of namespaces a workbook may be written in; what is added to a file keeps to the file's own. */
enum Family {
  /** What nearly every program writes. */
  TRANSITIONAL(
      "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
      "http://schemas.openxmlformats.org/drawingml/2006/main",
      "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing",
      "http://schemas.openxmlformats.org/officeDocument/2006/custom-properties",
      "http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes"),
  /** The strict form of ISO/IEC 29500. */
  STRICT(
      "http://purl.oclc.org/ooxml/spreadsheetml/main",
      "http://purl.oclc.org/ooxml/officeDocument/relationships",
      "http://purl.oclc.org/ooxml/drawingml/main",
      "http://purl.oclc.org/ooxml/drawingml/spreadsheetDrawing",
      "http://purl.oclc.org/ooxml/officeDocument/customProperties",
      "http://purl.oclc.org/ooxml/officeDocument/docPropsVTypes");

  final String main;
  final String relationships;
  final String drawing;
  final String sheetDrawing;
  final String properties;
  final String propertyTypes;

  Family(
      String main,
      String relationships,
      String drawing,
      String sheetDrawing,
      String properties,
      String propertyTypes) {
    this.main = main;
    this.relationships = relationships;
    this.drawing = drawing;
    this.sheetDrawing = sheetDrawing;
    this.properties = properties;
    this.propertyTypes = propertyTypes;
  }

  static Family of(String rootTag) {
    return rootTag.contains("http://purl.oclc.org/ooxml/") ? STRICT : TRANSITIONAL;
  }

  /** The type of a relationship to the document's own properties. */
  String propertiesRelation() {
    return relationships + (this == STRICT ? "/customProperties" : "/custom-properties");
  }
}
