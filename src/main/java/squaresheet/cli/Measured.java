package squaresheet.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import squaresheet.binding.FieldNotes;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.job.Company;
import squaresheet.job.JobResult;

/**
 * What a filled field sheet makes with the company's lists.
 *
 * @param notes the sheet, where it could be read
 * @param job the job, where the sheet makes a roof
 * @param findings what there is to say of the lists, the sheet and the job
 */
record Measured(Optional<FieldNotes> notes, Optional<JobResult> job, List<Finding> findings) {

  static Measured of(Path sheet, Path folder, Locale locale) {
    Read<Company> company = CompanyFolder.read(folder);
    Company brings = company.value().orElseThrow();
    Read<FieldNotes> notes = FieldFile.read(sheet, locale, brings.rulebook());
    Read<JobResult> job = notes.flatMap(it -> it.job(brings)).flatMap(JobResult::of);
    List<Finding> findings = new ArrayList<>(company.findings());
    findings.addAll(job.findings());
    return new Measured(notes.value(), job.value(), findings);
  }
}
