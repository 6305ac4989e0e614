package icequill.shop;

import icequill.account.AccountNotes;
import icequill.account.PaymentRequest;
import icequill.files.form.AccountReader;
import icequill.files.form.AgreementReader;
import icequill.files.form.BrushingReader;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.PaymentReader;
import icequill.files.form.PlanRequestReader;
import icequill.files.form.SiteHistoryReader;
import icequill.files.form.VisitReader;
import icequill.files.yaml.Fields;
import icequill.forecast.inputs.SiteHistory;
import icequill.party.Shop;
import icequill.problem.Problems;
import icequill.request.AgreementRequest;
import icequill.request.BrushingRequest;
import icequill.request.PlanRequest;
import icequill.work.Visit;
import java.util.Optional;

/**
 * What forms say, by their kinds.
 *
 * @param shop empty while shop.yaml has problems
 * @param problems what is wrong with them is added here
 */
public record FormContents(Optional<Shop> shop, Problems problems) {

    /** Reads a visit, done or planned; empty also while the shop has problems. */
    public Optional<Visit> visit(Form form) {
        return fields(form, FormKind.VISIT)
                .flatMap(fields -> shop.flatMap(found -> new VisitReader(fields, found).read(form.id())));
    }

    /** Reads a request for a maintenance quote, empty also while the shop has problems. */
    public Optional<PlanRequest> maintenance(Form form) {
        return fields(form, FormKind.MAINTENANCE_REQUEST)
                .flatMap(fields -> shop.flatMap(found -> PlanRequestReader.read(fields, found)));
    }

    /** Reads what a request for a maintenance quote tells of its site for a forecast, empty also while the shop has problems. */
    public Optional<SiteHistory> history(Form form) {
        return fields(form, FormKind.MAINTENANCE_REQUEST)
                .flatMap(fields -> shop.map(found -> SiteHistoryReader.read(fields, found)));
    }

    /** Reads an agreement, empty also while the shop has problems. */
    public Optional<AgreementRequest> agreement(Form form) {
        return fields(form, FormKind.AGREEMENT)
                .flatMap(fields -> shop.flatMap(found -> new AgreementReader(fields, found).read()));
    }

    /** Reads a request for a brushing sheet, empty also while the shop has problems. */
    public Optional<BrushingRequest> brushing(Form form) {
        return fields(form, FormKind.BRUSHING_REQUEST)
                .flatMap(fields -> shop.flatMap(found -> BrushingReader.read(fields, found)));
    }

    /** Reads what is known of a customer's account, empty also while the shop has problems. */
    public Optional<AccountNotes> account(Form form) {
        return fields(form, FormKind.ACCOUNT)
                .flatMap(fields -> shop.flatMap(found -> new AccountReader(fields, found).read()));
    }

    /** Reads a payment, empty also while the shop has problems. */
    public Optional<PaymentRequest> payment(Form form) {
        return fields(form, FormKind.PAYMENT)
                .flatMap(fields -> shop.flatMap(found -> new PaymentReader(fields, found).read()));
    }

    private Optional<Fields> fields(Form form, FormKind kind) {
        return Fields.checked(form.tree(), kind.schema(), problems);
    }
}
