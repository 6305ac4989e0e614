package icequill.visits;

import icequill.party.Language;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.planner.kept.KeptTimetables;
import icequill.pricer.SpendingLimit;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Contradictions;
import icequill.rates.Rates;
import icequill.rates.RefrigerantNotes;
import icequill.tax.TaxCalculator;
import icequill.tax.TaxedVisit;
import icequill.work.Finding;
import icequill.work.Route;
import icequill.work.Visit;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A visit that was read, priced and taxed, with everything that went into it.
 *
 * @param terms what agreements promise for it
 * @param timetables where that of a visit to come comes from
 */
public record VisitContext(Shop shop, Site site, Visit visit, Rates rates, TaxedVisit taxed, VisitTerms terms,
        KeptTimetables timetables) {

    public VisitContext namingTaxPlace() {
        return new VisitContext(shop, site, visit, rates, taxed.namingPlace(), terms, timetables);
    }

    /** The same with its part of the charge for coming out on its route. */
    Validated<VisitContext> sharing(Route.Shared stop) {
        return anew(terms.of(visit.sharing(stop)));
    }

    /** The same with other things that were sold ahead. */
    Validated<VisitContext> paidAhead(Visit drawing) {
        return anew(terms.of(drawing));
    }

    private Validated<VisitContext> anew(VisitTerms part) {
        return part.price(rates)
                .map(priced -> new VisitContext(shop, site, part.visit(), rates, TaxCalculator.tax(priced,
                        taxed.place(), shop.taxBasis(), site.customer(), visit.day()), part, timetables));
    }

    /** The same, its visit so much later. */
    VisitContext later(Duration by) {
        return new VisitContext(shop, site, visit.later(by), rates, taxed, terms, timetables);
    }

    /** A day of the visit, with what is done at some machines. */
    VisitContext part(int days, List<String> machines) {
        return new VisitContext(shop, site, visit.part(days, machines), rates, taxed, terms, timetables);
    }

    public Contradictions contradictions(Finding finding) {
        return new Contradictions(finding, site.machine(finding.machine()).orElseThrow(), site.layout(), rates);
    }

    private Optional<RefrigerantNotes> refrigerant(Finding finding) {
        return finding.refrigerant().map(work -> new RefrigerantNotes(work,
                site.machine(finding.machine()).orElseThrow(), visit.people(), rates));
    }

    /**
     * The visit, unless it says of chemicals what labels or limits contradict and nobody confirmed, or of refrigerant what nobody may
     * vouch for.
     */
    public Validated<VisitContext> vouched() {
        Problems problems = new Problems();
        for (Finding finding : visit.findings()) {
            Contradictions contradictions = contradictions(finding);
            problems.addAll(contradictions.unknown());
            if (finding.confirmed().isEmpty()) {
                contradictions.found().forEach(noted -> problems.add(noted.problem()));
            }
            refrigerant(finding).ifPresent(notes -> problems.addAll(notes.problems().list()));
        }
        return problems.or(() -> this);
    }

    /** As it is asked for, otherwise the customer's, otherwise the shop's. */
    public Language language(Optional<Language> wanted) {
        return wanted.or(() -> site.customer().language()).orElse(shop.language());
    }

    /** The same, or that it costs more than the customer allows. */
    public Validated<VisitContext> withinLimit() {
        return SpendingLimit.exceeded(taxed.priced(), visit).map(Validated::<VisitContext>invalid)
                .orElseGet(() -> Validated.valid(this));
    }

    /** What does not stop the work but should be known: a limit exceeded, an agreement that was not applied, odd weights of refrigerant. */
    public List<Problem> notices() {
        return Stream.concat(SpendingLimit.exceeded(taxed.priced(), visit).stream(), Stream
                .concat(terms.notices().stream(), visit.findings().stream()
                        .flatMap(finding -> refrigerant(finding).stream()).flatMap(notes -> notes.doubts().stream())))
                .toList();
    }
}
