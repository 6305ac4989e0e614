package icequill.office.mail;

import icequill.answer.history.Period;
import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.find.PaperFilter;
import icequill.ledger.papers.IssuedPaper;
import icequill.office.care.AskedPeriod;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.life.MailLife;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * About which papers mails are to be written.
 *
 * @param numbers of papers; else all of the days that no mail is about yet
 * @param customer by id; else of all
 */
public record MailScope(List<String> numbers, Optional<String> customer, AskedPeriod period) {

    private static final int MOST = 20_000;

    public MailScope {
        numbers = List.copyOf(numbers);
    }

    /** Numbers of papers, the oldest first; where they are searched for, only those that no mail is about yet. */
    public Validated<List<String>> papers(ShopBook book) {
        return all(book).then(numbers -> isBySearch()
                ? book.read(open -> Validated.valid(numbers.stream()
                        .filter(number -> !leavesOut(MailLife.about(open, number))).toList()))
                : Validated.valid(numbers));
    }

    private boolean isBySearch() {
        return numbers.isEmpty();
    }

    /**
     * Whether a paper is left out that is searched for.
     *
     * @param before the mails about it
     */
    boolean leavesOut(List<MailLife> before) {
        return isBySearch() && !before.isEmpty();
    }

    /** Numbers of papers, the oldest first, whether a mail is about them or not. */
    Validated<List<String>> all(ShopBook book) {
        if (!numbers.isEmpty()) {
            return customer.isPresent() || !period.equals(AskedPeriod.EVER)
                    ? refused("both numbers and a search", "numbers of papers, or --month and --customer")
                    : Validated.valid(numbers);
        }
        return period.equals(AskedPeriod.EVER)
                ? refused("neither numbers nor days", "numbers of papers, or --month, --from or --until")
                : period.period().then(days -> book.read(open -> customer.map(id -> open.entries().customer(id)
                        .map(known -> found(open, days, named(open, id))))
                        .orElseGet(() -> Validated.valid(found(open, days, customer -> true)))));
    }

    /** Whose papers are a customer's: his own, and those of who was merged into him. */
    private static Predicate<Optional<String>> named(Reading open, String customer) {
        Set<String> ids = Stream.concat(Stream.of(customer), open.entries().mergedInto(customer).stream()
                .map(CustomerEntry::id)).collect(Collectors.toSet());
        return whose -> whose.filter(ids::contains).isPresent();
    }

    private static List<String> found(Reading open, Period days, Predicate<Optional<String>> whose) {
        return open.papers().find("", new PaperFilter(days.from(), days.until(), Set.of(), Optional.empty(), Set.of(),
                Set.of()), MOST).reversed().stream()
                .filter(paper -> whose.test(paper.origin().customer())).map(IssuedPaper::number).toList();
    }

    private static <T> Validated<T> refused(String message, String allowed) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, message, allowed));
    }
}
