package icequill.office.register;

import icequill.account.AccountRules;
import icequill.answer.ImportResult.State;
import icequill.files.form.CustomerForm;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.StoredForms;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Tree;
import icequill.ledger.Transaction;
import icequill.ledger.entries.AccountEntry;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.office.billing.InvoicedPayments;
import icequill.office.billing.PaymentBooking;
import icequill.office.billing.VisitBooking;
import icequill.papers.WorkSheetAssembly;
import icequill.party.Shop;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.AgreementLoader;
import icequill.shop.BookAccounts;
import icequill.shop.BrushingLoader;
import icequill.shop.EntryRows;
import icequill.shop.PlanLoader;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.VisitLoader;
import icequill.visits.VisitContext;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Looks at forms as the papers that are to come of them will need them, and says how each is stored.
 *
 * @param shop with all forms that are handed over laid over it
 * @param problems whatever is wrong that the shop does not collect itself
 */
record StorableForms(ShopBook book, ShopFolder shop, LocalDate today, Problems problems) {

    /** A form that is right. */
    record Storable(FormKind kind, String id, Function<Transaction, Validated<State>> store) {}

    /** Empty where something is wrong, which was collected. */
    Optional<Storable> of(Form form) {
        return switch (form.kind().orElseThrow()) {
        case CUSTOMER -> customer(form);
        case SITE -> site(form);
        case AGREEMENT -> agreement(form);
        case MAINTENANCE_REQUEST -> new PlanLoader(shop).read(form, today, problems)
                .flatMap(hand -> request(form, hand.setting().site().id()));
        case BRUSHING_REQUEST -> new BrushingLoader(shop).read(form, today, problems)
                .flatMap(hand -> request(form, hand.site().id()));
        case PLANNED_VISIT, VISIT, SALE -> visit(form);
        case ACCOUNT -> account(form);
        case PAYMENT -> shop.contents().payment(form).flatMap(wish -> storable(form,
                open -> new PaymentBooking(shop, today).store(Optional.of(form.id()), wish, open)
                        .map(PaymentBooking.Booked::state)));
        };
    }

    private static Optional<Storable> storable(Form form, Function<Transaction, Validated<State>> store) {
        return Optional.of(new Storable(form.kind().orElseThrow(), form.id(), store));
    }

    private static State state(Optional<?> before, boolean isSame) {
        if (before.isEmpty()) {
            return State.NEW;
        }
        return isSame ? State.SAME : State.CHANGED;
    }

    private static <T> Validated<State> stored(Optional<T> before, T entry, Function<T, Validated<T>> add,
            Function<T, Validated<T>> change) {
        State state = state(before, before.filter(entry::equals).isPresent());
        return switch (state) {
        case NEW -> add.apply(entry).map(done -> state);
        case CHANGED -> change.apply(entry).map(done -> state);
        case SAME -> Validated.valid(state);
        };
    }

    private Optional<Storable> customer(Form form) {
        if (shop.customer(form).isEmpty() || !(form.tree() instanceof Tree.Branch branch)) {
            return Optional.empty();
        }
        Optional<String> parent = form.text(StoredForms.PARENT_KEY);
        return shop.customers().customer(branch).flatMap(customer -> storable(form, open -> {
            Optional<CustomerEntry> before = open.entries().customer(form.id()).found();
            boolean isSame = before.filter(old -> old.forgotten().isEmpty()
                    && CustomerForm.of(old.parent(), old.customer()).equals(CustomerForm.of(parent, customer)))
                    .isPresent();
            return isSame
                    ? Validated.valid(State.SAME)
                    : new EntryRows(open).customer(form.id(), customer, parent).map(done -> state(before, false));
        }));
    }

    private Optional<Storable> site(Form form) {
        if (!(form.tree() instanceof Tree.Branch branch)) {
            return Optional.empty();
        }
        return shop.site(form).flatMap(site -> {
            site.taxPlace()
                    .flatMap(place -> RegisterOffice.taxPlace(shop, place,
                            new Fields(branch, problems).place("taxPlace"),
                            today))
                    .ifPresent(problems::add);
            StoredForms.Whole whole = StoredForms.whole(site, branch);
            String payer = form.text(StoredForms.CUSTOMER_KEY).orElseThrow();
            return storable(form, open -> site(open, payer, whole));
        });
    }

    private static Validated<State> site(Transaction open, String payer, StoredForms.Whole whole) {
        String id = whole.site().id();
        Optional<SiteEntry> before = open.entries().site(id).found();
        Map<String, String> machines = open.entries().machinesOf(id).stream()
                .collect(Collectors.toMap(MachineEntry::id, MachineEntry::data));
        boolean isSame = before.filter(old -> old.customer().equals(payer) && old.data().equals(whole.data()))
                .isPresent()
                && whole.machines().entrySet().stream()
                        .allMatch(machine -> machine.getValue().equals(machines.get(machine.getKey())));
        return isSame
                ? Validated.valid(State.SAME)
                : new EntryRows(open).site(payer, whole).map(done -> state(before, false));
    }

    private Optional<Storable> agreement(Form form) {
        return new AgreementLoader(shop, new InvoicedPayments(book)::of).read(form, today, problems)
                .flatMap(hand -> {
                    AgreementEntry entry = new AgreementEntry(form.id(), hand.request().number(),
                            hand.site().id(), form.data());
                    return storable(form, open -> {
                        Optional<AgreementEntry> before = open.entries().agreements().stream()
                                .filter(known -> known.id().equals(entry.id())).findFirst();
                        return stored(before, entry, open.register()::add, open.register()::change);
                    });
                });
    }

    /** Held against the bills of the book once those before it are stored. */
    private Optional<Storable> account(Form form) {
        return shop.contents().account(form).flatMap(notes -> storable(form, open -> {
            BookAccounts accounts = new BookAccounts(shop, open, shop.shop().map(Shop::currency).orElseThrow());
            AccountEntry entry = new AccountEntry(form.id(), form.data());
            return accounts.payer(form.id()).then(payer -> accounts.of(payer, false)).then(this::valid)
                    .then(found -> stored(open.accounts().account(form.id()), entry, open.receiving()::note,
                            open.receiving()::note));
        }));
    }

    private Validated<BookAccounts.Found> valid(BookAccounts.Found found) {
        Problems wrong = new Problems();
        wrong.addAll(AccountRules.problems(found.account()));
        wrong.addAll(found.unknown());
        return wrong.or(() -> found);
    }

    private Optional<Storable> request(Form form, String site) {
        RequestEntry entry = new RequestEntry(form.kind().orElseThrow().key(), form.id(), site, form.data());
        return storable(form, open -> {
            Optional<RequestEntry> before = open.entries().request(entry.kind(), entry.id());
            return stored(before, entry, open.register()::add, open.register()::change);
        });
    }

    /** Whether a work sheet could be made; what is only to be quoted needs none. */
    private boolean isPlannable(Form form, VisitContext hand) {
        return form.kind().filter(kind -> kind == FormKind.PLANNED_VISIT).isEmpty()
                || problems.take(WorkSheetAssembly.ofPlanned(hand, today)).isPresent();
    }

    private Optional<Storable> visit(Form form) {
        VisitBooking booking = new VisitBooking(book);
        return new VisitLoader(shop).read(form, problems).filter(hand -> isPlannable(form, hand))
                .flatMap(hand -> problems.take(booking.bookable(form, hand)))
                .flatMap(visit -> storable(form, open -> {
                    Optional<VisitEntry> before = open.entries().visit(form.id()).found();
                    return booking.store(visit, open)
                            .map(done -> state(before, before.filter(visit.entry()::equals).isPresent()));
                }));
    }
}
