package icequill.shop;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.StoredForms;
import icequill.ledger.Reading;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.PastEntries;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.party.Customer;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.steps.AgreementSteps;
import icequill.shop.steps.SiteOwners;
import icequill.work.PurchaseOrder;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The forms of a shop's book as they were when a paper was issued.
 *
 * @param issued the moment
 */
public record PastForms(PastEntries then, Reading open, Instant issued) implements FormSource {

    /**
     * A shop as it was when a paper was issued.
     *
     * @param book by the rates of then
     */
    public ShopFolder shop(ShopBook book) {
        return BookForms.shop(book, this);
    }

    @Override
    public Validated<Optional<Customer>> customer(String id) {
        return then.customer(id).map(entry -> BookForms.customer(entry, this::known).map(Optional::of))
                .orElseGet(() -> Validated.valid(Optional.empty()));
    }

    @Override
    public Validated<Optional<StoredForms.Stored>> site(String id, Optional<LocalDate> day) {
        SiteOwners owners = new SiteOwners(id, open.entries().stepsBefore(SiteOwners.KIND, id, issued));
        return then.site(id).map(site -> known(day.flatMap(owners::formerOn).orElse(site.customer()))
                .then(payer -> BookForms.customer(payer, this::known)
                        .map(customer -> stored(site, payer.id(), customer))))
                .orElseGet(() -> Validated.valid(Optional.empty()));
    }

    @Override
    public Validated<List<String>> accounts(String customer) {
        return Validated.valid(BookForms.accounts(customer, this::known));
    }

    private Optional<StoredForms.Stored> stored(SiteEntry site, String owner, Customer customer) {
        return Optional.of(new StoredForms.Stored(site.id(), customer,
                BookForms.accounts(owner, this::known), site.data(),
                then.machinesOf(site.id()).stream().map(MachineEntry::data).toList()));
    }

    private Validated<CustomerEntry> known(String id) {
        return then.customer(id).map(Validated::valid).orElseGet(() -> Validated.invalid(new Problem(Code.MISSING,
                Place.NOWHERE, "what customer \"" + id + "\" was then is not known any more", "")));
    }

    @Override
    public Validated<Optional<Form>> form(FormKind kind, String name) {
        return Validated.valid(switch (kind) {
        case AGREEMENT -> agreements().filter(entry -> entry.id().equals(name) || entry.number().equals(name))
                .findFirst().map(BookForms::form);
        case VISIT, PLANNED_VISIT, SALE -> then.visit(name).filter(entry -> !entry.isForgotten()).map(BookForms::form);
        case MAINTENANCE_REQUEST, BRUSHING_REQUEST -> then.request(kind.key(), name)
                .filter(entry -> !entry.isForgotten()).map(BookForms::form);
        case CUSTOMER, SITE, ACCOUNT, PAYMENT -> Optional.empty();
        });
    }

    private Stream<AgreementEntry> agreements() {
        return then.agreements().stream().filter(entry -> !entry.isForgotten());
    }

    @Override
    public Validated<List<Form>> agreementsAt(String site) {
        return Validated.valid(Stream.concat(agreements().filter(entry -> entry.site().equals(site)),
                BookForms.overSeveral(agreements().toList(), site, cameInto(site))).distinct().map(BookForms::form)
                .toList());
    }

    private Set<String> cameInto(String site) {
        return AgreementSteps.cameInto(open.entries().stepsAt(site).stream()
                .filter(step -> open.entries().stepsBefore(step.kind(), step.id(), issued).contains(step)).toList());
    }

    /** One that was withdrawn later stood then. */
    @Override
    public Validated<List<Form>> visitsAt(String site) {
        return Validated.valid(BookForms.visits(then.visitsAt(site), visit -> open.entries().withdrawal(visit)
                .filter(gone -> gone.at().isBefore(issued)).isPresent()));
    }

    @Override
    public Validated<AgreementSteps> stepsOf(String agreement) {
        return Validated.valid(new AgreementSteps(agreement,
                open.entries().stepsBefore(AgreementSteps.KIND, agreement, issued)));
    }

    @Override
    public Validated<List<SoldAhead>> soldAhead(String site) {
        return Validated.valid(SoldAhead.at(open, site, paper -> paper.issuedAt().isBefore(issued)));
    }

    @Override
    public Validated<List<Form>> answeredCalls(String site) {
        return Validated.valid(BookForms.answeredCalls(open, then.visitsAt(site),
                paper -> paper.issuedAt().isBefore(issued)));
    }

    /** What was to be quoted at a site. */
    public List<Form> quotable(String site) {
        return Stream.concat(
                then.visitsAt(site).stream().filter(entry -> !entry.isForgotten() && entry.isPlanned())
                        .map(BookForms::form),
                then.requestsAt(site).stream().filter(PastForms::isMaintenance).map(BookForms::form)).toList();
    }

    private static boolean isMaintenance(RequestEntry entry) {
        return !entry.isForgotten() && entry.kind().equals(FormKind.MAINTENANCE_REQUEST.key());
    }

    /** What was allowed of it stands on the paper. */
    @Override
    public Validated<Optional<PurchaseOrder>> orderOfCall(String id) {
        return Validated.valid(Optional.empty());
    }

    @Override
    public Validated<List<String>> ids(FormKind kind) {
        return Validated.valid(List.of());
    }
}
