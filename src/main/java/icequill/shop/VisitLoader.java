package icequill.shop;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.pricer.PricedVisit;
import icequill.pricer.Pricer;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.tax.BlockTax;
import icequill.tax.TaxCalculator;
import icequill.tax.TaxPlace;
import icequill.tax.TaxedVisit;
import icequill.visits.CreditedDiagnosis;
import icequill.visits.VisitContext;
import icequill.visits.VisitTerms;
import icequill.work.Block;
import icequill.work.Call;
import icequill.work.PurchaseOrder;
import icequill.work.Visit;
import icequill.work.VisitLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads visits with their sites, the agreements that run there and what was sold ahead, and prices and taxes them. */
public record VisitLoader(ShopFolder folder) {

    /** Reads and prices one visit; one report holds all that is wrong with it and with the rates. */
    public Validated<VisitContext> of(FormName name) {
        return of(name, Visit::day);
    }

    /**
     * The same at the prices of another day than the visit's own.
     *
     * @param day whose rates hold
     */
    public Validated<VisitContext> of(FormName name, Function<Visit, LocalDate> day) {
        Problems problems = new Problems();
        Optional<VisitContext> hand = folder.form(name, List.of(FormKind.VISIT, FormKind.PLANNED_VISIT))
                .flatMap(form -> read(form, day, problems));
        return GlyphCheck.report(folder, problems).or(hand::orElseThrow);
    }

    /** The same for a form that is there already. */
    public Validated<VisitContext> of(Form form) {
        Problems problems = new Problems();
        Optional<VisitContext> hand = read(form, problems);
        return GlyphCheck.report(folder, problems).or(hand::orElseThrow);
    }

    /**
     * The visit as far as it could be worked out; empty where something is missing, which was reported.
     *
     * @param problems those are added here that the folder itself cannot know
     */
    public Optional<VisitContext> read(Form form, Problems problems) {
        return read(form, Visit::day, problems);
    }

    /**
     * The same at the prices of another day than the visit's own.
     *
     * @param day whose rates hold
     */
    public Optional<VisitContext> read(Form form, Function<Visit, LocalDate> day, Problems problems) {
        return folder.contents().visit(form).flatMap(visit -> read(visit, day, true, problems));
    }

    /** @param crediting whether a diagnosis that it names is taken off */
    private Optional<VisitContext> read(Visit written, Function<Visit, LocalDate> day, boolean crediting,
            Problems problems) {
        problems.addAll(ShopDay.likely(written.day(), written.place(), "the day of the visit").problems());
        Optional<Site> site = folder.site(written.site(), written.day(), written.place());
        Optional<TaxPlace> place = site.flatMap(where -> folder.taxPlaces().at(written, where, problems));
        Optional<Rates> rates = folder.schedule()
                .flatMap(schedule -> problems.take(schedule.asOf(day.apply(written), site)))
                .map(prices -> folder.taxPlaces().shown(prices, place));
        Visit asked = ordered(written, problems);
        Visit visit = rates.filter(prices -> crediting)
                .map(prices -> site.map(where -> paidAhead(asked, where, problems)).orElse(asked))
                .map(free -> credited(free, rates.orElseThrow(), day, problems)).orElse(asked);
        Optional<VisitTerms> terms = site
                .map(where -> new VisitTerms(visit, where,
                        new AgreementsInForce(folder).of(where, visit.day(), problems)).ordered());
        Optional<PricedVisit> priced = terms.flatMap(found -> rates.flatMap(prices -> price(found, prices, problems)));
        if (priced.isEmpty() || place.isEmpty()) {
            return Optional.empty();
        }
        Shop shop = folder.shop().orElseThrow();
        TaxedVisit taxed = TaxCalculator.tax(priced.get(), place.get(), shop.taxBasis(), site.orElseThrow().customer(),
                visit.day());
        return Optional.of(new VisitContext(shop, site.orElseThrow(), terms.orElseThrow().visit(), rates.orElseThrow(),
                taxed, terms.orElseThrow(), folder.timetables()));
    }

    /** With the limit of the call that it answers, as it was allowed last; the number of the order may have come later. */
    private Visit ordered(Visit visit, Problems problems) {
        return visit.call().flatMap(Call::id).flatMap(call -> problems.take(folder.orderOfCall(call)))
                .flatMap(order -> order).map(order -> visit.ordered(new PurchaseOrder(
                        visit.order().purchaseOrder().or(order::purchaseOrder), order.limit(), order.approver(),
                        visit.order().place())))
                .orElse(visit);
    }

    /** The visit less what the diagnosis that it names charged; itself where that cannot be, which is reported. */
    private Visit credited(Visit visit, Rates prices, Function<Visit, LocalDate> day, Problems problems) {
        return visit.terms().diagnosis()
                .flatMap(named -> folder.form(named.visit(), List.of(FormKind.VISIT), named.place()))
                .flatMap(folder.contents()::visit).flatMap(found -> read(found, day, false, problems))
                .flatMap(found -> problems.take(new CreditedDiagnosis(found).off(visit, prices))).orElse(visit);
    }

    /** The visit with what was sold ahead at its site; what is only quoted is at list prices. */
    private Visit paidAhead(Visit visit, Site site, Problems problems) {
        return visit.proposal().isPresent()
                ? visit
                : visit.paidAhead(held(site, visit.id(), problems));
    }

    /**
     * What was sold ahead at a site and billed, the oldest first.
     *
     * @param but a visit or sale that is left out, by id, with whatever it used; empty for none
     */
    public List<Block.Held> held(Site site, String but, Problems problems) {
        return folder.soldAhead(site.id()).stream().filter(sold -> !sold.form().id().equals(but))
                .flatMap(sold -> held(sold, but, site, problems).stream()).toList();
    }

    private Optional<Block.Held> held(SoldAhead sold, String but, Site site, Problems problems) {
        BigDecimal used = sold.draws().stream().filter(draw -> !draw.visit().equals(but))
                .map(draw -> draw.used().units()).reduce(BigDecimal.ZERO, BigDecimal::add);
        return folder.contents().visit(sold.form())
                .flatMap(sale -> folder.taxPlaces().at(sale, site, problems)
                        .flatMap(place -> sale.lines().stream()
                                .flatMap(line -> line instanceof VisitLine.Own own ? Stream.of(own) : Stream.empty())
                                .flatMap(own -> own.block().stream()
                                        .map(block -> new Block.Held(sale.id(), sale.day(), own.text(), sold.paid(),
                                                block, used, place.blocks() == BlockTax.AT_USE)))
                                .findFirst()));
    }

    /**
     * By rates with problems nothing is priced, but names are still looked up. A name that the rates' files mention is not
     * reported as unknown then: its entry has a problem of its own.
     */
    private Optional<PricedVisit> price(VisitTerms terms, Rates rates, Problems problems) {
        if (folder.problems().stream().noneMatch(problem -> problem.place().file().startsWith("pricing"))) {
            return problems.take(terms.price(rates));
        }
        List<String> mentioned = folder.texts().stream().filter(text -> text.place().file().startsWith("pricing"))
                .map(text -> "\"" + text.text() + "\"").toList();
        Pricer.problems(terms.visit(), terms.site(), rates).stream()
                .filter(problem -> mentioned.stream().noneMatch(problem.message()::endsWith)).forEach(problems::add);
        return Optional.empty();
    }
}
