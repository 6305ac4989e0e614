package icequill.web.visit;

import icequill.answer.history.VisitAnswer;
import icequill.answer.history.VisitState;
import icequill.answer.price.VisitPrice;
import icequill.office.Office;
import icequill.office.asking.KnownVisit;
import icequill.office.asking.KnownVisits;
import icequill.office.care.HistoryOffice;
import icequill.party.Language;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.FormName;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.List;
import java.util.Optional;

/** A visit: what was found and done, what it costs, and the papers that bill it. */
public final class VisitPage implements Page {

    /**
     * What its page shows.
     *
     * @param version of one that may be changed; empty for others
     * @param price of one that is not billed; empty where it has none
     * @param problems that keep it from having one
     */
    public record Shown(VisitAnswer visit, Optional<String> version, Optional<VisitPrice> price,
            List<Problem> problems) {}

    @Override
    public Answer answer(Asked asked) {
        String id = asked.part("visit");
        Optional<Language> language = Optional.of(asked.reader().language());
        return Answer.of(HistoryOffice.of(asked.book()).visit(id, language), found -> {
            Optional<Validated<VisitPrice>> price = found.data().visit().state() == VisitState.DONE
                    ? Optional.of(Office.of(asked.book()).price(new FormName.InBook(id), language)
                            .map(sheet -> sheet.data(false)))
                    : Optional.empty();
            return new Answer.Shown("visit", new Shown(found.data(),
                    new KnownVisits(asked.book()).find(id).found().map(KnownVisit::version),
                    price.flatMap(Validated::found),
                    price.map(Validated::problems).orElse(List.of())), found.data());
        });
    }
}
