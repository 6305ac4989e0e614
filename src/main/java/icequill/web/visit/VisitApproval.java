package icequill.web.visit;

import icequill.answer.RecordedVisit;
import icequill.answer.call.CallSheet;
import icequill.office.asking.Draft;
import icequill.office.asking.KnownVisit;
import icequill.office.asking.KnownVisits;
import icequill.office.asking.TypedVisit;
import icequill.office.call.CallOffice;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import icequill.web.page.Typing;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Records that the customer allows more than his order does, and who said so. */
public final class VisitApproval implements FormPage {

    private static final String ORDER = "order";
    private static final String LIMIT = "limit";
    private static final String APPROVER = "approver";

    @Override
    public Validated<String> done(Asked asked) {
        Typing typing = new Typing(asked);
        KnownVisits visits = new KnownVisits(asked.book());
        BigDecimal limit = (typing.text(LIMIT).isPresent()
                ? typing.number(LIMIT)
                : typing.<BigDecimal>missing(LIMIT, "the new limit is missing")).orElse(BigDecimal.ZERO);
        String approver = typing.text(APPROVER)
                .or(() -> typing.missing(APPROVER, "it is not said who allows it")).orElse("");
        return typing.or(() -> limit).then(allowed -> visits.find(asked.part("visit")))
                .then(known -> new Told(known.told().values()).part("asked").text("call")
                        .map(call -> ofCall(asked, call, limit, approver).map(sheet -> known.id()))
                        .orElseGet(() -> ofVisit(asked, known, limit, approver)))
                .map(Paths::visit);
    }

    /** What a visit to a call may cost stands with the call. */
    private static Validated<CallSheet> ofCall(Asked asked, String call, BigDecimal limit, String approver) {
        return CallOffice.of(asked.book(), Optional.of(asked.reader().language())).approve(call,
                Map.of("by", approver, LIMIT, limit.toPlainString()), Optional.empty());
    }

    private static Validated<String> ofVisit(Asked asked, KnownVisit known, BigDecimal limit, String approver) {
        Map<String, Object> form = new LinkedHashMap<>(known.told().values());
        Map<String, Object> order = new Kept(new Told(form).part(ORDER)).but(Set.of());
        order.put(LIMIT, limit);
        order.put(APPROVER, approver);
        form.put(ORDER, order);
        return new KnownVisits(asked.book()).change(new TypedVisit(known.id(), new Draft(form)),
                asked.text("version").orElse("")).map(RecordedVisit::visit);
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return VisitPage.page(asked, List.of(), new TypedFields(asked.fields(), problems));
    }
}
