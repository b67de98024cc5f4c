package squaresheet.judge.made;

/**
 * A cell of a workbook in the making.
 *
 * @param tab its tab
 * @param row from 0
 * @param column from 0
 */
record Place(Maker.Tab tab, int row, int column) {

  /** As a formula on a tab would name it. */
  String from(Maker.Tab reader) {
    return reader == tab ? Maker.Tab.at(row, column) : tab.far(row, column);
  }

  /** As it is known in the list of cells. */
  String known() {
    return tab.name() + "!" + Maker.Tab.at(row, column);
  }
}
