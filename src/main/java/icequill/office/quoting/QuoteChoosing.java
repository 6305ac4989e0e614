package icequill.office.quoting;

import icequill.agreement.CleaningInterval;
import icequill.agreement.Plans;
import icequill.answer.forecast.ForecastInputs.Dirt;
import icequill.answer.forecast.ForecastInputs.Guess;
import icequill.answer.quote.QuoteEntry;
import icequill.answer.quote.QuoteEntry.Choice;
import icequill.answer.quote.QuoteEntry.Guesses;
import icequill.answer.quote.QuoteEntry.LastYear;
import icequill.answer.quote.QuoteEntry.MachineChoice;
import icequill.answer.quote.QuoteFigures.Recommended;
import icequill.forecast.inputs.ForecastRates;
import icequill.office.care.AskedPeriod;
import icequill.office.care.HistoryOffice;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.party.Wording;
import icequill.plans.SiteRisks;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.RateSchedule;
import icequill.rates.Rates;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Lists what may be chosen for a maintenance quote. */
record QuoteChoosing(ShopBook book, LocalDate day, Language language) {

    /** @param site by id; empty for a new customer */
    Validated<QuoteEntry> choices(Optional<String> site) {
        ShopFolder folder = BookForms.shop(book);
        Problems problems = new Problems();
        Optional<Site> where = site.flatMap(id -> folder.site(id, Place.NOWHERE));
        Optional<Shop> shop = folder.shop();
        Optional<Rates> rates = folder.schedule()
                .flatMap((RateSchedule schedule) -> problems.take(schedule.asOf(day, where)));
        folder.problems().forEach(problems::add);
        return problems.or(() -> entry(folder, where, Sentences.of(language, shop.orElseThrow().address().country()),
                rates.orElseThrow()));
    }

    private QuoteEntry entry(ShopFolder folder, Optional<Site> site, Sentences sentences, Rates rates) {
        Plans plans = rates.plans();
        return new QuoteEntry(site.map(Site::id), site.map(Site::name), day,
                day.withDayOfMonth(1).plusMonths(1),
                site.map(Site::machines).orElse(List.of()).stream().map(machine -> machine(machine, sentences))
                        .toList(),
                plans.catchUps().stream().map(found -> new Choice(found.id(), name(found.name(), sentences))).toList(),
                plans.tiers().stream().map(tier -> new Choice(tier.id(), name(tier.name(), sentences))).toList(),
                plans.tiers().stream().flatMap(tier -> tier.slots().stream()).map(slot -> slot.scope()).distinct()
                        .map(scope -> new Choice(scope.id(), name(scope.name(), sentences))).toList(),
                rates.labor().grades().stream()
                        .map(grade -> new Choice(grade.id(), name(grade.name(), sentences))).toList(),
                folder.siteKinds().all().stream().map(kind -> new Choice(kind.id(), name(kind.name(), sentences)))
                        .toList(),
                folder.taxes().flatMap(rules -> rules.places().at(day)).orElse(List.of()).stream()
                        .map(place -> new Choice(place.id(), name(place.name(), sentences))).toList(),
                site.map(found -> recommended(found, rates, sentences)), site.flatMap(found -> lastYear(found.id())),
                folder.forecast(day).map(found -> guesses(found, site)));
    }

    private static MachineChoice machine(Machine machine, Sentences sentences) {
        boolean hasCondenser = SiteRisks.isBrushed(machine);
        return new MachineChoice(machine.id(), new MachineName(machine, sentences).text(), machine.condition(),
                hasCondenser,
                hasCondenser && machine.form() == Machine.Form.SELF_CONTAINED
                        && machine.connection() == Machine.Connection.CORD_AND_PLUG);
    }

    private static Recommended recommended(Site site, Rates rates, Sentences sentences) {
        CleaningInterval interval = CleaningInterval.of(site.kind(), site.conditions(), rates.plans().interval());
        return new Recommended(interval.months(), interval.reasons().stream().map(sentences::say)
                .map(Sentences::capitalized).toList());
    }

    /** Empty where nobody was there in that time, since then nothing says that there were none. */
    private Optional<LastYear> lastYear(String site) {
        AskedPeriod year = new AskedPeriod(Optional.empty(), Optional.of(day.minusYears(1).plusDays(1)),
                Optional.of(day));
        return book.exists()
                ? HistoryOffice.of(book).site(site, Optional.empty(), year, Optional.of(language)).found()
                        .map(history -> history.data().counts()).filter(counts -> counts.done() > 0)
                        .map(counts -> new LastYear(Math.toIntExact(counts.done()),
                                Math.toIntExact(counts.calls())))
                : Optional.empty();
    }

    private static Guesses guesses(ForecastRates shops, Optional<Site> site) {
        ForecastRates rates = site.map(found -> shops.at(found.kind())).orElse(shops);
        return new Guesses(Guess.of(rates.faults()), Dirt.of(rates.condenser()), Dirt.of(rates.water()));
    }

    private static String name(Wording wording, Sentences sentences) {
        return Sentences.capitalized(sentences.in(wording));
    }
}
