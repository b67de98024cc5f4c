package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import squaresheet.courses.RoofLayout;
import squaresheet.estimate.OrderList;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.job.JobResult;
import squaresheet.roof.Plane;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;

/**
 * What goes from a job workbook to the supplier and to the crew, by its own cells worked out anew, so that no paper says
 * another number than the workbook. Only a workbook that passes has an order to give.
 */
public final class JobPapers {

  private final Model model;
  private final Verdict verdict;
  private final OrderedPacks packs;
  private final List<Finding> layout;

  private JobPapers(Model model, Verdict verdict) {
    this.model = model;
    this.verdict = verdict;
    packs = new OrderedPacks(model);
    layout = new DrawnLayout(model).findings();
  }

  /** Verifies a job workbook and works out its papers; nothing where it holds no job that can be worked out. */
  public static Read<JobPapers> of(Workbook workbook, String file, Rulebook rulebook) {
    Book book = Book.of(file, Marks.unmarked(workbook));
    JobSubjects job = new JobSubjects(book);
    Optional<Model> model = job.model(rulebook);
    return model
        .map(it -> Read.of(new JobPapers(it, Verify.of(workbook, file, rulebook))))
        .orElseGet(() -> Read.nothing(job.findings()));
  }

  /** The job, rebuilt from what is typed. */
  public JobResult job() {
    return model.result();
  }

  /** The course layout to draw; empty where no shingle is chosen. */
  public Optional<RoofLayout> layout() {
    return model.result().layout();
  }

  /** What is said of the order and the layout, and every error that the pass found. */
  public List<Finding> findings() {
    List<Finding> said =
        new ArrayList<>(verdict.findings().stream().filter(Finding::isError).toList());
    said.addAll(packs.findings());
    said.addAll(layout);
    return List.copyOf(said);
  }

  /** Whether anything of it withholds the order. */
  public boolean isWithheld() {
    return !verdict.isPassed() || findings().stream().anyMatch(Finding::isError);
  }

  /** What to order, in whole packs; nothing where it is withheld. */
  public Optional<OrderList> order() {
    return isWithheld() ? Optional.empty() : Optional.of(packs.list());
  }

  /** The old layers that come off first. */
  public double layersTornOff() {
    return model.takeoff().number("tear_off_layers").orElse(0.0);
  }

  /** The planes that take two layers of underlayment, in the order of the roof. */
  public List<String> doubledPlanes() {
    List<Plane> planes = model.result().roof().planes();
    return IntStream.range(0, planes.size())
        .filter(row -> layers(planes.get(row), row) > 1)
        .mapToObj(row -> planes.get(row).id())
        .toList();
  }

  /** The layers of underlayment that the workbook has for a plane, or the model where it has no number. */
  private double layers(Plane plane, int row) {
    return model
        .job()
        .cells()
        .cell("plane " + plane.id(), "underlayment_layers")
        .map(model.book()::number)
        .orElseGet(OptionalDouble::empty)
        .orElseGet(() -> model.takeoff().number("underlayment_layers", row).orElse(1.0));
  }
}
