package icequill.shop.life;

import icequill.document.RepairQuote;
import icequill.ledger.Reading;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.store.DamagedRow;
import icequill.life.job.JobEvent;
import icequill.life.job.JobEvent.Dropped;
import icequill.life.job.JobEvent.Finished;
import icequill.life.job.JobEvent.PartsOrdered;
import icequill.life.job.JobEvent.Readied;
import icequill.life.job.JobState;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A repair that was accepted, called by the number of its quote.
 *
 * @param planned the visit that it was quoted as, by id; empty where that stands nowhere in the book
 */
public record JobLife(QuoteLife quote, RepairQuote paper, JobState state, List<LifeStep> steps,
        Optional<String> planned) {

    private static final String KIND = "JOB";
    private static final String SUPPLIER = "supplier";
    private static final String EXPECTED = "expected";
    private static final String VISIT = "visit";
    private static final String REASON = "reason";

    /** What its first step, and each later one, is called. */
    private enum Event {
        ACCEPTED, PARTS_ORDERED, READIED, FINISHED, DROPPED
    }

    public JobLife {
        steps = List.copyOf(steps);
    }

    /** The job of a quote; a problem where it is none of a repair, or was not accepted. */
    public static Validated<JobLife> of(Reading open, IssuedPaper issued) {
        List<LifeStep> steps = open.entries().steps(KIND, issued.number());
        return QuoteLife.of(open, issued)
                .then(quote -> quote.paper() instanceof RepairQuote paper && !steps.isEmpty()
                        ? Validated.valid(of(open, quote, paper, steps))
                        : Validated.invalid(new Problem(Code.UNKNOWN_NAME, Place.NOWHERE,
                                "there is no job " + issued.number(), "a repair quote that was accepted")));
    }

    private static JobLife of(Reading open, QuoteLife quote, RepairQuote paper, List<LifeStep> steps) {
        JobState state = state(steps);
        Optional<String> planned = quote.request();
        return new JobLife(quote, paper, planned.filter(id -> isOpen(state)).flatMap(id -> done(open, id))
                .map(visit -> finished(state, visit)).orElse(state), steps, planned);
    }

    /** Whether there is still something to do. */
    private static boolean isOpen(JobState state) {
        return switch (state) {
        case JobState.Accepted open -> true;
        case JobState.Waiting open -> true;
        case JobState.Ready open -> true;
        case JobState.Done over -> false;
        case JobState.Withdrawn over -> false;
        };
    }

    /** The visit that it was quoted as, where that was done since: nobody has to say so twice. */
    private static Optional<VisitEntry> done(Reading open, String visit) {
        return open.entries().visit(visit).found().filter(entry -> !entry.isPlanned())
                .filter(entry -> open.entries().withdrawal(visit).isEmpty());
    }

    private static JobState finished(JobState before, VisitEntry visit) {
        LocalDate day = visit.began().toLocalDate();
        return new JobState.Done(day.isBefore(before.since()) ? before.since() : day, visit.id());
    }

    /** The numbers of the quotes that became jobs. */
    public static List<String> numbers(Reading open) {
        return List.copyOf(open.entries().lastSteps(KIND).keySet());
    }

    private static JobState state(List<LifeStep> steps) {
        return LifeStep.<JobState>led("job", new JobState.Accepted(steps.getFirst().dated()),
                steps.subList(1, steps.size()), (state, step) -> JobState.step(state, event(step)));
    }

    private static JobEvent event(LifeStep step) {
        return switch (DamagedRow.made("event", () -> Event.valueOf(step.event()))) {
        case ACCEPTED -> throw new DamagedRow("job " + step.id() + " was accepted twice");
        case PARTS_ORDERED -> new PartsOrdered(step.dated(), step.text(SUPPLIER),
                step.text(EXPECTED).map(day -> DamagedRow.made(EXPECTED, () -> LocalDate.parse(day))));
        case READIED -> new Readied(step.dated());
        case FINISHED -> new Finished(step.dated(), step.text(VISIT).orElse(""));
        case DROPPED -> new Dropped(step.dated(), step.text(REASON));
        };
    }

    /** That a quote was accepted, which makes it a job. */
    public static LifeStep begun(QuoteLife quote, LocalDate day) {
        return new LifeStep(KIND, quote.issued().number(), 1, Event.ACCEPTED.name(), day,
                quote.issued().origin().site(), Map.of(), Map.of());
    }

    /** What happens, as the step after the last. */
    public LifeStep next(JobEvent event) {
        Map<String, String> said = new HashMap<>();
        Map<String, String> personal = new HashMap<>();
        Event what = switch (event) {
        case PartsOrdered order -> {
            order.supplier().ifPresent(name -> said.put(SUPPLIER, name));
            order.expected().ifPresent(day -> said.put(EXPECTED, day.toString()));
            yield Event.PARTS_ORDERED;
        }
        case Readied ready -> Event.READIED;
        case Finished done -> {
            said.put(VISIT, done.visit());
            yield Event.FINISHED;
        }
        case Dropped gone -> {
            gone.reason().ifPresent(words -> personal.put(REASON, words));
            yield Event.DROPPED;
        }
        };
        return new LifeStep(KIND, quote.issued().number(), steps.size() + 1, what.name(), event.day(),
                quote.issued().origin().site(), said, personal);
    }
}
