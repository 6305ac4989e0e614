package icequill.answer.agreement;

import icequill.answer.Listing;
import icequill.answer.register.RenewalList.Todo;
import icequill.explain.ConstantKey;
import icequill.life.agreement.AgreementStage;
import icequill.money.Amounts;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Agreements of the book as they stand on a day, by number.
 *
 * @param problems of those that could not be worked out
 */
public record AgreementList(LocalDate day, List<Row> agreements, List<Problem> problems) implements Listing {

    private static final List<String> HEAD = List.of("number", "id", "state", "last day", "next installment",
            "next visit", "renewal", "for");

    public AgreementList {
        agreements = List.copyOf(agreements);
        problems = List.copyOf(problems);
    }

    /**
     * One of them.
     *
     * @param site by id, the first of several
     * @param customer by id; missing where the site is not there
     * @param where customer and site, by name
     * @param standing missing where it could not be worked out
     */
    public record Row(String id, String number, String site, Optional<String> customer, String where,
            Optional<Standing> standing) {

        private List<String> cells() {
            return List.of(number, id, standing.map(now -> ConstantKey.words(now.stage().name())).orElse(""),
                    standing.flatMap(Standing::lastDay).map(LocalDate::toString).orElse(""),
                    standing.flatMap(Standing::payment)
                            .map(next -> next.due() + " " + Amounts.plain(next.net())).orElse(""),
                    standing.flatMap(Standing::visit).map(LocalDate::toString).orElse(""),
                    standing.flatMap(Standing::renewal).map(todo -> ConstantKey.words(todo.name())).orElse(""),
                    where);
        }

        private List<String> words() {
            return List.of(number, id, site, customer.orElse(""), where);
        }
    }

    /**
     * How it stands.
     *
     * @param plan its name
     * @param lastDay as far as it is known; missing where it goes on by the month
     * @param payment the next that is not billed; missing where all are
     * @param visit the day of the next of its calendar; missing where none is to come
     * @param renewal what is to be done about it; missing where it does not renew itself
     */
    public record Standing(AgreementStage stage, String plan, MonetaryAmount yearPrice, Optional<LocalDate> lastDay,
            LocalDate refuseUntil, Optional<Next> payment, Optional<LocalDate> visit, Optional<Todo> renewal) {

        public boolean isOver() {
            return switch (stage) {
            case DRAFTED, TO_COME, IN_FORCE, NOTICE_GIVEN -> false;
            case ENDED_BY_TERM, ENDED_BY_NOTICE, ENDED_BY_REFUSAL, ENDED_BY_TRANSFER, RENEWED -> true;
            };
        }
    }

    /**
     * A payment.
     *
     * @param net before tax
     */
    public record Next(int number, LocalDate due, MonetaryAmount net) {}

    /**
     * Only those that hold every word of a text somewhere.
     *
     * @param all whether those that are over stay too
     */
    public AgreementList with(String text, boolean all) {
        return new AgreementList(day, agreements.stream().filter(one -> Listing.holds(one.words(), text))
                .filter(one -> all || one.standing().filter(Standing::isOver).isEmpty()).toList(), problems);
    }

    @Override
    public List<String> head() {
        return HEAD;
    }

    @Override
    public List<List<String>> rows() {
        return agreements.stream().map(Row::cells).toList();
    }
}
