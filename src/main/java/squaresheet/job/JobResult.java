package squaresheet.job;

import java.util.List;
import java.util.Optional;
import squaresheet.courses.LayoutSettings;
import squaresheet.courses.RoofLayout;
import squaresheet.estimate.Estimate;
import squaresheet.estimate.OrderList;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.roof.Roof;
import squaresheet.takeoff.Names;
import squaresheet.takeoff.Takeoff;

/**
 * A job worked out.
 *
 * @param input what it was worked out from: with the settings that count
 * @param roof the roof as resolved
 * @param layout the course layout; empty where no shingle was chosen
 * @param takeoff the quantities
 * @param estimate the priced lines
 */
public record JobResult(
    JobInput input, Roof roof, Optional<RoofLayout> layout, Takeoff takeoff, Estimate estimate) {

  /**
   * Works out a job. What is wrong with the input is said, and the rest goes on: a setting that cannot be meant counts as not
   * typed. A roof without a single sound plane is nothing to work out.
   */
  public static Read<JobResult> of(JobInput input) {
    Read<JobInput> judged = new JudgedSettings(input).read();
    Read<Roof> read = Roof.resolve(input.roof());
    return read.flatMap(roof -> judged.flatMap(job -> of(
        job.and(LeftOut.of(input.roof(), roof, read.findings()))
            .and(LeftOut.settings(input, job, judged.findings())),
        roof)));
  }

  private static Read<JobResult> of(JobInput input, Roof roof) {
    Said said = new Said();
    LayoutSettings settings = said.listen(new LayoutChoices(input).read()).orElseThrow();
    Optional<RoofLayout> layout = said.listen(RoofLayout.of(roof, input.selection(), settings));
    Names names = Names.of(roof).with(input.settings());
    Names known =
        layout.map(RoofLayout::simulatedWaste).map(names::withSimulatedWaste).orElse(names);
    Takeoff takeoff = said.listen(Takeoff.of(input.company().rulebook(), known, input.selection()))
        .orElseThrow();
    Company company = input.company();
    Estimate estimate = said.listen(
            Estimate.of(takeoff, company.prices(), company.rates(), company.terms()))
        .orElseThrow();
    return Read.of(new JobResult(input, roof, layout, takeoff, estimate), said.findings());
  }

  /** What the tape sheet has and this job has not: {@code plane Front and 6 more rows are missing}; empty where it has all. */
  public String missing() {
    return Unread.sentence(input.unread());
  }

  /** What to order, in whole packs. */
  public OrderList orderList() {
    return OrderList.of(takeoff);
  }

  /** Collects what is said on the way. */
  private static final class Said {
    private final List<Finding> findings = new java.util.ArrayList<>();

    <T> Optional<T> listen(Read<T> read) {
      findings.addAll(read.findings());
      return read.value();
    }

    List<Finding> findings() {
      return findings;
    }
  }
}
