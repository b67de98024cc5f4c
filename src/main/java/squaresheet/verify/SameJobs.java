package squaresheet.verify;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/** Jobs that stand in more than one workbook: nobody can say which of them holds, so neither is given. */
final class SameJobs {

  private static final CheckInfo SAME =
      new CheckInfo("job-in-two-files", Severity.ERROR, "The same job stands in two workbooks");

  private final Map<JobIdentity, List<Verdict>> jobs;

  SameJobs(Collection<Verdict> verdicts) {
    jobs = verdicts.stream()
        .filter(verdict -> verdict.total().isPresent())
        .collect(Collectors.groupingBy(
            verdict -> verdict.total().orElseThrow().identity(),
            LinkedHashMap::new,
            Collectors.toList()));
  }

  /** Why a verdict that carries amounts is withheld; nothing where its job stands in no other workbook. */
  Optional<Withheld> withheld(Verdict verdict) {
    JobTotal total = verdict.total().orElseThrow();
    List<String> others = jobs.get(total.identity()).stream()
        .filter(other -> other != verdict)
        .map(Verdict::file)
        .toList();
    String says =
        "is the job " + total.identity() + ", which stands in " + String.join(" and ", others)
            + " too, and nobody can say which of them holds; leave out what does not, or tell them apart by a job number or"
            + " another job name in the workbook";
    return others.isEmpty()
        ? Optional.empty()
        : Optional.of(new Withheld(
            verdict.file(), List.of(new Finding(SAME, new Where.InFile(verdict.file()), says))));
  }
}
