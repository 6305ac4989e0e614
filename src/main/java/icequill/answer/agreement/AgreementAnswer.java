package icequill.answer.agreement;

import icequill.agreement.GoingOn;
import icequill.life.agreement.AgreementStage;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * An agreement as it stands on a day.
 *
 * @param agreement its number
 * @param id of it in the book
 * @param site by id, the first of several
 * @param tier by id
 * @param plan its name
 * @param lastDay as far as it is known; missing where it goes on by the month
 * @param refuseUntil the last day on which the customer may say that it is not to go on
 * @param cancelDays of notice within the term
 * @param yearPrice before tax, after all changes
 * @param sites each with the machines that are looked after on that day
 * @param steps what happened to it, in order
 * @param papers that were issued for it, by number
 */
public record AgreementAnswer(String agreement, String id, AgreementStage stage, String site, String siteName,
        String customer, String customerName, String tier, String plan, LocalDate from, LocalDate until, GoingOn goesOn,
        Optional<LocalDate> lastDay, LocalDate refuseUntil, int cancelDays, Optional<String> purchaseOrder,
        MonetaryAmount yearPrice, List<OfSite> sites, List<Payment> payments, List<DueVisit> visits,
        List<AgreementChange> changes, List<AgreementStep> steps, List<String> papers) {

    public AgreementAnswer {
        sites = List.copyOf(sites);
        payments = List.copyOf(payments);
        visits = List.copyOf(visits);
        changes = List.copyOf(changes);
        steps = List.copyOf(steps);
        papers = List.copyOf(papers);
    }

    /** Whether somebody may still end it. */
    public boolean canEnd() {
        return stage == AgreementStage.TO_COME || stage == AgreementStage.IN_FORCE;
    }

    /** Whether something may still be billed by it, so that it may have another purchase order. */
    public boolean canOrder() {
        return canEnd() || stage == AgreementStage.NOTICE_GIVEN;
    }

    /**
     * One of its sites.
     *
     * @param from on which it comes in, in mid-term; missing where it is in from the beginning
     * @param until its last day, where it goes out in mid-term
     * @param machines that are looked after, by id
     * @param all machines that stand there
     * @param calls that are included there; missing where none are
     */
    public record OfSite(String site, String name, Optional<LocalDate> from, Optional<LocalDate> until,
            List<String> machines, List<KnownMachine> all, Optional<Calls> calls) {
        public OfSite {
            machines = List.copyOf(machines);
            all = List.copyOf(all);
        }
    }

    /**
     * Calls that are included in a year of the term.
     *
     * @param from the first day of that year
     * @param used the visits that used one, by id, in the order in which they began
     * @param left no less than none
     */
    public record Calls(int included, LocalDate from, LocalDate until, List<String> used, int left) {
        public Calls {
            used = List.copyOf(used);
        }
    }

    /**
     * A machine at one of its sites.
     *
     * @param machine by id
     * @param where it stands
     * @param agreed whether it is looked after by all changes that are known, those to come among them
     */
    public record KnownMachine(String machine, String where, boolean agreed) {}

    /**
     * One of its payments.
     *
     * @param net before tax
     * @param givenBack of it, before tax, by changes and the end; no less than zero
     * @param invoice that stands; missing where it is not billed
     */
    public record Payment(int number, LocalDate due, MonetaryAmount net, MonetaryAmount givenBack,
            Optional<String> invoice) {}

    /**
     * A visit of its calendar.
     *
     * @param done the visit that was it, by id; missing where none was
     * @param late whether its day is over and no visit was it
     */
    public record DueVisit(LocalDate day, String site, String scope, Optional<String> done, boolean late) {}

    /**
     * Machines, or a whole site, that came in or went out in mid-term; where another discount came of that elsewhere, none.
     *
     * @param price before tax, for the rest of the term; negative where it fell
     * @param how it was figured
     */
    public record AgreementChange(LocalDate from, Moved moved, MonetaryAmount price, String how) {}

    /**
     * Something that happened to it.
     *
     * @param told in the reader's language
     * @param words as the office wrote them
     */
    public record AgreementStep(LocalDate day, String told, Optional<String> words) {}
}
