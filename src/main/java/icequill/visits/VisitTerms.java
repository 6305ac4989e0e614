package icequill.visits;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Site;
import icequill.pricer.PricedVisit;
import icequill.pricer.Pricer;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.work.Outcome;
import icequill.work.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What agreements promise for a visit.
 *
 * @param inForce at its site on its day
 */
public record VisitTerms(Visit visit, Site site, List<AgreementInForce> inForce) {

    public VisitTerms {
        inForce = List.copyOf(inForce);
    }

    /** The same; the visit has the standing purchase order of its agreement where it names none. */
    public VisitTerms ordered() {
        return new VisitTerms(
                visit.ordered(
                        visit.order().standing(applied().flatMap(found -> found.request().orders().on(visit.day())))),
                site, inForce);
    }

    /** The same of the visit as it is priced with others. */
    VisitTerms of(Visit other) {
        return new VisitTerms(other, site, inForce);
    }

    /** The one that reaches the visit; empty where none does, or several do. */
    private Optional<AgreementInForce> applied() {
        List<AgreementInForce> reaching = inForce.size() == 1
                ? inForce
                : inForce.stream().filter(agreement -> agreement.reaches(visit)).toList();
        return reaching.size() == 1 ? Optional.of(reaching.getFirst()) : Optional.empty();
    }

    /** The number of the agreement that it falls under. */
    public Optional<String> agreement() {
        return applied().map(AgreementInForce::number);
    }

    /** The plan of the agreement that it falls under, by id. */
    public Optional<String> tier() {
        return applied().map(found -> found.tier().id());
    }

    /** The visit's price with the discounts of its agreement, or that work is called included which no agreement includes. */
    public Validated<PricedVisit> price(Rates rates) {
        Problems problems = new Problems();
        problems.addAll(notIncluded());
        Validated<PricedVisit> priced = applied()
                .map(agreement -> Pricer.price(visit, site, rates, agreement.discount()))
                .orElseGet(() -> Pricer.price(visit, site, rates));
        problems.addAll(noneLeft());
        problems.addAll(priced.problems());
        return problems.or(() -> counted(priced.orElseThrow()));
    }

    private List<Problem> notIncluded() {
        if (inForce.isEmpty()) {
            return included().map(place -> new Problem(Code.NOT_ALLOWED, place,
                    "included, but no accepted agreement for site \"" + site.id() + "\" runs on " + visit.day(),
                    "charged, callback or goodwill; or an agreement of the site in the book, with the day it was accepted"))
                    .distinct().toList();
        }
        String numbers = numbers();
        return Stream.concat(
                visit.findings().stream().filter(finding -> isOutside(finding.machine()))
                        .flatMap(IncludedWork::at).map(place -> outside(place, numbers)),
                visit.lines().stream()
                        .filter(line -> line.outcome() == Outcome.INCLUDED
                                && line.machine().filter(this::isOutside).isPresent())
                        .map(line -> outside(line.place(), numbers)))
                .toList();
    }

    private boolean isOutside(String machine) {
        return site.machine(machine).isPresent()
                && inForce.stream().noneMatch(agreement -> agreement.machines().contains(machine));
    }

    private static Problem outside(Place place, String numbers) {
        return new Problem(Code.NOT_ALLOWED, place, "included, but agreement " + numbers + " is not for this machine",
                "charged, callback or goodwill; or a change in the agreement that adds the machine");
    }

    private Stream<Place> included() {
        return new IncludedWork(visit).places();
    }

    /** The calls that its agreement includes, where the visit answers one. */
    private Optional<CountedCalls> calls() {
        return visit.call().flatMap(call -> applied()).flatMap(AgreementInForce::calls);
    }

    /** That all calls are used by other visits, so that it may use none. */
    private List<Problem> noneLeft() {
        return calls().map(calls -> calls.without(visit)).filter(others -> others.left() == 0)
                .flatMap(others -> included().findFirst().map(place -> new Problem(Code.NOT_ALLOWED, place,
                        "included, but the calls that agreement " + applied().orElseThrow().number()
                                + " includes until " + others.until() + " are used: "
                                + String.join(", ", others.visits()),
                        "charged, with the discount of the agreement; callback or goodwill")))
                .stream().toList();
    }

    /** The price with which call it is at what is included. */
    private PricedVisit counted(PricedVisit priced) {
        return calls().map(calls -> priced.because(Outcome.INCLUDED, Phrase.of("reason.included-call",
                new Fact.Text(String.valueOf(calls.place(visit))), new Fact.Text(String.valueOf(calls.included())),
                new Fact.Text(applied().orElseThrow().number())))).orElse(priced);
    }

    /** What of the promises was not applied, and what may have been meant. */
    List<Problem> notices() {
        List<Problem> notices = new ArrayList<>();
        Optional<AgreementInForce> applied = applied();
        if (applied.isEmpty() && !inForce.isEmpty()) {
            notices.add(new Problem(Code.NOT_ALLOWED, visit.place(),
                    "agreements " + numbers()
                            + " run at the site, and it is not clear which is for this visit: the discounts of none were applied",
                    "machines of one of them, or a classDiscount"));
        }
        applied.filter(agreement -> !agreement.tier().callDiscounts().isEmpty())
                .flatMap(agreement -> visit.terms().classDiscount().map(own -> new Problem(Code.NOT_ALLOWED,
                        own.place(),
                        "agreement " + agreement.number() + " was not applied: the visit has the class discount \""
                                + own.id() + "\" instead",
                        "leave it out for the agreement's discounts")))
                .ifPresent(notices::add);
        calls().map(calls -> calls.without(visit)).filter(calls -> calls.left() > 0 && included().findAny().isEmpty())
                .map(calls -> new Problem(Code.NOT_ALLOWED, visit.place(),
                        "agreement " + applied.orElseThrow().number() + " includes " + calls.included()
                                + " calls until " + calls.until() + ", of which " + calls.left()
                                + " are left, and this visit charges one",
                        "outcome: included, unless the call is for what the agreement leaves out"))
                .ifPresent(notices::add);
        applied.flatMap(agreement -> agreement.mayBePlanned(visit, site)).ifPresent(notices::add);
        return notices;
    }

    private String numbers() {
        return inForce.stream().map(AgreementInForce::number).collect(Collectors.joining(", "));
    }
}
