package icequill.office.register;

import icequill.answer.ForgetResult;
import icequill.files.form.BookSettings;
import icequill.files.form.StoredForms;
import icequill.ledger.Transaction;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.office.billing.StandingInvoices;
import icequill.party.BillTo;
import icequill.party.Contact;
import icequill.party.Customer;
import icequill.party.Timeline;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Forgets a customer: blanks what the shop need not keep, and says what stays and how long. */
record Forgetting(Path folder, BookSettings settings, Transaction book) {

    private static final MonthDay LAST_DAY = MonthDay.of(12, 31);

    Validated<ForgetResult> forget(CustomerEntry entry, LocalDate day) {
        List<SiteEntry> sites = book.entries().sitesOf(entry.id());
        List<Customer> known = Stream.concat(Stream.of(entry), book.entries().mergedInto(entry.id()).stream())
                .map(CustomerEntry::customer).toList();
        return hindrances(entry, sites).or(() -> entry)
                .then(free -> book.erasure().forget(free.id(), day)).map(blank -> forgotten(entry, known, sites));
    }

    /** What is not billed yet could not be billed any more. */
    private Problems hindrances(CustomerEntry entry, List<SiteEntry> sites) {
        Problems problems = new Problems();
        entry.forgotten().ifPresent(day -> problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                "customer \"" + entry.id() + "\" was forgotten on " + day, ""));
        if (problems.isEmpty()) {
            sites.stream().flatMap(site -> book.entries().visitsAt(site.id()).stream())
                    .filter(visit -> !visit.isPlanned()).map(VisitEntry::id)
                    .filter(visit -> book.entries().withdrawal(visit).isEmpty())
                    .filter(visit -> StandingInvoices.visit(book, visit).isEmpty()
                            && book.papers().ofVisit(visit).isEmpty())
                    .forEach(visit -> problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                            "visit \"" + visit + "\" is not billed yet", "first: icequill invoice issue " + visit));
        }
        return problems;
    }

    /** @param known as he was known, and those who were merged into him */
    private ForgetResult forgotten(CustomerEntry entry, List<Customer> known, List<SiteEntry> sites) {
        List<IssuedPaper> papers = book.papers().ofCustomer(entry.id());
        Optional<LocalDate> keptUntil = papers.stream().map(IssuedPaper::date).max(Comparator.naturalOrder())
                .map(last -> LAST_DAY.atYear(last.getYear() + settings.retentionYears()));
        List<String> ids = sites.stream().map(SiteEntry::id).toList();
        Stream<String> visits = sites.stream().flatMap(site -> book.entries().visitsAt(site.id()).stream())
                .filter(visit -> !visit.isPlanned())
                .map(VisitEntry::id);
        Stream<String> merged = ids.stream().flatMap(site -> book.entries().sitesMergedInto(site).stream());
        List<BillTo> payers = known.stream().flatMap(customer -> customer.billTo().entries().stream())
                .map(Timeline.Entry::value).toList();
        Stream<String> people = Stream.of(payers.stream().flatMap(payer -> payer.attention().stream()),
                known.stream().flatMap(customer -> customer.contacts().people().stream()).map(Contact::name),
                sites.stream().flatMap(site -> StoredForms.contacts(site.data()).stream()).map(Contact::name))
                .flatMap(all -> all).filter(name -> name.contains(" "));
        List<String> names = Stream.of(known.stream().map(Customer::name), payers.stream().map(BillTo::name), people)
                .flatMap(all -> all).distinct().toList();
        Stream<String> payments = book.accounts().payments().stream()
                .filter(payment -> payment.customer().equals(entry.id())).map(PaymentEntry::id);
        Stream<String> payer = Stream.concat(Stream.of(entry.id()),
                book.entries().mergedInto(entry.id()).stream().map(CustomerEntry::id));
        List<String> files = new NamingFiles(folder,
                Stream.of(ids.stream(), merged, visits, payer, payments).flatMap(all -> all).toList(), names).found();
        return new ForgetResult(entry.id(), ids, papers.size(), keptUntil,
                files);
    }
}
