package icequill.office;

import icequill.files.ShopFolder;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.pricer.PricedVisit;
import icequill.pricer.Pricer;
import icequill.pricer.SpendingLimit;
import icequill.problem.Checked;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.rates.Contradictions;
import icequill.rates.Rates;
import icequill.tax.TaxCalculator;
import icequill.tax.TaxPlace;
import icequill.tax.TaxedVisit;
import icequill.work.Finding;
import icequill.work.Visit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A visit that was read, priced and taxed, with everything that went into it.
 *
 * @param terms what agreements promise for it
 */
record VisitInHand(Shop shop, Site site, Visit visit, Rates rates, TaxedVisit taxed, VisitTerms terms) {

    /** Reads and prices one visit; one report holds all that is wrong with it and with the rates. */
    static Checked<VisitInHand> of(ShopFolder folder, Path file) {
        return of(folder, file, Visit::day);
    }

    /**
     * The same at the prices of another day than the visit's own.
     *
     * @param day whose rates hold
     */
    static Checked<VisitInHand> of(ShopFolder folder, Path file, Function<Visit, LocalDate> day) {
        Problems problems = new Problems();
        Optional<VisitInHand> hand = read(folder, folder.visit(file), day, problems);
        return report(folder, problems).or(hand::orElseThrow);
    }

    /** The same for a visit that stands in the book. */
    static Checked<VisitInHand> stored(ShopFolder folder, String id, String data) {
        Problems problems = new Problems();
        Optional<VisitInHand> hand = read(folder, folder.visitOf(data, id), Visit::day, problems);
        return report(folder, problems).or(hand::orElseThrow);
    }

    /** All that is wrong with what was read from the folder so far, and what was found beyond that. */
    static Problems report(ShopFolder folder, Problems beyond) {
        Problems all = new Problems();
        all.addAll(folder.problems());
        all.addAll(Glyphs.problems(folder.texts()));
        all.addAll(beyond.list());
        return all;
    }

    /**
     * The visit as far as it could be worked out; empty where something is missing, which was reported.
     *
     * @param problems those are added here that the folder itself cannot know
     */
    static Optional<VisitInHand> read(ShopFolder folder, Path file, Problems problems) {
        return read(folder, folder.visit(file), Visit::day, problems);
    }

    private static Optional<VisitInHand> read(ShopFolder folder, Optional<Visit> visit,
            Function<Visit, LocalDate> day, Problems problems) {
        visit.ifPresent(found -> problems.addAll(
                ShopDay.likely(found.day(), found.place(), "the day of the visit").problems()));
        Optional<Site> site = visit.flatMap(found -> folder.site(found.site(), found.place()));
        Optional<Rates> rates = visit
                .flatMap(
                        found -> folder.schedule().flatMap(schedule -> problems.take(schedule.asOf(day.apply(found)))));
        Optional<VisitTerms> terms = visit.flatMap(found -> site.map(where -> new VisitTerms(found, where,
                AgreementInForce.at(folder, where, found.day(), problems))));
        Optional<PricedVisit> priced = terms
                .flatMap(found -> rates.flatMap(prices -> price(found, prices, folder, problems)));
        Optional<TaxPlace> place = visit
                .flatMap(found -> site.flatMap(where -> PlanSetting.taxPlace(folder, where, found.day(), problems)));
        if (priced.isEmpty() || place.isEmpty()) {
            return Optional.empty();
        }
        Shop shop = folder.shop().orElseThrow();
        TaxedVisit taxed = TaxCalculator.tax(priced.get(), place.get(), shop.taxBasis(), site.orElseThrow().customer(),
                visit.orElseThrow().day());
        return Optional.of(new VisitInHand(shop, site.orElseThrow(), visit.orElseThrow(), rates.orElseThrow(), taxed,
                terms.orElseThrow()));
    }

    /**
     * By rates with problems nothing is priced, but names are still looked up. A name that the rates' files mention is not
     * reported as unknown then: its entry has a problem of its own.
     */
    private static Optional<PricedVisit> price(VisitTerms terms, Rates rates, ShopFolder folder, Problems problems) {
        if (folder.problems().stream().noneMatch(problem -> problem.place().file().startsWith("pricing"))) {
            return problems.take(terms.price(rates));
        }
        List<String> mentioned = folder.texts().stream().filter(text -> text.place().file().startsWith("pricing"))
                .map(text -> "\"" + text.text() + "\"").toList();
        Pricer.problems(terms.visit(), terms.site(), rates).stream()
                .filter(problem -> mentioned.stream().noneMatch(problem.message()::endsWith)).forEach(problems::add);
        return Optional.empty();
    }

    Contradictions contradictions(Finding finding) {
        return new Contradictions(finding, site.machine(finding.machine()).orElseThrow(), site.layout(), rates);
    }

    /** The visit, unless it says of chemicals what labels or limits contradict and nobody confirmed. */
    Checked<VisitInHand> vouched() {
        Problems problems = new Problems();
        for (Finding finding : visit.findings()) {
            Contradictions contradictions = contradictions(finding);
            problems.addAll(contradictions.unknown());
            if (finding.confirmed().isEmpty()) {
                contradictions.found().forEach(noted -> problems.add(noted.problem()));
            }
        }
        return problems.or(() -> this);
    }

    /** As it is asked for, otherwise the customer's, otherwise the shop's. */
    Language language(Optional<Language> wanted) {
        return wanted.or(() -> site.customer().language()).orElse(shop.language());
    }

    /** The same, or that it costs more than the customer allows. */
    Checked<VisitInHand> withinLimit() {
        return SpendingLimit.exceeded(taxed.priced(), visit.order()).map(Checked::<VisitInHand>faulty)
                .orElseGet(() -> Checked.sound(this));
    }

    /** What does not stop the work but should be known: a limit exceeded, an agreement that was not applied. */
    List<Problem> notices() {
        return Stream.concat(SpendingLimit.exceeded(taxed.priced(), visit.order()).stream(), terms.notices().stream())
                .toList();
    }
}
