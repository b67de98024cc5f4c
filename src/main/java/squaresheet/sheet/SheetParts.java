package squaresheet.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What a sheet has beside its cells. Filled by {@link SheetBuilder}, then left alone. */
final class SheetParts {

  private final List<Block> merged = new ArrayList<>();
  private final List<Sheet.Table> tables = new ArrayList<>();
  private final Map<Ref, Sheet.Comment> comments = new TreeMap<>();
  private final List<Sheet.Validation> validations = new ArrayList<>();
  private final List<Sheet.Link> links = new ArrayList<>();
  private final List<Block> arrays = new ArrayList<>();
  private final BitSet hiddenRows = new BitSet();
  private final BitSet hiddenColumns = new BitSet();
  private Sheet.Visibility visibility = Sheet.Visibility.VISIBLE;
  private Optional<Block> filter = Optional.empty();
  private Optional<Block> used = Optional.empty();
  private Optional<Ref> hiddenFormula = Optional.empty();
  private boolean protectedAgainstChange;
  private BlockIndex mergedIndex = new BlockIndex(List.of());
  private BlockIndex arrayIndex = new BlockIndex(List.of());
  private int frozenRows;
  private int frozenColumns;

  /** The same, to be filled further by another builder. */
  SheetParts copy() {
    SheetParts copy = new SheetParts();
    copy.merged.addAll(merged);
    copy.tables.addAll(tables);
    copy.comments.putAll(comments);
    copy.validations.addAll(validations);
    copy.links.addAll(links);
    copy.arrays.addAll(arrays);
    copy.hiddenRows.or(hiddenRows);
    copy.hiddenColumns.or(hiddenColumns);
    copy.visibility = visibility;
    copy.filter = filter;
    copy.hiddenFormula = hiddenFormula;
    copy.protectedAgainstChange = protectedAgainstChange;
    copy.frozen(frozenRows, frozenColumns);
    return copy;
  }

  List<Block> merged() {
    return merged;
  }

  /** Puts the blocks in order, after the last one was added. */
  void done() {
    mergedIndex = new BlockIndex(merged);
    arrayIndex = new BlockIndex(arrays);
  }

  Optional<Block> mergedAt(Ref ref) {
    return mergedIndex.at(ref);
  }

  Optional<Block> arrayAt(Ref ref) {
    return arrayIndex.at(ref);
  }

  List<Sheet.Table> tables() {
    return tables;
  }

  Map<Ref, Sheet.Comment> comments() {
    return comments;
  }

  List<Sheet.Validation> validations() {
    return validations;
  }

  List<Sheet.Link> links() {
    return links;
  }

  List<Block> arrays() {
    return arrays;
  }

  BitSet hiddenRows() {
    return hiddenRows;
  }

  BitSet hiddenColumns() {
    return hiddenColumns;
  }

  Sheet.Visibility visibility() {
    return visibility;
  }

  void visibility(Sheet.Visibility is) {
    visibility = is;
  }

  Optional<Block> filter() {
    return filter;
  }

  void filter(Block block) {
    filter = Optional.of(block);
  }

  Optional<Block> used() {
    return used;
  }

  void used(Optional<Block> block) {
    used = block;
  }

  boolean isProtected() {
    return protectedAgainstChange;
  }

  void protect() {
    protectedAgainstChange = true;
  }

  Optional<Ref> hiddenFormula() {
    return hiddenFormula;
  }

  void hiddenFormula(Ref ref) {
    hiddenFormula = hiddenFormula.or(() -> Optional.of(ref));
  }

  int frozenRows() {
    return frozenRows;
  }

  int frozenColumns() {
    return frozenColumns;
  }

  void frozen(int rows, int columns) {
    frozenRows = rows;
    frozenColumns = columns;
  }
}
