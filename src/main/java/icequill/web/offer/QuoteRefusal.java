package icequill.web.offer;

import icequill.answer.shown.QuoteStanding;
import icequill.explain.ConstantKey;
import icequill.life.quote.QuoteEvent.Refusal;
import icequill.life.quote.RefusalReason;
import icequill.office.quoting.QuoteLifeOffice;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedChoice;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Notes that the customer did not take a quote, and why. */
public final class QuoteRefusal implements Page, FormPage {

    /** What its page shows. */
    public record Shown(QuoteStanding quote, List<String> reasons, TypedFields typed) {

        public Shown {
            reasons = List.copyOf(reasons);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return again(asked, List.of());
    }

    @Override
    public Validated<String> done(Asked asked) {
        Problems problems = new Problems();
        Optional<RefusalReason> reason = problems
                .take(TypedChoice.of(asked, "reason", List.of(RefusalReason.values()), ConstantKey::of));
        LocalDate day = asked.day("day", problems)
                .orElse(asked.reader().today());
        return problems.or(() -> new Refusal(day, reason.orElseThrow(), asked.text("words")))
                .then(no -> QuoteLifeOffice.of(asked.book()).decline(asked.part("number"), no))
                .map(standing -> Paths.quote(standing.number()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return Answer.of(QuoteLifeOffice.of(asked.book()).standing(asked.part("number")),
                standing -> new Answer.Shown("quote-decline", new Shown(standing,
                        Stream.of(RefusalReason.values()).map(ConstantKey::of).toList(),
                        new TypedFields(asked.fields(), problems)), standing));
    }
}
