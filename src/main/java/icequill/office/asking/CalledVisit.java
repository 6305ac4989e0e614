package icequill.office.asking;

import icequill.files.form.CallSteps;
import icequill.life.call.CallEvent.Plan;
import icequill.life.call.CallRecord;
import icequill.life.call.CallState;
import icequill.money.Amounts;
import icequill.shop.BookedCall;
import icequill.work.Call;
import icequill.work.PurchaseOrder;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a call says already of the visit that answers it.
 *
 * @param site by id
 * @param person who goes there; empty where that is not planned
 * @param day on which he does
 * @param machine that the call is about, by id
 * @param told by the keys of a visit's form: who asked, and what was ordered
 */
public record CalledVisit(String site, Optional<String> person, Optional<LocalDate> day, Optional<String> machine,
        Draft told) {

    static CalledVisit of(BookedCall call) {
        CallRecord known = call.state().known();
        Optional<Plan> plan = call.state() instanceof CallState.Planned planned
                ? Optional.of(planned.plan())
                : Optional.empty();
        Draft told = Draft.EMPTY.with("asked", asked(known.call().asked()));
        Draft order = order(known.order());
        return new CalledVisit(call.site(), plan.map(Plan::person),
                plan.map(next -> next.at().toLocalDate()), known.call().machine(),
                order.values().isEmpty() ? told : told.with("order", order));
    }

    private static Draft asked(Call call) {
        return Draft.EMPTY.withAny("call", call.id()).with("by", call.askedBy()).with("at", CallSteps.moment(call.at()))
                .with("symptom", call.symptom()).withAny("promised", call.promised().map(CallSteps::moment));
    }

    private static Draft order(PurchaseOrder order) {
        return Draft.EMPTY.withAny("purchaseOrder", order.purchaseOrder())
                .withAny("limit", order.limit().map(Amounts::number)).withAny("approver", order.approver());
    }
}
