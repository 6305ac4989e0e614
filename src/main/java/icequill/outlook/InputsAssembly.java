package icequill.outlook;

import icequill.document.Outlook.Input;
import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.Cause;
import icequill.forecast.Decimals;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.inputs.NonCashEffects;
import icequill.forecast.inputs.Origin;
import icequill.forecast.inputs.SiteFactors;
import icequill.party.Machine;
import icequill.plans.SideCare;
import icequill.plans.SiteRisks;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Says what a forecast was figured from, each with who says so. */
record InputsAssembly(SiteForecast forecast) {

    /** Of more machines than that it is only said of how many something is known. */
    private static final int MOST_BY_NAME = 2;

    List<Input> all() {
        ForecastRates rates = forecast.rates();
        List<Input> inputs = new ArrayList<>();
        EstimateWeights weights = new EstimateWeights(forecast);
        weights.record().ifPresent(found -> inputs.add(new Input(lastYear(found), weights.told().isPresent()
                ? forecast.hand().history().visits().map(visits -> origin(Origin.visits(visits)))
                        .orElseGet(() -> origin(Origin.CUSTOMER))
                : BookInputs.origin(forecast.hand().history().book().orElseThrow()))));
        forecast.hand().history().book().ifPresent(book -> inputs.add(BookInputs.calls(book)));
        inputs.add(new Input(Phrase.of(forecast.risks().hasCondensers() ? "outlook.in.call" : "outlook.in.call-water",
                new Fact.Amount(forecast.meanCall())),
                Phrase.of("outlook.origin.prices")));
        inputs.add(new Input(Phrase.of("outlook.in.faults", new Fact.Measure(rates.faults().usual(), "")),
                origin(rates.faults().origin())));
        if (forecast.risks().hasCondensers()) {
            inputs.add(dirt("outlook.in.condenser", rates.condenser()));
        }
        inputs.add(dirt("outlook.in.water", rates.water()));
        rates.factors().of(forecast.risks().site()).forEach(factor -> inputs.add(factor(factor)));
        seasons(forecast).forEach(said -> inputs.add(new Input(said, origin(Origin.ESTIMATE))));
        inputs.addAll(since());
        if (forecast.risks().since().stream().anyMatch(this::isNewer)) {
            inputs.add(new Input(Phrase.of("outlook.in.newer"), origin(Origin.CUSTOMER)));
        }
        if (rates.sitesDiffer().usual().signum() > 0) {
            inputs.add(new Input(sitesDiffer(forecast), origin(rates.sitesDiffer().origin())));
        }
        if (!rates.later().isLikeToday()) {
            inputs.add(new Input(later(rates), origin(Origin.ESTIMATE)));
        }
        inputs.addAll(beside(rates.beside()));
        return inputs;
    }

    static Phrase lastYear(EstimateWeights.LastYearsCalls found) {
        return Phrase.of("outlook.in.last-year." + ConstantKey.of(found.fit()), Fact.number(found.had(), "call"),
                new Fact.Measure(Decimals.of(found.expected(), 1), ""));
    }

    static Phrase later(ForecastRates rates) {
        return Phrase.of("outlook.in.later", new Fact.Measure(rates.later().prices().value(), ""),
                new Fact.Measure(rates.later().money().value(), ""));
    }

    static Phrase sitesDiffer(SiteForecast forecast) {
        return Phrase.of(
                forecast.risks().site().machines().size() > 1 ? "outlook.in.sites-differ" : "outlook.in.site-differs",
                new Fact.Measure(forecast.rates().sitesDiffer().usual(), ""));
    }

    /** Of each cause that has one here. */
    static List<Phrase> seasons(SiteForecast forecast) {
        return Stream.of(Cause.values())
                .filter(cause -> cause != Cause.CONDENSER || forecast.risks().hasCondensers())
                .flatMap(cause -> forecast.rates().seasons().of(cause).stream()
                        .map(quarters -> Phrase.of("outlook.in.season." + ConstantKey.of(cause),
                                quarters.stream().map(factor -> new Fact.Measure(factor, "")).toArray(Fact[]::new))))
                .toList();
    }

    private static Input dirt(String key, FoulingEstimate dirt) {
        return new Input(
                Phrase.of(key, Fact.number(FoulingEstimate.Stops.OF, ""), new Fact.Measure(dirt.usual().bySix(), ""),
                        new Fact.Measure(dirt.usual().byTwelve(), "")),
                origin(dirt.origin()));
    }

    private Input factor(SiteFactors.Factor factor) {
        Fact what = new Fact.Word("outlook.factor." + ConstantKey.of(factor.kind()));
        Fact water = new Fact.Measure(factor.speed().water(), "");
        return new Input(
                forecast.risks().hasCondensers()
                        ? Phrase.of("outlook.in.factor", what, water,
                                new Fact.Measure(factor.speed().condenser(), ""))
                        : Phrase.of("outlook.in.factor-water", what, water),
                origin(Origin.ESTIMATE));
    }

    private List<Input> since() {
        List<SiteRisks.Since> all = forecast.risks().since();
        if (all.size() <= MOST_BY_NAME) {
            return all.stream().flatMap(since -> Stream.concat(Stream.of(since(since)), booked(since))).toList();
        }
        List<SiteRisks.Since> known = all.stream().filter(since -> since.cleaned().isPresent()).toList();
        if (known.isEmpty()) {
            return List.of(new Input(Phrase.of("outlook.in.since-none", Fact.number(all.size(), ""), months()),
                    origin(Origin.ESTIMATE)));
        }
        return List.of(new Input(Phrase.of("outlook.in.since-known", Fact.number(known.size(), ""),
                Fact.number(all.size(), ""), months()), origin(known.stream().anyMatch(SiteRisks.Since::isTold))));
    }

    /** As somebody told us, or by our own visits. */
    private Phrase origin(boolean isTold) {
        return forecast.hand().history().book().filter(book -> !isTold).map(BookInputs::origin)
                .orElseGet(() -> origin(Origin.CUSTOMER));
    }

    /** Whether dirt of which nobody knows since when it gathers is younger than is taken, as the machine is. */
    private boolean isNewer(SiteRisks.Since since) {
        SideCare care = forecast.risks().care(since, Cause.WATER);
        return care.cleanings().isEmpty() && care.after(forecast.risks().day()) < care.unknown();
    }

    private Input since(SiteRisks.Since since) {
        Fact where = where(since.machine());
        Optional<LocalDate> cleaned = since.cleaned();
        return cleaned
                .map(day -> new Input(Phrase.of("outlook.in.since", where, new Fact.Day(day)),
                        origin(since.isTold())))
                .orElseGet(() -> new Input(Phrase.of("outlook.in.since-unknown", where, months()),
                        origin(Origin.ESTIMATE)));
    }

    /** What our own visits say of it that differs from that: another cleaning, a brushing that came by itself. */
    private Stream<Input> booked(SiteRisks.Since since) {
        Fact where = where(since.machine());
        Optional<LocalDate> cleaned = forecast.risks().booked(since.machine(), Cause.WATER);
        Stream<Phrase> said = Stream.concat(
                cleaned.filter(day -> !since.cleaned().equals(Optional.of(day)))
                        .map(day -> Phrase.of("outlook.in.booked", where, new Fact.Day(day))).stream(),
                forecast.risks().booked(since.machine(), Cause.CONDENSER)
                        .filter(day -> !cleaned.equals(Optional.of(day)))
                        .map(day -> Phrase.of("outlook.in.brushed", where, new Fact.Day(day))).stream());
        return said.map(phrase -> new Input(phrase, origin(false)));
    }

    private Fact months() {
        return new Fact.Measure(forecast.rates().unknownMonths(), "month");
    }

    private static Fact where(Machine machine) {
        return new Fact.Text(machine.where());
    }

    private List<Input> beside(NonCashEffects beside) {
        return List.of(
                new Input(Phrase.of("outlook.in.ice", new Fact.Measure(beside.iceUsed().usual(), "")),
                        origin(beside.iceUsed().origin())),
                new Input(Phrase.of("outlook.in.electricity", new Fact.Amount(beside.electricity().price())),
                        origin(beside.electricity().origin())),
                new Input(Phrase.of("outlook.in.bag", new Fact.Amount(beside.bag().price()),
                        new Fact.Measure(beside.bag().pounds(), "lb")), origin(beside.bag().origin())),
                new Input(Phrase.of("outlook.in.machine", new Fact.Amount(beside.machine().price()),
                        new Fact.Measure(beside.interest().value(), "")), origin(beside.machine().origin())));
    }

    static Phrase origin(Origin origin) {
        return switch (origin.kind()) {
        case ESTIMATE -> Phrase.of("outlook.origin.estimate");
        case CUSTOMER -> Phrase.of("outlook.origin.told");
        case VISITS -> Phrase.of("outlook.origin.visits", Fact.number(origin.number(), "visit"));
        case RUNS -> Phrase.of("outlook.origin.visits", Fact.number(origin.number(), "run"));
        };
    }
}
