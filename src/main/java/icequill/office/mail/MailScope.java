package icequill.office.mail;

import icequill.answer.history.Period;
import icequill.ledger.Reading;
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

    /** Numbers of papers, the oldest first. */
    public Validated<List<String>> papers(ShopBook book) {
        boolean isBySearch = customer.isPresent() || !period.equals(AskedPeriod.EVER);
        if (!numbers.isEmpty()) {
            return isBySearch
                    ? refused("both numbers and a search", "numbers of papers, or --month and --customer")
                    : Validated.valid(numbers);
        }
        return period.equals(AskedPeriod.EVER)
                ? refused("neither numbers nor days", "numbers of papers, or --month, --from or --until")
                : period.period().then(days -> book.read(open -> customer.map(id -> open.entries().customer(id)
                        .map(known -> found(open, days))).orElseGet(() -> Validated.valid(found(open, days)))));
    }

    private List<String> found(Reading open, Period days) {
        return open.papers().find("", new PaperFilter(days.from(), days.until(), Set.of(), Optional.empty(), Set.of(),
                Set.of()), MOST).reversed().stream()
                .filter(paper -> customer.isEmpty() || customer.equals(paper.origin().customer()))
                .map(IssuedPaper::number).filter(number -> MailLife.about(open, number).isEmpty()).toList();
    }

    private static <T> Validated<T> refused(String message, String allowed) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, message, allowed));
    }
}
