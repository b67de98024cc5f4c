package squaresheet.binding;

import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;

/** Writes a job as a workbook, sheet by sheet. */
final class JobWriter {

  private final JobParts parts;
  private final Draft draft = new Draft();

  JobWriter(JobParts parts) {
    this.parts = parts;
  }

  Draft write() {
    draft.property(Format.JOB, Format.current());
    DraftSheet summary = draft.sheet(SummarySheet.NAME);
    DraftSheet job = draft.sheet(SettingsSheet.NAME);
    PlanesSheet planes = roof();
    new SettingsSheet(parts, job).write(draft);
    new ProductsSheet(parts, draft.sheet(ProductsSheet.NAME), draft.sheet(ProductsSheet.CHOSEN))
        .write(draft);
    new TakeoffSheet(parts, draft.sheet(TakeoffSheet.NAME)).write(draft);
    OwnRulesSheet.write(draft, parts.rulebook());
    prices();
    new LayoutSheet(parts, draft.sheet(LayoutSheet.NAME)).write(draft, planes);
    if (!parts.unread().isEmpty()) {
      NotReadSheet.write(draft, parts.unread());
    }
    parts
        .field()
        .filter(notes -> !notes.remarks().isEmpty())
        .ifPresent(notes -> RemarksSheet.write(draft, notes.remarks()));
    Cautions.write(draft.sheet(Cautions.NAME));
    new SummarySheet(parts, summary).write();
    DraftValues.store(draft);
    draft.sheets().forEach(Fit::fit);
    return draft;
  }

  private void prices() {
    Pricing pricing = parts.pricing();
    DraftSheet estimate = draft.sheet(EstimateSheet.NAME);
    RatesSheet rates = new RatesSheet(pricing, draft.sheet(RatesSheet.NAME));
    new PricesSheet(pricing, draft.sheet(PricesSheet.NAME)).write(draft);
    rates.write(draft);
    new TermsSheet(pricing, draft.sheet(TermsSheet.NAME)).write(draft);
    new EstimateSheet(parts, pricing, rates, estimate).write(draft);
  }

  private PlanesSheet roof() {
    PlanesSheet planes =
        new PlanesSheet(parts, draft.sheet(PlanesSheet.NAME), draft.sheet(PlanesSheet.WORK));
    OpeningsSheet openings = new OpeningsSheet(parts, draft.sheet(OpeningsSheet.NAME));
    CornersSheet corners = new CornersSheet(parts, draft.sheet(CornersSheet.NAME));
    EdgesSheet edges =
        new EdgesSheet(parts, draft.sheet(EdgesSheet.NAME), planes, corners, openings);
    planes.write(draft);
    openings.write(draft);
    corners.write(draft);
    edges.write(draft);
    return planes;
  }
}
