package icequill.office.claim;

import icequill.answer.claim.ClaimList;
import icequill.answer.claim.ClaimSheet;
import icequill.explain.Phrase;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.life.claim.ClaimEvent;
import icequill.life.claim.ClaimState;
import icequill.life.claim.ClaimTerms;
import icequill.money.Amounts;
import icequill.pricer.PricedLine;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.WarrantyPayer;
import icequill.render.words.Sentences;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.VisitLoader;
import icequill.shop.life.ClaimLife;
import icequill.visits.ClaimedWork;
import icequill.visits.VisitContext;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/** The office that claims from makers and their agents what their warranties pay. */
public final class ClaimOffice {

    private static final Place DAY = new Place("", 0, "day");

    private final ShopBook book;
    private final LocalDate today;

    private ClaimOffice(ShopBook book) {
        this.book = book;
        this.today = ShopDay.today(book.folder(), book.clock());
    }

    public static ClaimOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static ClaimOffice of(ShopBook book) {
        return new ClaimOffice(book);
    }

    /**
     * Claims, those first of which something is to be done first.
     *
     * @param isAll those too that are over
     */
    public Validated<ClaimList> claims(boolean isAll) {
        return book.read(open -> Validated.valid(new ClaimList(waiting(open, today, isAll), unclaimed(open))));
    }

    /** Claims of a book as they are on a day. */
    public static List<ClaimSheet> waiting(Reading open, LocalDate day, boolean isAll) {
        return ClaimLife.all(open).stream().map(life -> sheet(open, life, day))
                .filter(claim -> isAll || !claim.isOver())
                .sorted(Comparator.comparing((ClaimSheet claim) -> claim.next().orElse(LocalDate.MAX))
                        .thenComparing(ClaimSheet::claim))
                .toList();
    }

    private static List<String> unclaimed(Reading open) {
        Set<String> claimed = ClaimLife.all(open).stream().map(life -> life.state().terms().visit())
                .collect(Collectors.toSet());
        Set<String> gone = open.entries().withdrawals().keySet();
        return open.entries().visits().stream().filter(ClaimLife::isFor)
                .map(VisitEntry::id).filter(id -> !claimed.contains(id) && !gone.contains(id)).sorted().toList();
    }

    /** Where one stands. */
    public Validated<ClaimSheet> claim(String id) {
        return book.read(open -> ClaimLife.of(open, id).map(life -> sheet(open, life, today)));
    }

    /** Notes that the work which a visit did under a warranty is to be claimed, one claim for each payer. */
    public Validated<ClaimList> note(String visit, LocalDate day) {
        BookForms forms = new BookForms(book);
        return ShopDay.notAhead(day, today, DAY)
                .then(valid -> new VisitLoader(forms.shop()).of(new FormName.InBook(visit)))
                .then(hand -> book.write(open -> forms.unchanged(open, () -> noted(open, hand, day))));
    }

    private Validated<ClaimList> noted(Transaction open, VisitContext hand, LocalDate day) {
        String visit = hand.visit().id();
        List<ClaimedWork> works = ClaimedWork.of(hand);
        Problems problems = new Problems();
        problems.take(open.entries().visit(visit)).filter(VisitEntry::isPlanned).ifPresent(planned -> problems.add(
                Code.NOT_ALLOWED, Place.NOWHERE, "visit \"" + visit + "\" is not done", "a visit that was done"));
        if (works.isEmpty()) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE, "visit \"" + visit + "\" did nothing under a warranty",
                    "a visit with a line of that outcome");
        }
        if (ClaimLife.of(open, visit).found().isPresent()) {
            problems.add(Code.ALREADY_EXISTS, Place.NOWHERE, "visit \"" + visit + "\" is claimed already",
                    "its claim: icequill claim show " + visit);
        }
        if (day.isBefore(hand.visit().day())) {
            problems.add(Code.WRONG_ORDER, DAY, day + " is before " + hand.visit().day() + ", the day of the visit",
                    "that day or a later one");
        }
        return problems.or(() -> works).map(valid -> {
            List<ClaimSheet> claims = new ArrayList<>();
            for (int i = 0; i < valid.size(); i++) {
                String id = i == 0 ? visit : visit + "-" + (i + 1);
                open.lifeSteps().add(ClaimLife.begun(id, hand.site().id(), terms(hand, valid.get(i)), day));
                claims.add(sheet(open, ClaimLife.of(open, id).orElseThrow(), today));
            }
            return new ClaimList(claims, List.of());
        });
    }

    private static ClaimTerms terms(VisitContext hand, ClaimedWork work) {
        Sentences sentences = Sentences.of(hand.shop().language(), hand.shop().address().country());
        Function<Phrase, String> said = sentences::say;
        LocalDate day = hand.visit().day();
        return new ClaimTerms(hand.visit().id(), work.payer(),
                work.lines().stream().map(PricedLine::text).map(said).distinct().collect(Collectors.joining("; ")),
                work.listed(), work.allowed().amount(work.currency()),
                sentences.how(work.allowed(), work.allowed().amount(work.currency())),
                work.rule().map(rule -> day.plusDays(rule.sendDays())),
                work.rule().flatMap(WarrantyPayer::returnDays).map(day::plusDays));
    }

    /** Notes what happened to a claim. */
    public Validated<ClaimSheet> step(String id, ClaimEvent event) {
        Problems problems = new Problems();
        problems.take(ShopDay.notAhead(event.day(), today, DAY));
        if (event instanceof ClaimEvent.Denial no && no.reason().isBlank()) {
            problems.add(Code.MISSING, new Place("", 0, "reason"), "no reason is given",
                    "a reason, which the book keeps");
        }
        if (event instanceof ClaimEvent.Settlement paid && !paid.amount().isPositive()) {
            problems.add(Code.OUT_OF_RANGE, new Place("", 0, "amount"), "nothing was paid",
                    "an amount above zero; else that it was refused");
        }
        return problems.or(() -> id).then(valid -> book.write(open -> ClaimLife.of(open, id)
                .then(life -> ClaimState.step(life.state(), event).then(after -> {
                    open.lifeSteps().add(life.next(event));
                    return ClaimLife.of(open, id);
                })).map(life -> sheet(open, life, today))));
    }

    private static ClaimSheet sheet(Reading open, ClaimLife life, LocalDate day) {
        return ClaimSheet.of(life, life.site().flatMap(id -> open.entries().siteNow(id).found()).map(SiteEntry::name)
                .orElse(""), day);
    }

    /**
     * Notes that money came in for a claim.
     *
     * @param amount in the currency of the claim
     */
    public Validated<ClaimSheet> paid(String id, LocalDate day, BigDecimal amount) {
        return claim(id).then(claim -> {
            MonetaryAmount paid = Amounts.of(amount, claim.listed().getCurrency());
            return Amounts.isWhole(paid)
                    ? step(id, new ClaimEvent.Settlement(day, paid))
                    : Validated.invalid(new Problem(Code.OUT_OF_RANGE, new Place("", 0, "amount"),
                            amount.toPlainString() + " has more decimals than the currency", "an amount in full"));
        });
    }
}
