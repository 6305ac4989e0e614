package icequill.pricer;

import icequill.agreement.Tier;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.money.Reduction;
import icequill.money.Rounding;
import icequill.money.Shares;
import icequill.party.Site;
import icequill.pricer.ResolvedVisit.Applied;
import icequill.pricer.ResolvedVisit.Use;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.rates.ClassDiscount;
import icequill.rates.DocumentDiscount;
import icequill.rates.Rates;
import icequill.rates.Surcharge;
import icequill.work.Diagnosis;
import icequill.work.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Prices visits. Stateless: the same visit, site and rates give the same lines. */
public final class Pricer {

    private Pricer() {
    }

    /**
     * The visit's lines in the order service call, labor, materials, modifiers, what stands in one's own
     * words, fees, surcharges, a diagnosis that is taken off, and what is taxed though it was paid ahead, with class discounts taken off line by line before surcharges are figured, and a document discount last, shared over all
     * lines. What is taken back bears none of these, and what sending costs no class discount: that is on the things.
     *
     * @param rates of the day the visit began
     * @return a problem for each name in the visit that the site or the rates do not know
     */
    public static Validated<PricedVisit> price(Visit visit, Site site, Rates rates) {
        return new NameResolver(visit, site, rates).bind().then(Pricer::billable);
    }

    /**
     * The same for a visit to a site under an agreement: the tier's discounts on other work are taken off what is charged, unless
     * the visit names a class discount of its own.
     */
    public static Validated<PricedVisit> price(Visit visit, Site site, Rates rates, Tier tier) {
        return price(visit, site, rates,
                new ClassDiscount(tier.id(), tier.name(), tier.callDiscounts(), Optional.empty(), tier.place()));
    }

    /** The same with the discount of an agreement under its own name. */
    public static Validated<PricedVisit> price(Visit visit, Site site, Rates rates, ClassDiscount agreed) {
        return new NameResolver(visit, site, rates).bind().then(bound -> billable(bound.under(agreed)));
    }

    /** The list price of coming out for a visit that is priced already. */
    public static MonetaryAmount serviceCall(Visit visit, Site site, Rates rates) {
        return new NameResolver(visit, site, rates).bind()
                .map(bound -> Explanation.of(new ServiceCallPricing(bound).charges().getFirst().list())
                        .amount(rates.currency()))
                .orElseThrow();
    }

    /**
     * What {@link #price} would report, for rates that are not whole, so that nothing can be priced by them.
     *
     * @param rates as far as they could be read
     */
    public static List<Problem> problems(Visit visit, Site site, Rates rates) {
        return new NameResolver(visit, site, rates).bind().problems();
    }

    /** The price, or that more is taken back than is charged. */
    private static Validated<PricedVisit> billable(ResolvedVisit bound) {
        PricedVisit shown = price(bound);
        PricedVisit priced = bound.rates().included().map(tax -> new BeforeTax(shown, tax).priced()).orElse(shown);
        return priced.net().isNegative()
                ? Validated.invalid(new Problem(Code.OUT_OF_RANGE,
                        bound.visit().terms().diagnosis().map(Diagnosis::place)
                                .or(() -> bound.own().stream().findFirst().map(own -> own.line().place()))
                                .orElse(Place.NOWHERE),
                        "with what is taken back, the visit comes to " + Amounts.plain(priced.net()),
                        "at least 0; what goes beyond that is a credit note for what was bought"))
                : Validated.valid(priced);
    }

    private static PricedVisit price(ResolvedVisit bound) {
        CurrencyUnit currency = bound.rates().currency();
        List<Charge> charges = charges(bound);
        List<PricedLine> lines = new ArrayList<>(
                charges.stream().map(charge -> charge.line(bound.discounts(), currency)).toList());
        bound.shipping().map(words -> new OwnPricing(currency).shipping(words).line(List.of(), currency))
                .ifPresent(lines::add);
        List<PricedLine> discounted = List.copyOf(lines);
        FeePricing fees = new FeePricing(discounted, currency);
        bound.fees().forEach(fee -> fees.line(fee).ifPresent(lines::add));
        List<PricedLine> withFees = List.copyOf(lines);
        bound.surcharges().forEach(surcharge -> surcharge(surcharge, withFees, currency).ifPresent(lines::add));
        DiagnosisPricing.line(bound).ifPresent(lines::add);
        lines.addAll(BlockPricing.taxedNow(charges, currency));
        Optional<SharedDiscount> discount = bound.documentDiscount().flatMap(off -> shared(off, lines, currency));
        return new PricedVisit(currency, lines, discount);
    }

    private static List<Charge> charges(ResolvedVisit bound) {
        CurrencyUnit currency = bound.rates().currency();
        List<Charge> charges = new ArrayList<>();
        OwnPricing own = new OwnPricing(currency);
        if (bound.visit().sale().isEmpty()) {
            charges.addAll(new ServiceCallPricing(bound).charges());
        }
        BlockPricing blocks = new BlockPricing(bound);
        LaborPricing labor = new LaborPricing(bound);
        MaterialPricing materials = new MaterialPricing(currency, bound.rates().agreed());
        Optional<Applied> instead = bound.insteadOfLabor();
        if (instead.isEmpty()) {
            charges.addAll(labor.charges(blocks));
        }
        if (bound.isFlat()) {
            List<Figure> costs = Stream.concat(instead.isEmpty() ? labor.flatCosts().stream() : Stream.of(),
                    materials.charges(bound.uses().stream().filter(Use::isDose).toList()).stream()
                            .map(charge -> charge.cost().how().figure()))
                    .toList();
            charges.addAll(new FlatPricing(bound.rates().plans().flat(), currency).charges(bound.flat(), costs));
        }
        charges.addAll(materials
                .charges(bound.uses().stream().filter(use -> !bound.isFlat() || !use.isDose()).toList()));
        ModifierPricing modifiers = new ModifierPricing(currency);
        bound.modifiers().forEach(applied -> charges.add(modifiers.charge(applied,
                instead.filter(applied::equals).isPresent() ? labor.costs() : List.of())));
        bound.own().forEach(words -> charges.add(own.charge(words)));
        return blocks.visits(charges, bound.rates().labor().week().at(bound.visit().began().toLocalDateTime()));
    }

    private static Optional<PricedLine> surcharge(Surcharge surcharge, List<PricedLine> lines, CurrencyUnit currency) {
        MonetaryAmount base = Amounts.sum(lines.stream()
                .filter(line -> surcharge.on().contains(line.chargeClass()) && !line.net().isNegative())
                .map(PricedLine::net).toList(), currency);
        if (base.isZero()) {
            return Optional.empty();
        }
        Fact percent = new Fact.Part(surcharge.percent());
        Explanation how = Explanation.of(
                Figure.percent(surcharge.percent()).times(Figure.price(base, "")).rounded(Rounding.SURCHARGE, currency),
                Phrase.of("reason.surcharge", percent, new Fact.Amount(base)));
        return Optional.of(PricedLine.bare(surcharge.chargeClass(),
                Phrase.of("line.surcharge", Names.of(surcharge.name()), percent), how, currency));
    }

    private static Optional<SharedDiscount> shared(DocumentDiscount discount, List<PricedLine> lines,
            CurrencyUnit currency) {
        List<MonetaryAmount> charged = lines.stream()
                .map(line -> line.text().key().equals(Drawn.TAXED)
                        ? Amounts.zero(currency)
                        : Amounts.larger(line.net(), Amounts.zero(currency)))
                .toList();
        MonetaryAmount sum = Amounts.sum(charged, currency);
        if (sum.isZero()) {
            return Optional.empty();
        }
        Explanation how = switch (discount.off()) {
        case Reduction.Fixed fixed when fixed.amount().isGreaterThan(sum) ->
            Explanation.of(Figure.price(sum, ""),
                    Phrase.of("reason.discount-capped", new Fact.Amount(fixed.amount())));
        case Reduction.Fixed fixed -> Explanation.of(Figure.price(fixed.amount(), ""));
        case Reduction.Part part -> Explanation.of(part(part.percent(), sum, currency));
        };
        MonetaryAmount amount = how.amount(currency);
        List<MonetaryAmount> shares = Shares.byLargestRemainder(amount,
                charged.stream().map(Amounts::number).toList());
        return Optional.of(
                new SharedDiscount(Phrase.of("discount.document", Names.of(discount.name())), amount, how, shares));
    }

    private static Figure part(Percent percent, MonetaryAmount sum, CurrencyUnit currency) {
        return Figure.percent(percent).times(Figure.price(sum, "")).rounded(Rounding.ALLOWANCE, currency);
    }
}
