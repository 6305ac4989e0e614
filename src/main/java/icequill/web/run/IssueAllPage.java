package icequill.web.run;

import icequill.answer.price.VisitPrice;
import icequill.answer.today.DayAnswer;
import icequill.office.Office;
import icequill.office.billing.IssueOptions;
import icequill.office.billing.VisitBilling;
import icequill.office.care.TodayOffice;
import icequill.party.Language;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;

/** Bills the visits that are done, each by its invoice. */
public final class IssueAllPage implements Page, FormPage {

    private final Runs runs;

    public IssueAllPage(Runs runs) {
        this.runs = runs;
    }

    /**
     * A visit that is not billed.
     *
     * @param price what its invoice would come to
     */
    public record Unbilled(DayAnswer.Attendance visit, Optional<VisitPrice> price, List<Problem> problems) {

        public Unbilled {
            problems = List.copyOf(problems);
        }
    }

    /** All of them, the oldest first. */
    public record UnbilledVisits(List<Unbilled> visits) {

        public UnbilledVisits {
            visits = List.copyOf(visits);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        Optional<Language> language = Optional.of(asked.reader().language());
        Office office = Office.of(asked.book());
        return Answer.of("issue-all", TodayOffice.of(asked.book()).on(asked.reader().today(), language)
                .map(sheet -> new UnbilledVisits(sheet.data().unbilled().stream()
                        .map(visit -> unbilled(office, visit, language)).toList())));
    }

    private static Unbilled unbilled(Office office, DayAnswer.Attendance visit, Optional<Language> language) {
        Validated<VisitPrice> price = office.price(new FormName.InBook(visit.visit()), language)
                .map(sheet -> sheet.data(false));
        return new Unbilled(visit, price.found(), price.problems());
    }

    @Override
    public Validated<String> done(Asked asked) {
        List<FormName> visits = asked.texts("visit").stream().<FormName>map(FormName.InBook::new).distinct().toList();
        LocalDate today = asked.reader().today();
        return visits.isEmpty()
                ? Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "no visit is ticked",
                        "at least one that is to be billed"))
                : Validated.valid(runs.begin(RunKind.ISSUE, OptionalLong.of(visits.size()),
                        (shop, progress) -> Validated.valid(issued(shop, visits, today, progress))));
    }

    private static RunResult issued(ShopBook shop, List<FormName> visits, LocalDate today, Progress progress) {
        AtomicLong count = new AtomicLong();
        return new RunResult.Issued(VisitBilling.of(shop).each(visits, new IssueOptions(today, Optional.empty()),
                paper -> progress.goesOn(count.incrementAndGet())).data());
    }
}
