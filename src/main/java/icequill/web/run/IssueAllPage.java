package icequill.web.run;

import icequill.answer.price.VisitPrice;
import icequill.answer.today.DayAnswer;
import icequill.office.Office;
import icequill.office.asking.KnownVisit;
import icequill.office.asking.KnownVisits;
import icequill.office.billing.IssueOptions;
import icequill.office.billing.VisitBilling;
import icequill.office.care.TodayOffice;
import icequill.party.Language;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
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
     * @param version of what its price is worked out from; empty where nobody can change it
     * @param price what its invoice would come to
     */
    public record Unbilled(DayAnswer.Attendance visit, Optional<String> version, Optional<VisitPrice> price,
            List<Problem> problems) {

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
        return Answer.of("issue-all", TodayOffice.of(asked.book()).on(asked.reader().today(), language)
                .map(sheet -> new UnbilledVisits(sheet.data().unbilled().stream()
                        .map(visit -> unbilled(asked.book(), visit, language)).toList())));
    }

    private static Unbilled unbilled(ShopBook book, DayAnswer.Attendance visit, Optional<Language> language) {
        Validated<VisitPrice> price = Office.of(book).price(new FormName.InBook(visit.visit()), language)
                .map(sheet -> sheet.data(false));
        return new Unbilled(visit, new KnownVisits(book).find(visit.visit()).found().map(KnownVisit::version),
                price.found(),
                price.problems());
    }

    @Override
    public Validated<String> done(Asked asked) {
        Problems problems = new Problems();
        List<String> ticked = asked.texts("visit").stream().distinct().toList();
        ticked.forEach(visit -> asked.text("version-" + visit)
                .ifPresent(version -> problems.take(new KnownVisits(asked.book()).unchanged(visit, version))));
        return problems.or(() -> ticked).then(same -> begun(asked, same));
    }

    private Validated<String> begun(Asked asked, List<String> ticked) {
        List<FormName> visits = ticked.stream().<FormName>map(FormName.InBook::new).toList();
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
