package icequill.shop;

import icequill.account.Account;
import icequill.account.AccountNotes;
import icequill.account.AccountNotes.Disputed;
import icequill.account.Credited;
import icequill.account.Invoiced;
import icequill.account.PaidBack;
import icequill.account.Payment;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.document.ServicePeriod;
import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** The accounts of customers as the book has them: bills issued and from before, credit notes, payments. */
public record BookAccounts(ShopFolder folder, Reading open, CurrencyUnit currency) {

    /**
     * A customer's account, all of it, whatever the day.
     *
     * @param payer whose it is
     * @param apart papers and payments in another currency, which it is without
     * @param missing bills that were paid and that nothing tells of any more
     */
    public record Found(CustomerEntry payer, Account account, List<AccountNotes> notes, List<String> apart,
            List<String> missing) {

        public Found {
            notes = List.copyOf(notes);
            apart = List.copyOf(apart);
            missing = List.copyOf(missing);
        }

        /** Invoices that are disputed or were paid, and that the account does not have. */
        public List<Problem> unknown() {
            List<String> known = account.invoices().stream().map(Invoiced::number).toList();
            Stream<Problem> disputed = notes.stream().flatMap(note -> note.disputed().stream())
                    .filter(one -> !known.contains(one.number()))
                    .map(one -> Problem.unknownName(one.place(), "invoice on this account", one.number(), known));
            Stream<Problem> paid = missing.stream().map(number -> new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "invoice " + number + " was paid, and is not on this account any more",
                    "the invoice as it was; a payment noted by mistake is withdrawn: icequill payment withdraw"));
            return Stream.concat(disputed, paid).toList();
        }
    }

    /** The customer of an id, who must be billed himself and not be forgotten. */
    public Validated<CustomerEntry> payer(String id) {
        return open.entries().customer(id).found().map(Validated::valid)
                .orElseGet(() -> Validated.invalid(open.entries().merged("customer", id)
                        .orElseGet(() -> UnknownName.name("customer", id, open.entries().customers().stream()
                                .map(CustomerEntry::id).toList(), "see: icequill customer list"))))
                .then(entry -> entry.forgotten().isEmpty()
                        ? Validated.valid(entry)
                        : invalid("customer \"" + id + "\" was forgotten on " + entry.forgotten().get(), "another id"))
                .then(entry -> open.accounts().payer(id).then(payer -> payer.id().equals(id)
                        ? Validated.valid(entry)
                        : invalid("customer \"" + id + "\" is billed through \"" + payer.id() + "\"", payer.id())));
    }

    private static <T> Validated<T> invalid(String message, String allowed) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, message, allowed));
    }

    /**
     * The account of a payer.
     *
     * @param isTold whether purchase orders and stores are wanted, for which the papers' data are read
     */
    public Validated<Found> of(CustomerEntry payer, boolean isTold) {
        List<String> together = open.accounts().together(payer.id());
        Problems problems = new Problems();
        List<AccountNotes> notes = notes(payer.id(), together, problems);
        return problems.or(() -> found(payer, together, notes, isTold));
    }

    /** The payer's own come first. */
    private List<AccountNotes> notes(String payer, List<String> together, Problems problems) {
        List<AccountNotes> notes = Stream.concat(Stream.of(payer), together.stream().filter(id -> !id.equals(payer)))
                .flatMap(id -> folder.accountForm(id, () -> open.accounts().account(id)
                        .filter(entry -> !entry.isForgotten()).map(BookForms::form)).stream())
                .flatMap(form -> folder.contents().account(form).stream()).toList();
        problems.addAll(folder.problems());
        return notes;
    }

    private Found found(CustomerEntry payer, List<String> together, List<AccountNotes> notes, boolean isTold) {
        Map<String, IssuedPaper> papers = new LinkedHashMap<>();
        together.stream().flatMap(id -> open.papers().ofCustomer(id).stream())
                .forEach(paper -> papers.put(paper.number(), paper));
        List<PaymentEntry> payments = open.accounts().standing(together);
        List<IssuedPaper> own = papers.values().stream().filter(paper -> paper.gross().filter(this::isOurs)
                .filter(MonetaryAmount::isPositive).isPresent()).toList();
        Map<String, MonetaryAmount> paid = paid(payments);
        Map<String, Disputed> disputed = new HashMap<>();
        notes.forEach(note -> note.disputed().forEach(one -> disputed.putIfAbsent(one.number(), one)));
        List<Invoiced> invoices = Stream
                .concat(notes.stream().flatMap(note -> note.earlier().invoices().stream()),
                        own.stream().filter(paper -> paper.series().kind() == PaperKind.INVOICE)
                                .map(paper -> invoiced(paper,
                                        isTold || (!isPaid(paper, paid) && BookedPapers.offersEarly(open, paper)))))
                .map(invoice -> disputed(invoice, Optional.ofNullable(disputed.get(invoice.number())))).toList();
        List<Credited> credits = Stream.concat(notes.stream().flatMap(note -> note.earlier().credits().stream()),
                own.stream().filter(paper -> paper.series().kind() == PaperKind.CREDIT_NOTE).map(this::credited))
                .map(credit -> paidBack(credit, payments)).toList();
        Set<String> numbers = new HashSet<>(invoices.stream().map(Invoiced::number).toList());
        List<Payment> received = new ArrayList<>(
                notes.stream().flatMap(note -> note.earlier().payments().stream()).toList());
        payments.stream().filter(payment -> !payment.isBack() && isOurs(payment.amount()))
                .map(payment -> payment(payment, numbers, together)).filter(payment -> payment.amount().isPositive())
                .forEach(received::add);
        return new Found(payer, new Account(currency, invoices, credits, received), notes, Stream
                .concat(papers.values().stream().filter(paper -> paper.gross().filter(sum -> !isOurs(sum)).isPresent()
                        && isBill(paper)).map(IssuedPaper::number),
                        payments.stream().filter(payment -> !isOurs(payment.amount())).map(PaymentEntry::id))
                .toList(),
                payments.stream().filter(payment -> !payment.isBack()).flatMap(payment -> payment.shares().stream())
                        .map(PaymentEntry.Share::bill).filter(number -> !numbers.contains(number))
                        .filter(number -> open.papers().show(number).found().isEmpty()).distinct().toList());
    }

    private static boolean isBill(IssuedPaper paper) {
        return paper.series().kind() == PaperKind.INVOICE || paper.series().kind() == PaperKind.CREDIT_NOTE;
    }

    private boolean isOurs(MonetaryAmount amount) {
        return amount.getCurrency().equals(currency);
    }

    /** What was paid of each bill. */
    private Map<String, MonetaryAmount> paid(List<PaymentEntry> payments) {
        Map<String, MonetaryAmount> paid = new HashMap<>();
        payments.stream().filter(payment -> isOurs(payment.amount())).flatMap(payment -> payment.shares().stream())
                .forEach(share -> paid.merge(share.bill(), share.amount(), MonetaryAmount::add));
        return paid;
    }

    /** Of what is paid in whole nothing is taken off. */
    private static boolean isPaid(IssuedPaper paper, Map<String, MonetaryAmount> paid) {
        return paper.gross().filter(gross -> !gross.isGreaterThan(
                paid.getOrDefault(paper.number(), Amounts.zero(gross.getCurrency())))).isPresent();
    }

    private Invoiced invoiced(IssuedPaper paper, boolean isTold) {
        Optional<PricedPaper> told = isTold
                ? BookedPapers.paper(open, paper).found().flatMap(BookAccounts::priced)
                : Optional.empty();
        Optional<ServicePeriod> served = told.map(PricedPaper::served);
        return new Invoiced(paper.number(), paper.date(), paper.due().orElse(paper.date()), paper.gross().orElseThrow(),
                served.flatMap(ServicePeriod::purchaseOrder), served.flatMap(ServicePeriod::storeNumber),
                Optional.empty(), told.flatMap(priced -> priced.totals().takenEarly()), Place.ofFile(paper.number()));
    }

    private static Optional<PricedPaper> priced(Paper paper) {
        return paper instanceof PricedPaper priced ? Optional.of(priced) : Optional.empty();
    }

    private static Invoiced disputed(Invoiced invoice, Optional<Disputed> disputed) {
        return new Invoiced(invoice.number(), invoice.date(), invoice.due(), invoice.total(), invoice.purchaseOrder(),
                invoice.store(),
                disputed.map(one -> new Invoiced.Dispute(one.reason(), one.amount(), one.place())), invoice.early(),
                invoice.place());
    }

    private Credited credited(IssuedPaper paper) {
        return new Credited(paper.number(), paper.date(), paper.gross().orElseThrow(), paper.origin().corrects(),
                List.of(), Place.ofFile(paper.number()));
    }

    private static Credited paidBack(Credited credit, List<PaymentEntry> payments) {
        List<PaidBack> back = payments.stream().filter(PaymentEntry::isBack)
                .flatMap(payment -> payment.shares().stream().filter(share -> share.bill().equals(credit.number()))
                        .map(share -> new PaidBack(share.day(), share.amount(), payment.reference(),
                                Place.ofFile(payment.id()))))
                .toList();
        return new Credited(credit.number(), credit.date(), credit.total(), credit.corrects(),
                Stream.concat(credit.paidBack().stream(), back.stream()).toList(), credit.place());
    }

    /** As far as it is for this account: what one payer paid for another's bill counts there. */
    private Payment payment(PaymentEntry entry, Set<String> numbers, List<String> together) {
        List<Payment.Share> here = entry.shares().stream().filter(share -> numbers.contains(share.bill()))
                .map(share -> new Payment.Share(share.bill(), share.day(), share.amount())).toList();
        MonetaryAmount counted = Amounts.sum(here.stream().map(Payment.Share::amount).toList(), currency);
        MonetaryAmount elsewhere = Amounts.sum(entry.shares().stream().map(PaymentEntry.Share::amount).toList(),
                currency).subtract(counted);
        return new Payment(entry.day(),
                together.contains(entry.customer()) ? entry.amount().subtract(elsewhere) : counted, entry.reference(),
                here, Place.ofFile(entry.id()));
    }
}
