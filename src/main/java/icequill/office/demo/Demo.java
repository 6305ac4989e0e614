package icequill.office.demo;

import icequill.answer.BrushingResult;
import icequill.answer.WrittenPaper;
import icequill.document.Reminder;
import icequill.ledger.entries.VisitEntry;
import icequill.money.Amounts;
import icequill.office.Office;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.shop.VisitLoader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.money.MonetaryAmount;

/** The whole program at work for an invented shop. */
public final class Demo {

    private static final LocalDate SHEET_DAY = LocalDate.of(2026, 7, 1);
    private static final LocalDate ACCOUNT_DAY = LocalDate.of(2026, 8, 31);

    private Demo() {
    }

    /** What was made; the sums are those of invoices and credit notes. */
    public record Made(Path folder, List<WrittenPaper> papers) {
        public Made {
            papers = List.copyOf(papers);
        }

        /** The same after all of it was moved. */
        Made in(Path moved) {
            return new Made(moved, papers.stream().map(paper -> paper.moved(folder, moved)).toList());
        }

        /** One row a paper, and one with the sums. */
        public List<List<String>> rows() {
            List<WrittenPaper> bills = papers.stream().filter(WrittenPaper::isOwed).toList();
            List<List<String>> rows = new ArrayList<>(papers.stream().map(WrittenPaper::row).toList());
            rows.add(
                    List.of("together", bills.size() + " invoices and credit notes", sum(bills, WrittenPaper.Sums::net),
                            sum(bills, WrittenPaper.Sums::tax), sum(bills, WrittenPaper.Sums::gross)));
            return rows;
        }

        private static String sum(List<WrittenPaper> bills, Function<WrittenPaper.Sums, MonetaryAmount> part) {
            List<MonetaryAmount> amounts = bills.stream().flatMap(paper -> paper.sums().stream()).map(part).toList();
            return Amounts.plain(Amounts.sum(amounts, amounts.getFirst().getCurrency()));
        }
    }

    /**
     * Makes the shop, its book and all its papers, each invoice dated by the day on which its visit ended.
     *
     * @param folder new, empty, or with an earlier demo and nothing else, which is then replaced
     * @param progress is told what comes next
     */
    public static Validated<Made> run(Path folder, Consumer<String> progress) {
        DemoFolder own = new DemoFolder(folder);
        return own.room().then(room -> {
            try {
                progress.accept("Making the invented shop");
                return NewShop.create(room, true).then(shop -> papers(shop, progress))
                        .then(made -> own.filled(room).map(made::in)).map(made -> {
                            progress.accept("Made the invented shop in " + folder);
                            return made;
                        });
            } finally {
                DemoFolder.delete(room);
            }
        });
    }

    private static Validated<Made> papers(Path folder, Consumer<String> progress) {
        return ShopBook.of(folder, DemoForms.CLOCK).together(book -> papers(book, progress));
    }

    private static Validated<Made> papers(ShopBook book, Consumer<String> progress) {
        Path folder = book.folder();
        Office office = Office.of(book);
        Problems problems = new Problems();
        List<WrittenPaper> papers = new ArrayList<>();
        DemoEntries entries = DemoEntries.of(book);
        List<Validated<WrittenPaper>> issued = new DemoBook(book, entries, progress).papers();
        issued.forEach(made -> problems.take(made).ifPresent(papers::add));
        for (VisitEntry visit : entries.visits().stream().sorted(Comparator.comparing(VisitEntry::id)).toList()) {
            progress.accept("Record: " + visit.id());
            problems.take(new VisitLoader(BookForms.shop(book)).of(BookForms.form(visit))
                    .then(hand -> office.record(hand, unnumbered(hand.visit().day())))).ifPresent(papers::add);
        }
        for (FormName planned : entries.planned()) {
            progress.accept("Work sheet: " + planned.text());
            problems.take(office.worksheet(planned, unnumbered(SHEET_DAY))).ifPresent(papers::add);
        }
        for (FormName brushing : entries.brushings()) {
            progress.accept("Brushing sheet: " + brushing.text());
            problems.take(office.brushing(brushing, unnumbered(SHEET_DAY))).map(BrushingResult::paper)
                    .ifPresent(papers::add);
        }
        progress.accept("Payments of customers");
        problems.take(DemoForms.paid(book));
        accounts(office, progress).forEach(made -> problems.take(made).ifPresent(papers::add));
        new DemoPlans(book, entries, progress).papers().forEach(made -> problems.take(made).ifPresent(papers::add));
        if (issued.isEmpty()) {
            problems.add(new Problem(Code.MISSING, Place.ofFile("visits"), "the demo has no visits", ""));
        }
        return problems.or(() -> new Made(folder, papers));
    }

    private static List<Validated<WrittenPaper>> accounts(Office office, Consumer<String> progress) {
        List<Validated<WrittenPaper>> papers = new ArrayList<>();
        PaperOptions options = unnumbered(ACCOUNT_DAY);
        for (String account : List.of("fernhill-hotels", "mercado-del-mar")) {
            progress.accept("Statement and reminder: " + account);
            FormName customer = new FormName.InBook(account);
            papers.add(office.accounts().statement(customer, options, Optional.empty()));
            papers.add(office.accounts().reminder(customer, options, Reminder.Level.SECOND));
        }
        return papers;
    }

    private static PaperOptions unnumbered(LocalDate day) {
        return new PaperOptions(Optional.empty(), day, Optional.empty(), Extras.NONE);
    }
}
