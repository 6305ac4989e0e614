package icequill.web.rates;

import icequill.answer.rates.DayPrices;
import icequill.answer.register.SiteList;
import icequill.office.care.PricesOffice;
import icequill.office.register.RegisterLists;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What is charged on a day; today where none is asked for. */
public final class PricesPage implements Page {

    /**
     * What its page shows.
     *
     * @param on the day; today where what was typed is none
     * @param prices empty where they are not known
     */
    public record Shown(LocalDate on, Optional<DayPrices> prices, List<SiteList.Row> sites, TypedFields typed) {

        public Shown {
            sites = List.copyOf(sites);
        }

        /** How many of the prices are still as they came with the program. */
        public long shipped() {
            return prices.stream().flatMap(told -> told.prices().stream()).filter(DayPrices.Price::isAsShipped).count();
        }
    }

    @Override
    public Answer answer(Asked asked) {
        LocalDate today = asked.reader().today();
        Validated<LocalDate> day = asked.day("on", today);
        Validated<DayPrices> prices = day.then(on -> PricesOffice.of(asked.book()).on(on, asked.text("site"),
                Optional.of(asked.reader().language())));
        Shown shown = new Shown(day.found().orElse(today), prices.found(),
                RegisterLists.of(asked.book()).sites("").found().map(SiteList::sites).orElse(List.of()),
                new TypedFields(asked.fields(), prices.problems()));
        return Answer.Shown.orProblems("rates", shown, prices);
    }
}
