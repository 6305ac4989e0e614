package icequill.office.register;

import icequill.answer.BookedPaper;
import icequill.answer.ExportResult;
import icequill.answer.PaperSheet;
import icequill.document.CreditNote;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.files.disk.CsvFile;
import icequill.files.disk.SafeFile;
import icequill.files.form.CustomerForm;
import icequill.files.yaml.Json;
import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.money.Amounts;
import icequill.problem.Checked;
import icequill.shop.BookedPapers;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import javax.money.MonetaryAmount;

/** Writes a book out, paper by paper, however many there are. */
public record Export(Reading book, LongConsumer progress) {

    private static final List<String> HEAD = List.of("number", "kind", "date", "due", "customer", "store",
            "purchaseOrder", "currency", "net", "tax", "gross", "corrects", "replaces", "visit", "agreement",
            "ratesVersion", "sha256");
    private static final Set<Integer> NUMBERS = Set.of(8, 9, 10);
    private static final int STEP = 100;

    public Checked<ExportResult> everything(Path file, boolean replace) {
        AtomicLong count = new AtomicLong();
        Map<String, Consumer<Consumer<Object>>> lists = new LinkedHashMap<>();
        lists.put("customers", out -> book.entries().customers().forEach(entry -> out.accept(customer(entry))));
        lists.put("mergedCustomers", out -> book.entries().customers().forEach(entry -> book.entries()
                .mergedInto(entry.id()).forEach(merged -> out.accept(merged(customer(merged), entry.id())))));
        lists.put("sites", out -> book.entries().sites().forEach(entry -> out.accept(site(entry))));
        lists.put("machines", out -> book.entries().machines().forEach(entry -> out.accept(machine(entry))));
        lists.put("visits", out -> book.entries().visits().forEach(entry -> out.accept(visit(entry))));
        lists.put("papers", out -> each(paper -> out.accept(paper(paper)), count));
        return SafeFile.write(file, replace, out -> Json.stream(out, lists))
                .map(written -> new ExportResult(written, count.get()));
    }

    /** One row a paper. What a credit note gives back is negative, so that the sums of the columns are true. */
    public Checked<ExportResult> papers(Path file, boolean replace) {
        AtomicLong count = new AtomicLong();
        return SafeFile.write(file, replace, out -> rows(out, count))
                .map(written -> new ExportResult(written, count.get()));
    }

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
                paper.origin().visit().orElse(""), paper.origin().agreement().orElse(""), paper.ratesVersion(),
                paper.pdfHash());
    }

    private static String amount(PricedPaper paper, MonetaryAmount amount) {
        return Amounts.plain(paper instanceof CreditNote ? amount.negate() : amount);
    }

    private Paper data(IssuedPaper paper) {
        return BookedPapers.paper(book, paper).orElseThrow();
    }

    private static Map<String, Object> merged(Map<String, Object> view, String into) {
        view.put("mergedInto", into);
        return view;
    }

    /** A customer as the book holds him. */
    public static Map<String, Object> customer(CustomerEntry entry) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("id", entry.id());
        entry.parent().ifPresent(parent -> view.put("parent", parent));
        entry.forgotten().ifPresent(day -> view.put("forgotten", day.toString()));
        view.putAll(CustomerForm.of(entry.customer()));
        return view;
    }

    /** A site as the book holds it, without its machines. */
    public static Map<String, Object> site(SiteEntry entry) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("id", entry.id());
        view.put("customer", entry.customer());
        view.putAll(Json.map(entry.data()));
        return view;
    }

    /** A machine as the book holds it. */
    public static Map<String, Object> machine(MachineEntry entry) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("site", entry.site());
        view.put("id", entry.id());
        view.putAll(Json.map(entry.data()));
        return view;
    }

    private Map<String, Object> visit(VisitEntry entry) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("id", entry.id());
        book.entries().withdrawal(entry.id()).ifPresent(withdrawal -> view.put("withdrawn",
                Map.of("at", withdrawal.at().toString(), "reason", withdrawal.reason())));
        view.putAll(Json.map(entry.data()));
        return view;
    }

    private Map<String, Object> paper(IssuedPaper paper) {
        Map<String, Object> view = new LinkedHashMap<>(PaperSheet.of(book, paper).json());
        view.remove("credits");
        view.put("data", Json.map(book.papers().data(paper.number()).orElseThrow()));
        return view;
    }
}
