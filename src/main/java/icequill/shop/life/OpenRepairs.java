package icequill.shop.life;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.ledger.Reading;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.entries.VisitEntry;
import icequill.life.job.JobState;
import icequill.life.repair.RecommendedRepair;
import icequill.party.Machine;
import icequill.problem.Place;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.ShopFolder;
import icequill.work.Proposal;
import icequill.work.Visit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Repairs that visits of the book recommended and nobody did since. */
public record OpenRepairs(ShopFolder shop, Reading open) {

    /** Keys of what a visit's form recommends, and of what it did of that. */
    private static final List<String> KEYS = List.of("\"recommended\"", "\"settled\"");
    private static final String FOUND = "\"found\"";

    /**
     * A repair.
     *
     * @param site by id
     * @param planned the visit as which it is to be done, or quoted, by id; empty while there is none
     * @param quote the newest; empty while there is none
     */
    public record One(String site, RecommendedRepair repair, Optional<String> planned, Optional<QuoteLife> quote) {}

    /** Those at machines that still stand at a site, the oldest first. */
    public List<One> at(String site) {
        Set<String> machines = shop.site(site, Place.NOWHERE).stream().flatMap(where -> where.machines().stream())
                .map(Machine::id).collect(Collectors.toSet());
        List<VisitEntry> entries = open.entries().visitsAt(site).stream().filter(entry -> !entry.isForgotten())
                .toList();
        List<RecommendedRepair> repairs = RecommendedRepair.open(entries.stream()
                .filter(entry -> !entry.isPlanned() && KEYS.stream().anyMatch(entry.data()::contains)
                        && open.entries().withdrawal(entry.id()).isEmpty())
                .flatMap(entry -> visit(entry).stream()).toList());
        if (repairs.isEmpty()) {
            return List.of();
        }
        List<Visit> plans = entries.stream().filter(entry -> entry.isPlanned() && entry.data().contains(FOUND)
                && open.entries().withdrawal(entry.id()).isEmpty()).flatMap(entry -> visit(entry).stream()).toList();
        List<LifeStep> quotes = open.entries().stepsAt(site).stream()
                .filter(step -> QuoteLife.form(step).filter(form -> form.contains(FOUND)).isPresent()).toList();
        return repairs.stream().filter(repair -> machines.contains(repair.machine()))
                .map(repair -> one(site, repair, plans, quotes)).filter(one -> !isDone(one)).toList();
    }

    /** Those at all sites of the book, the oldest first. */
    public List<One> all() {
        return open.entries().visits().stream().filter(entry -> entry.data().contains(KEYS.getFirst()))
                .map(VisitEntry::site).distinct().flatMap(site -> at(site).stream())
                .sorted(Comparator.comparing(one -> one.repair().day())).toList();
    }

    private Optional<Visit> visit(VisitEntry entry) {
        return shop.contents().visit(BookForms.form(entry));
    }

    private One one(String site, RecommendedRepair repair, List<Visit> plans, List<LifeStep> quotes) {
        Optional<String> planned = plans.stream().filter(plan -> isFor(plan, repair)).map(Visit::id)
                .reduce((first, last) -> last);
        Optional<QuoteLife> quote = quotes.stream().filter(step -> quoted(step).filter(plan -> isFor(plan, repair))
                .isPresent()).reduce((first, last) -> last)
                .flatMap(step -> open.papers().show(step.id()).then(issued -> QuoteLife.of(open, issued)).found());
        return new One(site, repair, planned, quote);
    }

    private Optional<Visit> quoted(LifeStep issued) {
        return QuoteLife.form(issued).flatMap(
                form -> shop.contents().visit(Form.stored(FormKind.PLANNED_VISIT, issued.id(), form)));
    }

    private static boolean isFor(Visit plan, RecommendedRepair repair) {
        return plan.proposal().flatMap(Proposal::found)
                .filter(found -> repair.isNamed(FormName.of(found.visit()).stem(), found.recommended())).isPresent();
    }

    private boolean isDone(One one) {
        return one.quote().filter(quote -> JobLife.of(open, quote.issued()).found()
                .filter(job -> job.state() instanceof JobState.Done).isPresent()).isPresent();
    }
}
