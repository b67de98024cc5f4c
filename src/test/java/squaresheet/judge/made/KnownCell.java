package squaresheet.judge.made;

import java.util.List;

/**
 * What the maker of a workbook knows of one of its cells.
 *
 * @param at the cell, such as {@code Roof!C5}
 * @param meaning what it stands for
 * @param item whose property it is, such as {@code Front}, {@code shingles} or {@code job}
 * @param unit the unit of its number as people write it, such as {@code ft}, {@code USD/bundle} or empty
 * @param typed whether a person types it; else a formula stands in it
 * @param run the family of like formulas (or like typed cells) it belongs to, or empty where it stands alone
 * @param witnesses cells that, by a path of their own, contradict a wrong value here; empty where nothing else in the workbook does
 */
public record KnownCell(
    String at,
    Meaning meaning,
    String item,
    String unit,
    boolean typed,
    String run,
    List<String> witnesses) {

  public KnownCell {
    witnesses = List.copyOf(witnesses);
  }
}
