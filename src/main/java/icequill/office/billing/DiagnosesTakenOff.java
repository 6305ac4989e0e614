package icequill.office.billing;

import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.shop.BookForms;
import icequill.work.Diagnosis;
import icequill.work.Visit;
import java.util.List;
import java.util.Optional;

/** Sees to it that a diagnosis stands, and is taken off one repair only. */
final class DiagnosesTakenOff {

    private static final String KEY = "diagnosis";

    private DiagnosesTakenOff() {
    }

    /** What keeps the diagnosis that a visit names from being taken off it; nothing where it names none. */
    static List<Problem> problems(Reading open, Visit repair) {
        return repair.terms().diagnosis().map(named -> problems(open, repair, named)).orElse(List.of());
    }

    private static List<Problem> problems(Reading open, Visit repair, Diagnosis named) {
        if (open.entries().withdrawal(named.visit()).isPresent()) {
            return List.of(new Problem(Code.NOT_ALLOWED, named.place(),
                    "visit \"" + named.visit() + "\" was withdrawn", "a visit that stands"));
        }
        Optional<VisitEntry> other = open.entries().visitsAt(repair.site()).stream()
                .filter(entry -> !entry.isPlanned() && !entry.isForgotten() && !entry.id().equals(repair.id()))
                .filter(entry -> open.entries().withdrawal(entry.id()).isEmpty())
                .filter(entry -> BookForms.form(entry).text(KEY).filter(named.visit()::equals).isPresent()).findFirst();
        return other.map(entry -> List.of(new Problem(Code.ALREADY_EXISTS, named.place(),
                "the diagnosis \"" + named.visit() + "\" is taken off visit \"" + entry.id() + "\" already",
                "each once"))).orElse(List.of());
    }
}
