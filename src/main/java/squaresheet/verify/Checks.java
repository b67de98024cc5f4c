package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;

/**
 * The checks of a pass, in groups that people look for them by. Of two findings at one cell that weigh the same the one asked
 * first is kept, so the groups and their checks stand in the order in which they are asked: those that name a slip most
 * exactly first.
 */
final class Checks {

  private static final CheckGroup FAILING = CheckGroup.of(
      "Formulas that cannot come to anything",
      new Ask<>(FormulaCell.class, new BrokenReference()),
      new Ask<>(FormulaCell.class, new ErrorHiddenByGuard()),
      new Ask<>(Book.class, new CircularFormula()));

  private static final CheckGroup PITCHES = CheckGroup.of(
      "Pitches as they are typed",
      new Ask<>(PitchCell.class, new PitchBecameDate()),
      new Ask<>(PitchCell.class, new PitchBecameTime()),
      new Ask<>(PitchCell.class, new PitchTooSteep()),
      new Ask<>(PitchCell.class, new PitchLikeDegrees()),
      new Ask<>(PitchCell.class, new PitchLikeRatio()),
      new Ask<>(RoundedPitch.class, new PitchOffNamed()),
      new Ask<>(RoundedPitch.class, new PitchNearLimit()),
      new Ask<>(TypedCell.class, new PitchTextComputed()));

  private static final CheckGroup TYPED = CheckGroup.of(
      "Cells typed as something else than they are",
      new Ask<>(TypedCell.class, new FormulaStoredAsText()),
      new Ask<>(TypedCell.class, new WasteTypedAsPercent()));

  private static final CheckGroup FILLED = CheckGroup.of(
      "Formulas filled down a column",
      new Ask<>(Table.class, new RowWithoutFormulas()),
      new Ask<>(Fill.class, new TypedOverFormula()),
      new Ask<>(Fill.class, new FormulaClearedInRow()),
      new Ask<>(Fill.class, new OddConstantInRun()),
      new Ask<>(Fill.class, new ReferenceOffByOne()),
      new Ask<>(Fill.class, new ReferenceDrifts()),
      new Ask<>(Fill.class, new ReferenceHeldToRow()),
      new Ask<>(FormulaCell.class, new PacksRoundedDown()),
      new Ask<>(FormulaCell.class, new PacksRoundedToNearest()),
      new Ask<>(Fill.class, new OddFormulaInRun()));

  private static final CheckGroup TOTALS = CheckGroup.of(
      "What totals take in and leave out",
      new Ask<>(SumCell.class, new TermAddedAfterSum()),
      new Ask<>(SumCell.class, new TotalIncludesSubtotal()),
      new Ask<>(SumCell.class, new TotalStopsShort()),
      new Ask<>(Addition.class, new TotalLeavesOutPart()),
      new Ask<>(FormulaCell.class, new RateAddedAsAmount()),
      new Ask<>(FormulaCell.class, new TotalTakesPartTwice()),
      new Ask<>(FormulaCell.class, new TotalTakesPartOff()),
      new Ask<>(FormulaCell.class, new TotalPassesStep()),
      new Ask<>(TypedCell.class, new TypedTotalOff()),
      new Ask<>(Corner.class, new TotalsDoNotCrossFoot()),
      new Ask<>(Table.class, new GhostRow()));

  private static final CheckGroup KEYS = CheckGroup.of(
      "Keys and conditions that miss",
      new Ask<>(FormulaCell.class, new SumifRangesDiffer()),
      new Ask<>(FormulaCell.class, new KeyMissesBySpelling()),
      new Ask<>(FormulaCell.class, new FlagSpelledOtherwise()),
      new Ask<>(TypedCell.class, new KeyWithStraySpace()));

  private static final CheckGroup TEXTS = CheckGroup.of(
      "Texts and merged cells among numbers",
      new Ask<>(TypedCell.class, new FeetInchesText()),
      new Ask<>(TypedCell.class, new DecimalCommaText()),
      new Ask<>(TypedCell.class, new NumberStoredAsText()),
      new Ask<>(TypedCell.class, new NoteInNumberCell()),
      new Ask<>(Tab.class, new ValueUnderMerge()),
      new Ask<>(FormulaCell.class, new GuardedValueFails()));

  private static final CheckGroup ROOF = CheckGroup.of(
      "The roof itself",
      new Ask<>(Table.class, new PitchBlank()),
      new Ask<>(Table.class, new ShinglesTooFlat()),
      new Ask<>(HipLine.class, new HipTakenInPlan()),
      new Ask<>(HipLine.class, new HipByCommonFactor()),
      new Ask<>(Fill.class, new DimensionMissing()),
      new Ask<>(Underlayment.class, new LowSlopeSingleLayer()),
      new Ask<>(Underlayment.class, new BandTakesInLimit()),
      new Ask<>(PitchFactor.class, new PitchFactorOff()),
      new Ask<>(Table.class, new FactorNobodyUses()),
      new Ask<>(FormulaCell.class, new AverageOfFactors()));

  private static final CheckGroup RATES = CheckGroup.of(
      "Waste and other rates, put on wrongly or twice",
      new Ask<>(FormulaCell.class, new WasteSubtracted()),
      new Ask<>(FormulaCell.class, new WasteAddedAsAmount()),
      new Ask<>(RateUse.class, new PitchFactorTwice()),
      new Ask<>(RateUse.class, new WasteTwice()),
      new Ask<>(RateUse.class, new MarkupTwice()));

  private static final CheckGroup UNITS = CheckGroup.of(
      "Units",
      new Ask<>(FormulaCell.class, new VentAreaMixedUnits()),
      new Ask<>(FormulaCell.class, new TrigonometryOnDegrees()),
      new Ask<>(MeasuredCell.class, new PriceForAnotherUnit()),
      new Ask<>(MeasuredCell.class, new DividedByHundredTwice()),
      new Ask<>(MeasuredCell.class, new ConversionLeftOut()),
      new Ask<>(MeasuredCell.class, new PercentUsedAsRatio()),
      new Ask<>(MeasuredCell.class, new PlanAddedToSloped()),
      new Ask<>(MeasuredCell.class, new UnlikeUnitsAdded()),
      new Ask<>(MeasuredCell.class, new ResultInOtherUnit()),
      new Ask<>(MeasuredCell.class, new PlanComparedWithSloped()),
      new Ask<>(TypedMeasure.class, new SquareFeetForSquares()));

  private static final CheckGroup PRICES = CheckGroup.of(
      "Prices and payments",
      new Ask<>(FormulaCell.class, new MarkupUsedForMargin()),
      new Ask<>(TypedCell.class, new RateOutOfReason()),
      new Ask<>(TypedCell.class, new RateNobodyReads()),
      new Ask<>(FormulaCell.class, new TaxStepOff()),
      new Ask<>(FormulaCell.class, new PriceBelowCost()),
      new Ask<>(SumCell.class, new PaymentSharesNotWhole()));

  private static final CheckGroup SHOWN = CheckGroup.of(
      "Numbers and words as they show",
      new Ask<>(FormulaCell.class, new UnitWordOff()),
      new Ask<>(Book.class, new TypedFromDisplay()),
      new Ask<>(TypedCell.class, new NumberTooLongForCode()));

  private static final CheckGroup COPIES = CheckGroup.of(
      "Copied sheets",
      new Ask<>(LikeSheets.class, new CopiedSheetRead()),
      new Ask<>(LikeSheets.class, new SheetLeftOut()),
      new Ask<>(LikeSheets.class, new ReferenceToLikeSheet()));

  private static final CheckGroup READ = CheckGroup.of(
      "Price lists, inputs and names, and who reads them",
      new Ask<>(FormulaCell.class, new LookupTableShort()),
      new Ask<>(FormulaCell.class, new DuplicatePriceRow()),
      new Ask<>(TypedCell.class, new NegativeQuantity()),
      new Ask<>(TypedCell.class, new InputNobodyReads()),
      new Ask<>(TypedCell.class, new RetypedTotal()),
      new Ask<>(DefinedName.class, new NameIsBroken()),
      new Ask<>(DefinedName.class, new NamePointsElsewhere()));

  private static final CheckGroup HIDDEN = CheckGroup.of(
      "What people do not see",
      new Ask<>(SumCell.class, new HiddenRowInTotal()),
      new Ask<>(SumCell.class, new SubtotalUnderFilter()),
      new Ask<>(SumCell.class, new SubtotalDropsHiddenRows()),
      new Ask<>(Tab.class, new HiddenSheetFeedsTotal()),
      new Ask<>(SumCell.class, new FormatHidesValue()));

  private static final CheckGroup OUTSIDE = CheckGroup.of(
      "What comes from outside the workbook",
      new Ask<>(FormulaCell.class, new ExternalLink()),
      new Ask<>(Book.class, new ExternalLinkFarAway()),
      new Ask<>(FormulaCell.class, new DateDrivesAmount()));

  private static final CheckGroup WORKED_OUT = CheckGroup.of(
      "Values worked out anew",
      new Ask<>(FormulaCell.class, new FormulaNotChecked()),
      new Ask<>(FormulaCell.class, new ErrorValue()),
      new Ask<>(FormulaCell.class, new StaleValue()));

  private static final CheckGroup SETTINGS = CheckGroup.of(
      "Settings of the workbook",
      new Ask<>(Book.class, new DatesFourYearsApart()),
      new Ask<>(Tab.class, new FormulasHidden()),
      new Ask<>(Book.class, new PrecisionAsDisplayed()),
      new Ask<>(Book.class, new StoredValuesMissing()),
      new Ask<>(Book.class, new ManualCalculation()));

  private static final CheckGroup LATENT =
      CheckGroup.of("Right today only", new Ask<>(Fill.class, new TypedOverFormulaLatent()));

  private static final CheckGroup MODELLED = CheckGroup.of(
      "Job workbooks: values against the model of the roof",
      new Ask<>(Modelled.class, new InputIsText()),
      new Ask<>(Modelled.class, new RuleTypedOver()),
      new Ask<>(Modelled.class, new KnownSlipInRule()),
      new Ask<>(Modelled.class, new RuleDiffersInOneRow()),
      new Ask<>(Modelled.class, new RuleChangedHere()),
      new Ask<>(Modelled.class, new ValueOffModel()),
      new Ask<>(Modelled.class, new SimulatedWasteOld()),
      new Ask<>(Allowance.class, new WasteUnderLayout()),
      new Ask<>(Allowance.class, new WasteFarOverLayout()),
      new Ask<>(Modelled.class, new RuleTypedOverLatent()));

  private static final CheckGroup PRICED = CheckGroup.of(
      "Job workbooks: the estimate",
      new Ask<>(EstimateCells.class, new CategoryOfYourOwn()),
      new Ask<>(EstimateCells.class, new TermsNotPossible()),
      new Ask<>(EstimateCells.class, new TermNotKnown()),
      new Ask<>(EstimateCells.class, new TaxTypedAsPercent()),
      new Ask<>(EstimateCells.class, new RateTypedAsPercent()),
      new Ask<>(EstimateCells.class, new PaymentSharesOff()),
      new Ask<>(PricedLine.class, new LineAmountOff()),
      new Ask<>(ModelledLine.class, new LineOffModel()),
      new Ask<>(PricedLine.class, new LineValueTypedOver()),
      new Ask<>(Priced.class, new SurchargeOffTerms()),
      new Ask<>(Priced.class, new EstimateDoesNotFoot()),
      new Ask<>(Priced.class, new EstimateDoesNotCrossFoot()),
      new Ask<>(EstimateStep.class, new EstimateCellOff()),
      new Ask<>(SummaryCell.class, new SummaryOffSheets()),
      new Ask<>(Priced.class, new SoldBelowCost()));

  private static final CheckGroup BOUND = CheckGroup.of(
      "Workbooks of your own layout: values against what is bound",
      new Ask<>(BoundValue.class, new PlaneValueOffDimensions()),
      new Ask<>(BoundValue.class, new AmountOffPrice()),
      new Ask<>(BoundValue.class, new TotalOffParts()),
      new Ask<>(EdgeTotal.class, new EdgeTotalOffPlanes()),
      new Ask<>(DoubtedColumn.class, new BoundColumnNeverFits()));

  private static final List<CheckGroup> ANY = List.of(
      FAILING,
      PITCHES,
      TYPED,
      FILLED,
      TOTALS,
      KEYS,
      TEXTS,
      ROOF,
      RATES,
      UNITS,
      PRICES,
      SHOWN,
      COPIES,
      READ,
      HIDDEN,
      OUTSIDE,
      WORKED_OUT,
      SETTINGS,
      LATENT);

  private static final List<CheckGroup> JOBS = List.of(MODELLED, PRICED);

  private Checks() {}

  /** All groups, in the order they are asked. */
  static List<CheckGroup> groups() {
    return Stream.of(ANY, List.of(BOUND), JOBS).flatMap(List::stream).toList();
  }

  /** What can be asked of any workbook. */
  static List<Ask<?>> ofAnyWorkbook() {
    return asks(ANY);
  }

  /** What can be asked of a workbook of foreign layout, as far as it is bound. */
  static List<Ask<?>> ofBoundBooks() {
    return BOUND.asks();
  }

  /** What can be asked of a job workbook, whose cells the model knows. */
  static List<Ask<?>> ofJobs() {
    return asks(JOBS);
  }

  private static List<Ask<?>> asks(List<CheckGroup> groups) {
    return groups.stream().<Ask<?>>flatMap(group -> group.asks().stream()).toList();
  }
}
