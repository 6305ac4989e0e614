package icequill.web.run;

import icequill.answer.paper.DueInstallments;
import icequill.answer.paper.DueInstallments.One;
import icequill.office.billing.InstallmentBilling;
import icequill.office.billing.IssueOptions;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;

/** Bills the installments of agreements that are due, each by its invoice. */
public final class DuePage implements Page, FormPage {

    private static final String UNTIL = "until";
    private static final String ONE = "installment";

    private final Runs runs;

    public DuePage(Runs runs) {
        this.runs = runs;
    }

    /**
     * What its page shows.
     *
     * @param due empty where the day cannot be read
     */
    public record Shown(Optional<DueInstallments> due, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        Validated<DueInstallments> due = until(asked).then(day -> InstallmentBilling.of(asked.book()).due(day));
        return Answer.Shown.orProblems("due",
                new Shown(due.found(), new TypedFields(asked.fields(), due.problems())), due);
    }

    private static Validated<LocalDate> until(Asked asked) {
        return asked.day(UNTIL, asked.reader().today());
    }

    @Override
    public Validated<String> done(Asked asked) {
        List<String> ticked = asked.texts(ONE);
        return until(asked).then(day -> InstallmentBilling.of(asked.book()).due(day)).then(due -> {
            List<One> chosen = due.installments().stream().filter(one -> ticked.contains(key(one))).toList();
            return chosen.isEmpty()
                    ? Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "no installment is ticked",
                            "at least one that is to be billed"))
                    : Validated.valid(runs.begin(RunKind.ISSUE, OptionalLong.of(chosen.size()),
                            (shop, progress) -> Validated.valid(
                                    issued(shop, chosen, asked.reader().today(), progress))));
        });
    }

    /** What its box is called. */
    private static String key(One one) {
        return one.number() + " " + one.agreement();
    }

    private static RunResult issued(ShopBook shop, List<One> chosen, LocalDate today, Progress progress) {
        AtomicLong count = new AtomicLong();
        return new RunResult.Issued(InstallmentBilling.of(shop).each(chosen,
                new IssueOptions(today, Optional.empty()), paper -> progress.goesOn(count.incrementAndGet())).data());
    }
}
