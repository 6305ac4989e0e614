package icequill.shop.life;

import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PlanYear;
import icequill.document.RepairQuote;
import icequill.ledger.Reading;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.store.DamagedRow;
import icequill.life.quote.AcceptanceWay;
import icequill.life.quote.QuoteEvent;
import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.life.quote.QuoteEvent.Refusal;
import icequill.life.quote.QuoteState;
import icequill.life.quote.QuoteTerms;
import icequill.life.quote.RefusalReason;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.BookedPapers;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A quote of the book, where it stands by its paper and by what happened to it since.
 *
 * @param made what its acceptance made, by what the book calls it; empty before
 */
public record QuoteLife(IssuedPaper issued, Paper paper, QuoteState state, List<LifeStep> steps,
        Optional<String> made) {

    /** The kind of these steps. */
    public static final String KIND = "QUOTE";
    /** Names the agreement, or the job, that an acceptance made. */
    private static final String MADE = "made";
    /** Holds the form that the quote was made from, as JSON. */
    private static final String FORM = "form";
    /** Names that form in the book; missing where it stood nowhere in it. */
    private static final String REQUEST = "request";

    private static final String ISSUED = "ISSUED";

    /** What a customer says. */
    public enum Answer {
        ACCEPTED, DECLINED
    }

    public QuoteLife {
        steps = List.copyOf(steps);
    }

    /** The quote of a paper; a problem where it is none, or cannot be read. */
    public static Validated<QuoteLife> of(Reading open, IssuedPaper issued) {
        return BookedPapers.paper(open, issued).then(paper -> of(open, issued, paper));
    }

    /** The same where the paper was read already. */
    public static Validated<QuoteLife> of(Reading open, IssuedPaper issued, Paper paper) {
        List<LifeStep> steps = open.entries().steps(KIND, issued.number());
        return terms(paper).<Validated<QuoteTerms>>map(Validated::valid)
                .orElseGet(() -> Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        issued.number() + " is no quote", "the number of a quote")))
                .map(terms -> new QuoteLife(issued, paper, state(terms, steps), steps,
                        steps.stream().flatMap(step -> step.text(MADE).stream()).findFirst()));
    }

    /** What customers said to quotes, by number; those that nobody answered are not among them. */
    public static Map<String, Answer> answers(Reading open) {
        Map<String, Answer> answers = new HashMap<>();
        open.entries().lastSteps(KIND).forEach((number, event) -> {
            if (!event.equals(ISSUED)) {
                answers.put(number, DamagedRow.made("event", () -> Answer.valueOf(event)));
            }
        });
        return answers;
    }

    private static Optional<QuoteTerms> terms(Paper paper) {
        return switch (paper) {
        case RepairQuote quote -> Optional.of(new QuoteTerms(quote.date(), quote.validUntil(), List.of()));
        case MaintenanceQuote quote -> Optional.of(new QuoteTerms(quote.date(), quote.validUntil(),
                quote.plans().stream().map(PlanYear::tier).map(tier -> tier.id()).toList()));
        default -> Optional.empty();
        };
    }

    private static QuoteState state(QuoteTerms terms, List<LifeStep> steps) {
        return LifeStep.<QuoteState>led("quote", new QuoteState.Issued(terms),
                steps.stream().filter(step -> !step.event().equals(ISSUED)).toList(),
                (state, step) -> QuoteState.step(state, event(step)));
    }

    private static QuoteEvent event(LifeStep step) {
        return switch (DamagedRow.made("event", () -> Answer.valueOf(step.event()))) {
        case ACCEPTED -> new Acceptance(step.dated(), step.text("plan"), step.text("name"), step.text("title"),
                step.text("authority"), step.text("purchaseOrder"),
                constant(step, "way", AcceptanceWay.class), step.text("honored").isPresent());
        case DECLINED -> new Refusal(step.dated(), constant(step, "reason", RefusalReason.class),
                step.text("words"));
        };
    }

    private static <E extends Enum<E>> E constant(LifeStep step, String key, Class<E> type) {
        return DamagedRow.made(key, () -> Enum.valueOf(type, step.text(key).orElse("")));
    }

    /**
     * That a quote was issued, and what from.
     *
     * @param request what the book calls the form; empty where it does not have it
     * @param form as JSON
     */
    public static LifeStep issued(String number, LocalDate date, String site, Optional<String> request, String form) {
        Map<String, String> said = new HashMap<>();
        request.ifPresent(name -> said.put(REQUEST, name));
        return new LifeStep(KIND, number, 1, ISSUED, date, Optional.of(site), said, Map.of(FORM, form));
    }

    /**
     * What happens, as the step after the last.
     *
     * @param made what an acceptance makes; empty for a refusal
     */
    public LifeStep next(QuoteEvent event, Optional<String> made) {
        Map<String, String> said = new HashMap<>();
        Map<String, String> personal = new HashMap<>();
        made.ifPresent(name -> said.put(MADE, name));
        switch (event) {
        case Acceptance yes -> {
            said.put("way", yes.way().name());
            yes.plan().ifPresent(plan -> said.put("plan", plan));
            yes.purchaseOrder().ifPresent(order -> said.put("purchaseOrder", order));
            if (yes.isHonored()) {
                said.put("honored", "true");
            }
            yes.name().ifPresent(name -> personal.put("name", name));
            yes.title().ifPresent(title -> personal.put("title", title));
            yes.authority().ifPresent(right -> personal.put("authority", right));
        }
        case Refusal no -> {
            said.put("reason", no.reason().name());
            no.words().ifPresent(words -> personal.put("words", words));
        }
        }
        return new LifeStep(KIND, issued.number(), steps.size() + 1,
                (event instanceof Acceptance ? Answer.ACCEPTED : Answer.DECLINED).name(), event.day(),
                issued.origin().site(), said,
                personal);
    }

    /** What a step says that a quote was made from, as JSON; empty where it does not, or was forgotten. */
    static Optional<String> form(LifeStep step) {
        return step.kind().equals(KIND) ? step.text(FORM) : Optional.empty();
    }

    /** What it was made from, as JSON; empty where the book kept none. */
    public Optional<String> form() {
        return steps.stream().flatMap(step -> step.text(FORM).stream()).findFirst();
    }

    /** What the book calls the form that it was made from; empty where it does not say. */
    public Optional<String> request() {
        return steps.stream().flatMap(step -> step.text(REQUEST).stream()).findFirst();
    }
}
