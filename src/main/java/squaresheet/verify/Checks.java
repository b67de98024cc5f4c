package squaresheet.verify;

import java.util.List;

/** The checks of a pass, those that name a slip most exactly first. */
final class Checks {

  private static final List<Ask<?>> ANY = List.of(
      new Ask<>(FormulaCell.class, new BrokenReference()),
      new Ask<>(FormulaCell.class, new ErrorHiddenByGuard()),
      new Ask<>(Book.class, new CircularFormula()),
      new Ask<>(PitchCell.class, new PitchBecameDate()),
      new Ask<>(PitchCell.class, new PitchBecameTime()),
      new Ask<>(PitchCell.class, new PitchTooSteep()),
      new Ask<>(PitchCell.class, new PitchLikeDegrees()),
      new Ask<>(PitchCell.class, new PitchLikeRatio()),
      new Ask<>(TypedCell.class, new PitchTextComputed()),
      new Ask<>(TypedCell.class, new FormulaStoredAsText()),
      new Ask<>(TypedCell.class, new WasteTypedAsPercent()),
      new Ask<>(Table.class, new RowWithoutFormulas()),
      new Ask<>(Fill.class, new TypedOverFormula()),
      new Ask<>(Fill.class, new FormulaClearedInRow()),
      new Ask<>(Fill.class, new OddConstantInRun()),
      new Ask<>(Fill.class, new ReferenceOffByOne()),
      new Ask<>(Fill.class, new ReferenceDrifts()),
      new Ask<>(Fill.class, new ReferenceHeldToRow()),
      new Ask<>(FormulaCell.class, new PacksRoundedDown()),
      new Ask<>(FormulaCell.class, new PacksRoundedToNearest()),
      new Ask<>(Fill.class, new OddFormulaInRun()),
      new Ask<>(SumCell.class, new TermAddedAfterSum()),
      new Ask<>(SumCell.class, new TotalIncludesSubtotal()),
      new Ask<>(SumCell.class, new TotalStopsShort()),
      new Ask<>(Addition.class, new TotalLeavesOutPart()),
      new Ask<>(TypedCell.class, new TypedTotalOff()),
      new Ask<>(Corner.class, new TotalsDoNotCrossFoot()),
      new Ask<>(Table.class, new GhostRow()),
      new Ask<>(FormulaCell.class, new SumifRangesDiffer()),
      new Ask<>(FormulaCell.class, new KeyMissesBySpelling()),
      new Ask<>(FormulaCell.class, new FlagSpelledOtherwise()),
      new Ask<>(TypedCell.class, new KeyWithStraySpace()),
      new Ask<>(TypedCell.class, new FeetInchesText()),
      new Ask<>(TypedCell.class, new DecimalCommaText()),
      new Ask<>(TypedCell.class, new NumberStoredAsText()),
      new Ask<>(TypedCell.class, new NoteInNumberCell()),
      new Ask<>(Tab.class, new ValueUnderMerge()),
      new Ask<>(FormulaCell.class, new GuardedValueFails()),
      new Ask<>(Table.class, new PitchBlank()),
      new Ask<>(Table.class, new ShinglesTooFlat()),
      new Ask<>(HipLine.class, new HipTakenInPlan()),
      new Ask<>(HipLine.class, new HipByCommonFactor()),
      new Ask<>(Fill.class, new DimensionMissing()),
      new Ask<>(Underlayment.class, new LowSlopeSingleLayer()),
      new Ask<>(Underlayment.class, new BandTakesInLimit()),
      new Ask<>(PitchFactor.class, new PitchFactorOff()),
      new Ask<>(Table.class, new FactorNobodyUses()),
      new Ask<>(FormulaCell.class, new AverageOfFactors()),
      new Ask<>(FormulaCell.class, new WasteSubtracted()),
      new Ask<>(FormulaCell.class, new WasteAddedAsAmount()),
      new Ask<>(RateUse.class, new PitchFactorTwice()),
      new Ask<>(RateUse.class, new WasteTwice()),
      new Ask<>(RateUse.class, new MarkupTwice()),
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
      new Ask<>(TypedMeasure.class, new SquareFeetForSquares()),
      new Ask<>(FormulaCell.class, new MarkupUsedForMargin()),
      new Ask<>(FormulaCell.class, new PriceBelowCost()),
      new Ask<>(SumCell.class, new PaymentSharesNotWhole()),
      new Ask<>(FormulaCell.class, new UnitWordOff()),
      new Ask<>(Book.class, new TypedFromDisplay()),
      new Ask<>(TypedCell.class, new NumberTooLongForCode()),
      new Ask<>(LikeSheets.class, new CopiedSheetRead()),
      new Ask<>(LikeSheets.class, new SheetLeftOut()),
      new Ask<>(LikeSheets.class, new ReferenceToLikeSheet()),
      new Ask<>(FormulaCell.class, new LookupTableShort()),
      new Ask<>(FormulaCell.class, new DuplicatePriceRow()),
      new Ask<>(TypedCell.class, new NegativeQuantity()),
      new Ask<>(TypedCell.class, new InputNobodyReads()),
      new Ask<>(TypedCell.class, new RetypedTotal()),
      new Ask<>(DefinedName.class, new NameIsBroken()),
      new Ask<>(DefinedName.class, new NamePointsElsewhere()),
      new Ask<>(SumCell.class, new HiddenRowInTotal()),
      new Ask<>(SumCell.class, new SubtotalUnderFilter()),
      new Ask<>(SumCell.class, new SubtotalDropsHiddenRows()),
      new Ask<>(Tab.class, new HiddenSheetFeedsTotal()),
      new Ask<>(SumCell.class, new FormatHidesValue()),
      new Ask<>(FormulaCell.class, new ExternalLink()),
      new Ask<>(Book.class, new ExternalLinkFarAway()),
      new Ask<>(FormulaCell.class, new DateDrivesAmount()),
      new Ask<>(FormulaCell.class, new FormulaNotChecked()),
      new Ask<>(FormulaCell.class, new ErrorValue()),
      new Ask<>(FormulaCell.class, new StaleValue()),
      new Ask<>(Book.class, new DatesFourYearsApart()),
      new Ask<>(Tab.class, new FormulasHidden()),
      new Ask<>(Book.class, new PrecisionAsDisplayed()),
      new Ask<>(Book.class, new StoredValuesMissing()),
      new Ask<>(Book.class, new ManualCalculation()),
      new Ask<>(Fill.class, new TypedOverFormulaLatent()));

  private static final List<Ask<?>> JOBS = List.of(
      new Ask<>(Modelled.class, new InputIsText()),
      new Ask<>(Modelled.class, new RuleTypedOver()),
      new Ask<>(Modelled.class, new KnownSlipInRule()),
      new Ask<>(Modelled.class, new RuleDiffersInOneRow()),
      new Ask<>(Modelled.class, new RuleChangedHere()),
      new Ask<>(Modelled.class, new ValueOffModel()),
      new Ask<>(Modelled.class, new SimulatedWasteOld()),
      new Ask<>(Allowance.class, new WasteUnderLayout()),
      new Ask<>(Allowance.class, new WasteFarOverLayout()),
      new Ask<>(Modelled.class, new RuleTypedOverLatent()),
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

  private static final List<Ask<?>> BOUND = List.of(
      new Ask<>(BoundValue.class, new PlaneValueOffDimensions()),
      new Ask<>(BoundValue.class, new AmountOffPrice()),
      new Ask<>(BoundValue.class, new TotalOffParts()),
      new Ask<>(EdgeTotal.class, new EdgeTotalOffPlanes()),
      new Ask<>(DoubtedColumn.class, new BoundColumnNeverFits()));

  private Checks() {}

  /** What can be asked of a workbook of foreign layout, as far as it is bound. */
  static List<Ask<?>> ofBoundBooks() {
    return BOUND;
  }

  /** What can be asked of any workbook. */
  static List<Ask<?>> ofAnyWorkbook() {
    return ANY;
  }

  /** What can be asked of a job workbook, whose cells the model knows. */
  static List<Ask<?>> ofJobs() {
    return JOBS;
  }
}
