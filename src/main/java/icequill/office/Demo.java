package icequill.office;

import icequill.document.Reminder;
import icequill.money.Amounts;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** The whole program at work for an invented shop. */
public final class Demo {

    /** Marks a folder as one that a demo made and may replace. */
    private static final String MARK = ".icequill-demo";
    private static final int FIRST_NUMBER = 101;
    private static final LocalDate SHEET_DAY = LocalDate.of(2026, 7, 1);
    private static final LocalDate CREDIT_DAY = LocalDate.of(2026, 6, 30);
    private static final LocalDate ACCOUNT_DAY = LocalDate.of(2026, 8, 31);
    private static final LocalDate QUOTE_DAY = LocalDate.of(2026, 5, 14);

    private Demo() {
    }

    /** What was made; the sums are those of invoices and credit notes. */
    public record Made(Path folder, List<WrittenPaper> papers) {
        public Made {
            papers = List.copyOf(papers);
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

        public Map<String, Object> json() {
            Map<String, Object> view = new LinkedHashMap<>();
            view.put("folder", folder.toString());
            view.put("papers", papers.stream().map(WrittenPaper::json).toList());
            return view;
        }
    }

    /**
     * Makes the shop and all its papers, invoices numbered, each dated by the day of its visit.
     *
     * @param folder new, empty, or made by an earlier demo, which is then replaced
     * @param progress is told what comes next
     */
    public static Checked<Made> run(Path folder, Consumer<String> progress) {
        if (Files.exists(folder.resolve(MARK))) {
            delete(folder);
        }
        return NewShop.create(folder, true).then(made -> {
            mark(made);
            progress.accept("Made the invented shop in " + made);
            return invoices(made, progress);
        });
    }

    private static Checked<Made> invoices(Path folder, Consumer<String> progress) {
        Office office = Office.of(folder);
        Problems problems = new Problems();
        List<WrittenPaper> papers = new ArrayList<>();
        List<Path> visits = BookSites.shop(folder).visits();
        for (int i = 0; i < visits.size(); i++) {
            Path visit = visits.get(i);
            progress.accept("Invoice and record " + (i + 1) + " of " + visits.size() + ": " + visit.getFileName());
            String number = "2026-0" + (FIRST_NUMBER + i);
            problems.take(VisitInHand.of(BookSites.shop(folder), visit)).ifPresent(hand -> {
                Office.Wish wish = new Office.Wish(Optional.of(number), hand.visit().day(), Optional.empty(),
                        Extras.NONE);
                problems.take(office.invoice(hand, wish)).ifPresent(papers::add);
                problems.take(office.record(hand, unnumbered(hand.visit().day()))).ifPresent(papers::add);
            });
        }
        for (Path planned : BookSites.shop(folder).planned()) {
            progress.accept("Work sheet: " + planned.getFileName());
            problems.take(office.worksheet(planned, unnumbered(SHEET_DAY))).ifPresent(papers::add);
        }
        for (Path brushing : BookSites.shop(folder).brushings()) {
            progress.accept("Brushing sheet: " + brushing.getFileName());
            problems.take(office.brushing(brushing, unnumbered(SHEET_DAY))).ifPresent(papers::add);
        }
        for (Path account : BookSites.shop(folder).accounts()) {
            progress.accept("Statement and reminder: " + account.getFileName());
            Office.Wish wish = unnumbered(ACCOUNT_DAY);
            problems.take(office.accounts().statement(account, wish, Optional.empty())).ifPresent(papers::add);
            problems.take(office.accounts().reminder(account, wish, Reminder.Level.SECOND)).ifPresent(papers::add);
        }
        others("Credit note", BookSites.shop(folder).credits(), "C-", CREDIT_DAY, office::credit, progress)
                .forEach(made -> problems.take(made).ifPresent(papers::add));
        others("Quote", BookSites.shop(folder).quotes(), "Q-", QUOTE_DAY, office::quote, progress)
                .forEach(made -> problems.take(made).ifPresent(papers::add));
        new DemoPlans(folder, FIRST_NUMBER + visits.size(), progress).papers()
                .forEach(made -> problems.take(made).ifPresent(papers::add));
        if (papers.isEmpty() && problems.isEmpty()) {
            problems.add(new Problem(Code.MISSING, Place.ofFile("visits"), "the demo has no visits", ""));
        }
        return problems.or(() -> new Made(folder, papers));
    }

    private static Stream<Checked<WrittenPaper>> others(String what, List<Path> files, String prefix, LocalDate day,
            BiFunction<Path, Office.Wish, Checked<WrittenPaper>> write, Consumer<String> progress) {
        return IntStream.range(0, files.size()).mapToObj(i -> {
            progress.accept(what + " " + (i + 1) + " of " + files.size() + ": " + files.get(i).getFileName());
            Optional<String> number = Optional.of(prefix + "2026-0" + (FIRST_NUMBER + i));
            return write.apply(files.get(i), new Office.Wish(number, day, Optional.empty(), Extras.NONE));
        });
    }

    private static Office.Wish unnumbered(LocalDate day) {
        return new Office.Wish(Optional.empty(), day, Optional.empty(), Extras.NONE);
    }

    private static void mark(Path folder) {
        try {
            Files.writeString(folder.resolve(MARK), "A demo made this folder and replaces it when it is run again.\n");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
