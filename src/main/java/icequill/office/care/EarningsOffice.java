package icequill.office.care;

import icequill.account.Way;
import icequill.answer.history.VisitEarnings;
import icequill.answer.history.VisitEarnings.Row;
import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.money.Amounts;
import icequill.office.billing.CreditOffice;
import icequill.office.register.RegisterOffice;
import icequill.papers.BilledVisit;
import icequill.pricer.PricedLine;
import icequill.pricer.PricedVisit;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.CardCost;
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
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** The owner's look at what visits earned. */
public final class EarningsOffice {

    private final ShopBook book;

    private EarningsOffice(ShopBook book) {
        this.book = book;
    }

    public static EarningsOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static EarningsOffice of(ShopBook book) {
        return new EarningsOffice(book);
    }

    /** What rows are made of. */
    public enum By {
        VISIT, CUSTOMER, SITE,
        /** The plan of the agreement that a visit fell under. */
        TIER
    }

    /** A visit by the rates and costs of its day, and what is left of what it was billed at; empty where it is not billed. */
    private record Earned(VisitContext hand, Optional<BilledVisit> bill, MonetaryAmount cards) {

        Optional<List<MonetaryAmount>> billed() {
            return bill.map(BilledVisit::nets);
        }

        MonetaryAmount cost() {
            return priced().cost().add(cards);
        }

        MonetaryAmount net() {
            return billed().map(nets -> Amounts.sum(nets, priced().currency())).orElseGet(priced()::net);
        }

        /** By line, where the bill has the lines that the visit has today. */
        MonetaryAmount withoutCost() {
            List<PricedLine> done = priced().lines().stream().filter(line -> line.outcome().isDone()).toList();
            return billed().filter(nets -> nets.size() == done.size())
                    .map(nets -> Amounts.sum(IntStream.range(0, done.size())
                            .filter(i -> !done.get(i).cost().isKnown()).mapToObj(nets::get).toList(),
                            priced().currency()))
                    .orElseGet(priced()::withoutCost);
        }

        PricedVisit priced() {
            return hand.taxed().priced();
        }
    }

    /**
     * What the visits of a period brought in, and what they cost by the rates of their days, the row that earned most first.
     *
     * @param site by id, where those of one are asked for
     */
    public Validated<VisitEarnings> of(By by, AskedPeriod period, Optional<String> site) {
        return site.<Validated<?>>map(id -> book.read(open -> RegisterOffice.found(open, id)))
                .orElseGet(() -> Validated.valid(true)).then(known -> new DoneVisits(book).of(period, site))
                .then(this::priced).then(this::earned).map(all -> told(by, all));
    }

    private Validated<List<VisitContext>> priced(List<VisitEntry> entries) {
        VisitLoader loader = new VisitLoader(BookForms.shop(book));
        Problems problems = new Problems();
        List<VisitContext> all = new ArrayList<>();
        entries.forEach(entry -> loader.read(BookForms.form(entry), problems).ifPresent(all::add));
        problems.addAll(loader.folder().problems());
        return problems.or(() -> all);
    }

    private Validated<List<Earned>> earned(List<VisitContext> all) {
        return book.read(open -> {
            Problems problems = new Problems();
            Map<String, List<IssuedPaper>> papers = open.papers()
                    .ofVisits(all.stream().map(hand -> hand.visit().id()).toList());
            List<Earned> earned = all.stream().map(hand -> earned(open, hand,
                    billed(open, hand.visit().id(), papers.getOrDefault(hand.visit().id(), List.of()), problems)))
                    .toList();
            return problems.or(() -> earned);
        });
    }

    /** An invoice that was given back in whole counts for nothing beside the one that was issued in its place. */
    private static Optional<BilledVisit> billed(Reading open, String visit, List<IssuedPaper> papers,
            Problems problems) {
        List<IssuedPaper> invoices = papers.stream().filter(paper -> paper.series().kind() == PaperKind.INVOICE)
                .toList();
        return invoices.stream().reduce((earlier, later) -> later)
                .flatMap(newest -> problems.take(CreditOffice.billed(open, newest, visit)));
    }

    /** With what it cost to be paid by card, where it was. */
    private static Earned earned(Reading open, VisitContext hand, Optional<BilledVisit> bill) {
        CurrencyUnit currency = hand.taxed().priced().currency();
        List<MonetaryAmount> cards = hand.rates().adjustments().cardCost().stream()
                .flatMap(cost -> bill.stream().flatMap(billed -> byCard(open, billed, cost))).toList();
        return new Earned(hand, bill, Amounts.sum(cards, currency));
    }

    private static Stream<MonetaryAmount> byCard(Reading open, BilledVisit billed, CardCost cost) {
        String number = billed.invoice().number().orElseThrow();
        return open.accounts().paymentsOf(number).stream()
                .filter(payment -> payment.way().equals(Way.CARD.name()) && !payment.isBack())
                .flatMap(payment -> payment.shares().stream().filter(share -> share.bill().equals(number))
                        .map(share -> billed.cardCost(cost, payment.amount(), share.amount())));
    }

    private static VisitEarnings told(By by, List<Earned> all) {
        Map<Optional<String>, List<Earned>> groups = all.stream()
                .collect(Collectors.groupingBy(each -> id(by, each.hand())));
        List<Row> rows = groups.entrySet().stream()
                .map(group -> row(group.getKey(), name(by, group.getValue().getFirst().hand()), group.getValue()))
                .sorted(Comparator.comparing(Row::margin, Comparator.reverseOrder()).thenComparing(Row::name)
                        .thenComparing(row -> row.id().orElse("")))
                .toList();
        return new VisitEarnings(rows, row(Optional.empty(), "all", all));
    }

    private static Optional<String> id(By by, VisitContext hand) {
        return switch (by) {
        case VISIT -> Optional.of(hand.visit().id());
        case CUSTOMER -> hand.site().accounts().stream().findFirst();
        case SITE -> Optional.of(hand.site().id());
        case TIER -> hand.terms().tier();
        };
    }

    private static String name(By by, VisitContext hand) {
        return switch (by) {
        case VISIT -> hand.visit().id();
        case CUSTOMER -> hand.site().customer().name();
        case SITE -> hand.site().name();
        case TIER -> hand.terms().tier().orElse("no agreement");
        };
    }

    private static Row row(Optional<String> id, String name, List<Earned> visits) {
        CurrencyUnit currency = visits.getFirst().priced().currency();
        return Row.of(id, name, visits.size(), Amounts.sum(visits.stream().map(Earned::net).toList(), currency),
                Amounts.sum(visits.stream().map(Earned::cost).toList(), currency),
                Amounts.sum(visits.stream().map(Earned::withoutCost).toList(), currency));
    }
}
