package icequill.office.care;

import icequill.answer.history.VisitEarnings;
import icequill.answer.history.VisitEarnings.Row;
import icequill.ledger.entries.VisitEntry;
import icequill.money.Amounts;
import icequill.pricer.PricedVisit;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.VisitLoader;
import icequill.visits.VisitContext;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;

/** The owner's look at what visits earned. */
public final class EarningsOffice {

    private final ShopBook book;

    private EarningsOffice(ShopBook book) {
        this.book = book;
    }

    public static EarningsOffice of(Path folder, Clock clock) {
        return new EarningsOffice(ShopBook.of(folder, clock));
    }

    /** What rows are made of. */
    public enum By {
        VISIT, CUSTOMER, SITE,
        /** The plan of the agreement that a visit fell under. */
        TIER
    }

    /** The visits of a period at the prices and costs of their days, the row that earned most first. */
    public Validated<VisitEarnings> of(By by, AskedPeriod period) {
        return new DoneVisits(book).of(period).then(this::priced).map(all -> told(by, all));
    }

    private Validated<List<VisitContext>> priced(List<VisitEntry> entries) {
        VisitLoader loader = new VisitLoader(BookForms.shop(book));
        Problems problems = new Problems();
        List<VisitContext> all = new ArrayList<>();
        entries.forEach(entry -> loader.read(BookForms.form(entry), problems).ifPresent(all::add));
        problems.addAll(loader.folder().problems());
        return problems.or(() -> all);
    }

    private static VisitEarnings told(By by, List<VisitContext> all) {
        Map<String, List<VisitContext>> groups = all.stream().collect(Collectors.groupingBy(name(by)));
        List<Row> rows = groups.entrySet().stream().map(group -> row(group.getKey(), group.getValue()))
                .sorted(Comparator.comparing(Row::margin, Comparator.reverseOrder()).thenComparing(Row::name)).toList();
        return new VisitEarnings(rows, row("all", all));
    }

    private static Function<VisitContext, String> name(By by) {
        return switch (by) {
        case VISIT -> hand -> hand.visit().id();
        case CUSTOMER -> hand -> hand.site().customer().name();
        case SITE -> hand -> hand.site().name();
        case TIER -> hand -> hand.terms().tier().orElse("no agreement");
        };
    }

    private static Row row(String name, List<VisitContext> visits) {
        List<PricedVisit> priced = visits.stream().map(hand -> hand.taxed().priced()).toList();
        CurrencyUnit currency = priced.getFirst().currency();
        return Row.of(name, visits.size(), Amounts.sum(priced.stream().map(PricedVisit::net).toList(), currency),
                Amounts.sum(priced.stream().map(PricedVisit::cost).toList(), currency));
    }
}
