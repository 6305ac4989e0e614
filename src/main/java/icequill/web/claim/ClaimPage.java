package icequill.web.claim;

import icequill.answer.claim.ClaimSheet;
import icequill.life.claim.ClaimEvent;
import icequill.office.claim.ClaimOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import icequill.web.page.TypedNumber;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A claim: where it stands, and what happened next. */
public final class ClaimPage implements Page, FormPage {

    private static final String DAY = "day";
    private static final String AMOUNT = "amount";

    /** What its page shows. */
    public record Shown(ClaimSheet claim, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, TypedFields.NONE);
    }

    @Override
    public Validated<String> done(Asked asked) {
        String id = asked.part("claim");
        ClaimOffice office = ClaimOffice.of(asked.book());
        Problems problems = new Problems();
        LocalDate day = asked.day(DAY, problems)
                .orElse(asked.reader().today());
        String what = asked.text("what").orElse("");
        Optional<BigDecimal> amount = what.equals("pay")
                ? problems.take(TypedNumber.of(asked.text(AMOUNT).orElse(""), AMOUNT))
                : Optional.empty();
        return problems.or(() -> what).then(valid -> switch (what) {
        case "send" -> office.step(id, new ClaimEvent.Dispatch(day, asked.text("reference")));
        case "return" -> office.step(id, new ClaimEvent.PartReturn(day));
        case "pay" -> office.paid(id, day, amount.orElseThrow());
        case "refuse" -> office.step(id, new ClaimEvent.Denial(day, asked.text("reason").orElse("")));
        default -> Validated.<ClaimSheet>invalid(new Problem(Code.MISSING, Place.NOWHERE, "nothing is chosen", ""));
        }).map(claim -> Paths.claim(claim.claim()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, new TypedFields(asked.fields(), problems));
    }

    private static Answer page(Asked asked, TypedFields typed) {
        return Answer.of(ClaimOffice.of(asked.book()).claim(asked.part("claim")),
                claim -> new Answer.Shown("claim", new Shown(claim, typed), claim));
    }
}
