package icequill.office.register;

import icequill.answer.BookedPaper;
import icequill.answer.ExportResult;
import icequill.answer.ExportedForms;
import icequill.answer.PaymentSheet;
import icequill.answer.mail.MailTelling;
import icequill.answer.shown.PaperSheet;
import icequill.answer.shown.WholeBook;
import icequill.answer.shown.WholeBook.Entry;
import icequill.document.CreditNote;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.files.answer.AnswerMapper;
import icequill.files.answer.OneByOne;
import icequill.files.disk.CsvFile;
import icequill.files.disk.SafeFile;
import icequill.files.yaml.Tree;
import icequill.files.yaml.TreeJson;
import icequill.ledger.Reading;
import icequill.ledger.entries.Accounts;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.Entries;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.money.Amounts;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookedPapers;
import icequill.shop.UnknownName;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * Writes a book out, paper by paper, however many there are.
 *
 * @param mails tells of the mails about papers
 */
public record Export(Reading book, MailTelling mails, LongConsumer progress) {

    private static final List<String> HEAD = List.of("number", "kind", "date", "due", "customer", "store",
            "purchaseOrder", "currency", "net", "tax", "gross", "corrects", "replaces", "visit", "agreement",
            "ratesVersion", "sha256");
    private static final Set<Integer> NUMBERS = Set.of(8, 9, 10);
    private static final int STEP = 100;

    public Validated<ExportResult> everything(Path file, boolean replace) {
        AtomicLong count = new AtomicLong();
        Entries entries = book.entries();
        Accounts accounts = book.accounts();
        WholeBook whole = new WholeBook(all(entries::customers, entry -> customer(entry, Optional.empty())),
                taker -> entries.customers().forEach(into -> entries.mergedInto(into.id())
                        .forEach(entry -> taker.accept(customer(entry, Optional.of(into.id()))))),
                all(entries::sites, entry -> Entry.of(entry.id(), EntryForms.site(entry, book))),
                all(entries::agreements, entry -> Entry.of(entry.id(), EntryForms.agreement(entry))),
                all(entries::requests, entry -> Entry.of(entry.id(), EntryForms.request(entry))),
                all(entries::plannedVisits, entry -> Entry.of(entry.id(), EntryForms.visit(entry))),
                all(entries::visits, this::visit),
                all(accounts::accounts, entry -> Entry.of(entry.customer(), EntryForms.account(entry))),
                all(accounts::payments, this::payment), taker -> each(paper -> taker.accept(issued(paper)), count));
        return SafeFile.write(file, replace, out -> AnswerMapper.stream(out, whole))
                .map(written -> new ExportResult(written, count.get()));
    }

    /** One row a paper. What a credit note gives back is negative, so that the sums of the columns are true. */
    public Validated<ExportResult> papers(Path file, boolean replace) {
        AtomicLong count = new AtomicLong();
        return SafeFile.write(file, replace, out -> rows(out, count))
                .map(written -> new ExportResult(written, count.get()));
    }

    /**
     * Forms that can be taken in again, each on its own, in the order in which they are: accounts, customers, sites, and what there is of
     * them.
     *
     * @param names of what is asked for; all where there are none
     */
    public Validated<ExportedForms> forms(List<String> names) {
        Entries entries = book.entries();
        Problems problems = new Problems();
        List<Named> all = new ArrayList<>();
        entries.customers().stream().filter(entry -> entry.forgotten().isEmpty())
                .forEach(entry -> all.add(new Named(Set.of(entry.id()), EntryForms.customer(entry))));
        Set<String> known = all.stream().flatMap(named -> named.names().stream()).collect(Collectors.toSet());
        entries.sites().stream().filter(entry -> known.contains(entry.customer()))
                .forEach(entry -> all.add(new Named(Set.of(entry.id()), EntryForms.site(entry, book))));
        entries.agreements().stream().filter(entry -> !entry.isForgotten()).forEach(
                entry -> all.add(new Named(Set.of(entry.id(), entry.number()), EntryForms.agreement(entry))));
        entries.requests().stream().filter(entry -> !entry.isForgotten())
                .forEach(entry -> all.add(new Named(Set.of(entry.id()), EntryForms.request(entry))));
        Stream.concat(entries.plannedVisits().stream(), entries.visits().stream())
                .filter(entry -> !entry.isForgotten() && entries.withdrawal(entry.id()).isEmpty())
                .forEach(entry -> all.add(new Named(Set.of(entry.id()), EntryForms.visit(entry))));
        book.accounts().accounts().stream().filter(entry -> !entry.isForgotten())
                .forEach(entry -> all.add(new Named(Set.of(entry.customer()), EntryForms.account(entry))));
        book.accounts().payments().stream().filter(entry -> known.contains(entry.customer()))
                .filter(entry -> book.accounts().withdrawal(entry.id()).isEmpty())
                .forEach(entry -> all.add(new Named(Set.of(entry.id()), EntryForms.payment(entry))));
        Set<String> every = all.stream().flatMap(named -> named.names().stream()).collect(Collectors.toSet());
        names.stream().filter(name -> !every.contains(name))
                .forEach(name -> problems.add(UnknownName.name("form", name, every, "see: icequill site list")));
        return problems.or(() -> new ExportedForms(all.stream()
                .filter(named -> names.isEmpty() || named.names().stream().anyMatch(names::contains))
                .map(Named::form).toList()));
    }

    /** A form by all that it is called. */
    private record Named(Set<String> names, Tree.Branch form) {}

    private void rows(OutputStream out, AtomicLong count) throws IOException {
        CsvFile.write(out, HEAD, NUMBERS, rows -> each(paper -> rows.accept(row(paper)), count));
    }

    private void each(Consumer<IssuedPaper> reader, AtomicLong count) {
        book.papers().each(paper -> {
            reader.accept(paper);
            if (count.incrementAndGet() % STEP == 0) {
                progress.accept(count.get());
            }
        });
    }

    private List<String> row(IssuedPaper paper) {
        Optional<PricedPaper> priced = data(paper) instanceof PricedPaper with ? Optional.of(with) : Optional.empty();
        return List.of(paper.number(), BookedPaper.words(paper.series().kind()), paper.date().toString(),
                paper.due().map(Object::toString).orElse(""),
                priced.map(found -> found.billTo().name()).orElseGet(() -> paper.text().replace("\n", ", ")),
                priced.map(found -> found.served().site()).orElse(""),
                priced.flatMap(found -> found.served().purchaseOrder()).orElse(""),
                priced.map(found -> found.totals().gross().getCurrency().getCurrencyCode()).orElse(""),
                priced.map(found -> amount(found, found.totals().net())).orElse(""),
                priced.map(found -> amount(found, found.totals().tax())).orElse(""),
                priced.map(found -> amount(found, found.totals().gross())).orElse(""),
                paper.origin().corrects().orElse(""), paper.origin().replaces().orElse(""),
                visits(paper), paper.origin().agreement().orElse(""), paper.ratesVersion(),
                paper.pdfHash());
    }

    private static String visits(IssuedPaper paper) {
        return Stream.concat(paper.origin().visit().stream(), paper.origin().further().stream().map(Origin.At::visit))
                .collect(Collectors.joining(" "));
    }

    private static String amount(PricedPaper paper, MonetaryAmount amount) {
        return Amounts.plain(paper instanceof CreditNote ? amount.negate() : amount);
    }

    private Paper data(IssuedPaper paper) {
        return BookedPapers.paper(book, paper).orElseThrow();
    }

    private static <E, T> OneByOne<T> all(Supplier<List<E>> entries, Function<E, T> told) {
        return taker -> entries.get().forEach(entry -> taker.accept(told.apply(entry)));
    }

    private static Entry customer(CustomerEntry entry, Optional<String> into) {
        return new Entry(entry.id(), entry.forgotten(), into, Optional.empty(), EntryForms.customer(entry));
    }

    private Entry visit(VisitEntry entry) {
        return new Entry(entry.id(), Optional.empty(), Optional.empty(), book.entries().withdrawal(entry.id())
                .map(back -> new PaymentSheet.Withdrawn(back.at(), back.reason())), EntryForms.visit(entry));
    }

    private PaymentSheet payment(PaymentEntry entry) {
        return new PaymentSheet(entry, Optional.empty(), book.accounts().withdrawal(entry.id()));
    }

    private WholeBook.Issued issued(IssuedPaper paper) {
        return new WholeBook.Issued(PaperSheet.of(book, paper, mails).data(),
                TreeJson.branch(book.papers().data(paper.number()).orElseThrow(), paper.number()));
    }
}
