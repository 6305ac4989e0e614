package icequill.office.billing;

import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.request.AgreementRequest;
import icequill.shop.BookForms;
import icequill.shop.steps.AgreementSteps;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/** The visits that may be those of an agreement's calendar. */
public final class SlotVisits {

    private SlotVisits() {
    }

    /**
     * Those that were done at one of its sites without being asked for, from a month before the term on, or from the day on which the site
     * came in, and none after its end, or the last day of the site, or of a term that it was renewed from or for.
     */
    public static List<VisitEntry> done(Reading open, AgreementRequest site) {
        Set<String> calls = open.entries().calls().keySet();
        Set<String> withdrawn = open.entries().withdrawals().keySet();
        LocalDate first = site.firstVisitDay();
        AgreementSteps steps = BookForms.steps(open, site.number());
        return open.entries().visitsAt(site.scope().site()).stream()
                .filter(visit -> !visit.isPlanned() && !calls.contains(visit.id()) && !withdrawn.contains(visit.id()))
                .filter(visit -> !visit.began().toLocalDate().isBefore(first))
                .filter(visit -> !isOver(site, visit.began().toLocalDate()))
                .filter(visit -> steps.mayHave(site.scope().site(), visit.began().toLocalDate())).toList();
    }

    private static boolean isOver(AgreementRequest agreement, LocalDate day) {
        return agreement.isPastEnd(day) || agreement.lastDayHere().filter(day::isAfter).isPresent()
                || day.isAfter(agreement.termUntil(day).lastDay());
    }
}
