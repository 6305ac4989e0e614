package icequill.office.care;

import icequill.agreement.FlatPrices;
import icequill.answer.rates.DayPrices.Group;
import icequill.answer.rates.DayPrices.Per;
import icequill.answer.rates.DayPrices.Price;
import icequill.explain.ConstantKey;
import icequill.files.yaml.EntryComments;
import icequill.files.yaml.ShippedMarks;
import icequill.money.Percent;
import icequill.money.Reduction;
import icequill.party.Wording;
import icequill.pricer.UnitPrice;
import icequill.problem.Place;
import icequill.rates.Counting;
import icequill.rates.Fee;
import icequill.rates.Grade;
import icequill.rates.Material;
import icequill.rates.Rates;
import icequill.rates.ServiceCallRates;
import icequill.rates.ServiceCallRates.Zone;
import icequill.render.words.Sentences;
import icequill.tax.TaxPlace;
import icequill.tax.TaxRate;
import icequill.work.Band;
import icequill.work.ChargeClass;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** The prices of a day one by one, as a reader's list of them has them; what they cost the shop is not told. */
final class ChargedPrices {

    private final Rates rates;
    private final List<TaxPlace> taxes;
    private final EntryComments comments;
    private final Sentences sentences;
    private final List<Price> all = new ArrayList<>();

    ChargedPrices(Rates rates, List<TaxPlace> taxes, EntryComments comments, Sentences sentences) {
        this.rates = rates;
        this.taxes = taxes;
        this.comments = comments;
        this.sentences = sentences;
    }

    /** What a price is of: its name, its detail, and where it stands. */
    private record Of(Group group, String name, String detail, Place place) {}

    List<Price> all() {
        rates.serviceCall().zones().forEach(this::zone);
        further(rates.serviceCall());
        rates.labor().grades().forEach(this::grade);
        steps();
        rates.materials().forEach(this::material);
        rates.adjustments().modifiers().forEach(modifier -> price(
                of(Group.MODIFIERS, modifier.name(), modifier.place()), "price", modifier.price(),
                modifier.unit() == Unit.MINUTE ? Per.HOUR : Per.EACH));
        rates.adjustments().fees().forEach(this::fee);
        rates.adjustments().surcharges().forEach(surcharge -> number(
                of(Group.SURCHARGES, surcharge.name(), surcharge.place()), "percent", surcharge.percent().value(),
                Per.PERCENT));
        discounts();
        rates.plans().tiers().forEach(tier -> number(of(Group.PLANS, tier.name(), tier.place()), "discount",
                tier.discount().value(), Per.PERCENT));
        flat(rates.plans().flat());
        taxes.forEach(this::tax);
        return List.copyOf(all);
    }

    private void zone(Zone zone) {
        rates.labor().bands().forEach(band -> add(
                new Of(Group.SERVICE_CALL, sentences.in(zone.name()), hours(band), zone.place()), "prices",
                Optional.of(zone.price(band)), Optional.empty(), Per.CALL, Optional.empty(),
                rates.agreed().serviceCall(zone, band)));
    }

    private void further(ServiceCallRates calls) {
        Of beyond = new Of(Group.SERVICE_CALL, sentences.word("page.rates.beyond"), "", calls.place());
        price(beyond, "beyond", calls.beyond(), Per.MILE);
        Of miles = new Of(Group.SERVICE_CALL, sentences.word("page.rates.each-mile"), "", calls.place());
        calls.perMile().ifPresent(price -> price(miles, "perMile", price, Per.MILE));
        if (calls.includes() > 0) {
            number(new Of(Group.SERVICE_CALL, sentences.word("page.rates.service-call"), "", calls.place()), "includes",
                    BigDecimal.valueOf(calls.includes()), Per.MINUTES_INCLUDED);
        }
    }

    private void grade(Grade grade) {
        for (Band band : rates.labor().bands()) {
            Of hours = new Of(Group.LABOR, sentences.in(grade.name()), hours(band), grade.place());
            add(hours, "hourly", Optional.of(grade.hourly().work(band)), Optional.empty(), Per.HOUR, Optional.empty(),
                    rates.agreed().hourly(grade, band));
            grade.hourly().firstHour(band).ifPresent(price -> price(hours, "firstHour", price, Per.FIRST_HOUR));
            grade.hourly().travel(band).ifPresent(price -> price(hours, "travel", price, Per.TRAVEL_HOUR));
        }
        minimum(grade);
    }

    /** Once, where it is the same at all hours. */
    private void minimum(Grade grade) {
        List<Band> bands = rates.labor().bands();
        boolean isSame = bands.stream().map(grade::minimum).distinct().count() == 1;
        bands.stream().limit(isSame ? 1 : bands.size()).filter(band -> grade.minimum(band) > 0).forEach(band -> number(
                new Of(Group.LABOR, sentences.in(grade.name()), isSame ? "" : hours(band), grade.place()), "minimum",
                BigDecimal.valueOf(grade.minimum(band)), Per.LEAST_MINUTES));
    }

    /** To whose next multiple time is raised; once, where it is the same at all hours. */
    private void steps() {
        List<Band> bands = rates.labor().bands();
        Counting counting = rates.labor().counting();
        Place file = Place.ofFile(rates.labor().grades().getFirst().place().file());
        boolean isSame = bands.stream().map(counting::increment).distinct().count() == 1;
        bands.stream().limit(isSame ? 1 : bands.size()).forEach(band -> number(
                new Of(Group.LABOR, sentences.word("page.rates.time"), isSame ? "" : hours(band), file), "increment",
                counting.increment(band), Per.STEP_MINUTES));
    }

    private void material(Material material) {
        Group group = switch (material.chargeClass()) {
        case CHEMICALS -> Group.CHEMICALS;
        case FILTERS -> Group.FILTERS;
        case DISPOSAL -> Group.DISPOSAL;
        default -> Group.PARTS;
        };
        String detail = material.pack().map(units -> sentences.formats().number(units) + "\u00a0"
                + sentences.word("unit." + material.unit().symbol())).orElse("");
        add(new Of(group, sentences.in(material.name()), detail, material.place()), "price",
                Optional.of(UnitPrice.of(material, rates.currency())), Optional.empty(),
                material.pack().isPresent() ? Per.PACK : material.unit() == Unit.EACH ? Per.EACH : Per.UNIT,
                Optional.of(material.unit().symbol())
                        .filter(unit -> material.pack().isEmpty() && material.unit() != Unit.EACH),
                rates.agreed().material(material));
    }

    private void fee(Fee fee) {
        Of of = of(Group.FEES, fee.name(), fee.applies().place());
        switch (fee.amount()) {
        case Fee.Flat flat -> {
            price(of, "amount", flat.amount(), Per.EACH);
            flat.under().ifPresent(under -> price(of, "under", under, Per.UNDER));
        }
        case Fee.Part part -> {
            number(of, "percent", part.percent().value(), Per.PERCENT);
            part.floor().ifPresent(floor -> price(of, "floor", floor, Per.FLOOR));
            part.cap().ifPresent(cap -> price(of, "cap", cap, Per.CAP));
        }
        }
    }

    private void discounts() {
        rates.adjustments().classDiscounts().forEach(discount -> percents(discount.name(), discount.percents(),
                discount.place()));
        rates.agreed().discounts()
                .forEach(discount -> percents(discount.name(), discount.percents(), discount.place()));
        rates.adjustments().documentDiscounts().forEach(discount -> {
            Of of = of(Group.DISCOUNTS, discount.name(), discount.place());
            switch (discount.off()) {
            case Reduction.Fixed fixed -> price(of, "amount", fixed.amount(), Per.EACH);
            case Reduction.Part part -> number(of, "percent", part.percent().value(), Per.PERCENT);
            }
        });
    }

    private void percents(Wording name, Map<ChargeClass, Percent> percents, Place place) {
        percents.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(entry -> number(
                new Of(Group.DISCOUNTS, sentences.in(name), sentences.word("class." + ConstantKey.of(entry.getKey())),
                        place),
                "percents", entry.getValue().value(), Per.PERCENT));
    }

    private void flat(FlatPrices flat) {
        flat.rows().forEach(row -> price(new Of(Group.FLAT, scope(row.scope()), sentences.word("page.rates.up-to",
                sentences.word("make." + ConstantKey.of(row.make())), sentences.formats().number(row.upTo())),
                row.place()),
                "price", row.price(), Per.MACHINE));
        flat.rows().stream().findFirst().filter(row -> !flat.further().isZero()).ifPresent(first -> number(
                new Of(Group.FLAT, sentences.word("page.rates.further"), "", Place.ofFile(first.place().file())),
                "further",
                flat.further().value(), Per.FURTHER));
    }

    private String scope(String id) {
        return rates.plans().scopes().stream().filter(scope -> scope.id().equals(id)).findFirst()
                .map(scope -> sentences.in(scope.name())).orElse(id);
    }

    private void tax(TaxPlace place) {
        place.rules().values().stream().map(TaxPlace.Rule::rate).distinct().filter(rate -> rate.category().isTaxed())
                .sorted(Comparator.comparing(TaxRate::id)).forEach(rate -> rate.components().forEach(part -> {
                    Of of = new Of(Group.TAX, sentences.in(place.name()), sentences.in(part.name()), place.place());
                    number(of, "components", part.percent().value(), Per.PERCENT);
                    part.cap().ifPresent(cap -> price(of, "cap", cap, Per.CAP));
                }));
    }

    private String hours(Band band) {
        return sentences.in(band.name());
    }

    private Of of(Group group, Wording name, Place place) {
        return new Of(group, sentences.in(name), "", place);
    }

    private void price(Of of, String key, MonetaryAmount amount, Per per) {
        add(of, key, Optional.of(amount), Optional.empty(), per, Optional.empty(), Optional.empty());
    }

    private void number(Of of, String key, BigDecimal number, Per per) {
        add(of, key, Optional.empty(), Optional.of(number), per, Optional.empty(), Optional.empty());
    }

    private void add(Of of, String key, Optional<MonetaryAmount> amount, Optional<BigDecimal> number, Per per,
            Optional<String> unit, Optional<Wording> agreed) {
        Place place = comments.at(of.place(), key);
        Optional<String> source = comments.of(place);
        all.add(new Price(of.group(), of.name(), of.detail(), amount, number, per, unit, agreed.map(sentences::in),
                place.file(), place.line(), source, source.filter(ShippedMarks::isMark).isPresent()));
    }
}
