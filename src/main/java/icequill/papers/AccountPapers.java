package icequill.papers;

import icequill.account.Ageing;
import icequill.account.Claims;
import icequill.account.LateTerms;
import icequill.account.Movement;
import icequill.document.Reminder;
import icequill.document.Statement;
import icequill.money.Amounts;
import icequill.party.Language;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Puts the papers together that are about an account: statement and reminder. Both bear the day of its standing. */
public record AccountPapers(AccountSnapshot hand, Language language) {

    /** A statement lists movements of about a quarter, unless another day is asked for (invented for the demo). */
    private static final int DAYS_LISTED = 90;

    /**
     * What the customer owes, with what led to it.
     *
     * @param from the first day whose movements are listed; empty for the usual one
     */
    public Statement statement(Optional<LocalDate> from) {
        LocalDate day = hand.standing().day();
        LocalDate since = from.orElseGet(() -> day.minusDays(DAYS_LISTED));
        List<Movement> before = hand.standing().movements().stream()
                .filter(movement -> movement.date().isBefore(since)).toList();
        List<Movement> listed = hand.standing().movements().subList(before.size(),
                hand.standing().movements().size());
        MonetaryAmount broughtForward = Amounts.sum(before.stream().map(Movement::amount).toList(),
                hand.shop().currency());
        return new Statement(day, hand.shop(), language, hand.shop().paper(), hand.billTo(), hand.vendorNumber(),
                hand.standing().owed(), hand.standing().credits(),
                Ageing.of(hand.standing().owed(), Ageing.USUAL, hand.shop().currency()), hand.standing().balance(),
                since, broughtForward, lines(broughtForward, listed), hand.standing().later());
    }

    private static List<Statement.Line> lines(MonetaryAmount broughtForward, List<Movement> movements) {
        List<Statement.Line> lines = new ArrayList<>();
        MonetaryAmount balance = broughtForward;
        for (Movement movement : movements) {
            balance = balance.add(movement.amount());
            lines.add(new Statement.Line(movement, balance));
        }
        return lines;
    }

    /** The reminder, or that there is nothing to remind of. */
    public Validated<Reminder> reminder(Reminder.Level level) {
        LocalDate day = hand.standing().day();
        Optional<LateTerms> terms = hand.terms().late().filter(late -> level.number() >= late.fromLevel());
        Claims claims = Claims.of(hand.standing(), terms);
        if (claims.asked().isZero()) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED,
                    Place.NOWHERE,
                    "nothing of " + hand.customer() + " is past due on " + day + " that may be asked for",
                    "a reminder when an invoice is past due that is neither disputed nor covered by a credit"));
        }
        return Validated.valid(new Reminder(day, hand.shop(), language, hand.shop().paper(), hand.billTo(),
                hand.vendorNumber(), level, hand.reminded().stream().filter(day::isAfter).sorted().toList(),
                day.plusDays(hand.terms().payWithin()), claims,
                terms.filter(late -> claims.onTop().isPositive())
                        .map(late -> new Reminder.Late(late.rate(), late.basis())),
                new Reminder.Contact(hand.terms().contact(), hand.terms().phone().orElse(hand.shop().phone())),
                hand.standing().later()));
    }
}
