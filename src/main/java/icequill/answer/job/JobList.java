package icequill.answer.job;

import icequill.answer.Listing;
import icequill.explain.ConstantKey;
import java.time.LocalDate;
import java.util.List;

/** Jobs, those that wait longest first. */
public record JobList(List<JobSheet> jobs) implements Listing {

    private static final List<String> HEAD = List.of("quote", "state", "since", "parts", "machine", "for");

    public JobList {
        jobs = List.copyOf(jobs);
    }

    @Override
    public List<String> head() {
        return HEAD;
    }

    @Override
    public List<List<String>> rows() {
        return jobs.stream().map(job -> List.of(job.quote(), ConstantKey.words(job.state().name()),
                job.since().toString(),
                job.expected().map(LocalDate::toString).orElse("") + (job.late() ? ", late" : ""), job.machine(),
                job.where())).toList();
    }
}
