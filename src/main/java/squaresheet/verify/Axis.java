package squaresheet.verify;

import squaresheet.sheet.Ref;

/** Which way the items of a table follow each other. */
enum Axis {
  /** One item under the other: formulas were filled down. */
  DOWN,
  /** One item beside the other: formulas were filled to the right. */
  ACROSS;

  /** The place of an item. */
  int along(Ref ref) {
    return this == DOWN ? ref.row() : ref.column();
  }

  /** The place of a property. */
  int across(Ref ref) {
    return this == DOWN ? ref.column() : ref.row();
  }

  Ref ref(int along, int across) {
    return this == DOWN ? new Ref(along, across) : new Ref(across, along);
  }

  /** What people call one item's cells. */
  String line() {
    return this == DOWN ? "row" : "column";
  }

  /** How people call the place of an item: a row's number or a column's letters. */
  String name(int along) {
    return this == DOWN ? String.valueOf(along + 1) : Ref.letters(along);
  }
}
