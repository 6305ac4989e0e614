package icequill.shop;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.outlook.BrushingCase;
import icequill.outlook.BrushingContext;
import icequill.party.Site;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.request.BrushingRequest;
import icequill.tax.TaxPlace;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Reads requests for brushing sheets with their sites and rates. */
public record BrushingLoader(ShopFolder folder) {

    /** Reads one request; one report holds all that is wrong with it, its site and the rates of the day. */
    public Validated<BrushingContext> of(FormName name, LocalDate day) {
        Problems problems = new Problems();
        Optional<BrushingContext> hand = folder.form(name, List.of(FormKind.BRUSHING_REQUEST))
                .flatMap(form -> read(form, day, problems));
        return GlyphCheck.report(folder, problems).or(hand::orElseThrow);
    }

    /**
     * The request as far as it could be read; empty where something is missing, which was reported.
     *
     * @param problems those are added here that the folder itself cannot know
     */
    public Optional<BrushingContext> read(Form form, LocalDate day, Problems problems) {
        Optional<BrushingRequest> request = folder.contents().brushing(form);
        Optional<Site> site = request.flatMap(found -> folder.site(found.site(), found.place()));
        Optional<Rates> rates = folder.schedule().flatMap(schedule -> problems.take(schedule.asOf(day, site)));
        Optional<TaxPlace> place = site.flatMap(where -> folder.taxPlace(where, day, new Problems()));
        site.ifPresent(where -> problems.addAll(BrushingContext.unknown(request.orElseThrow(), where)));
        return site.flatMap(where -> rates
                .map(prices -> new BrushingContext(new BrushingCase(folder.shop().orElseThrow(), where,
                        folder.taxPlaces().shown(prices, place),
                        request.orElseThrow(), folder.forecast(day), folder.energy(),
                        new PlanLoader(folder).visits(where, day)))));
    }
}
