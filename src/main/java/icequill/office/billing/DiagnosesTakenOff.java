package icequill.office.billing;

import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
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
        Optional<String> givenBack = givenBack(open, named.visit());
        if (givenBack.isPresent()) {
            return List.of(new Problem(Code.NOT_ALLOWED, named.place(),
                    "what the diagnosis \"" + named.visit() + "\" charged was given back: " + givenBack.get(),
                    "a diagnosis whose invoice stands, or is to come"));
        }
        Optional<VisitEntry> other = open.entries().visitsAt(repair.site()).stream()
                .filter(entry -> !entry.isPlanned() && !entry.isForgotten() && !entry.id().equals(repair.id()))
                .filter(entry -> open.entries().withdrawal(entry.id()).isEmpty())
                .filter(entry -> BookForms.form(entry).text(KEY).filter(named.visit()::equals).isPresent()).findFirst();
        return other.map(entry -> List.of(new Problem(Code.ALREADY_EXISTS, named.place(),
                "the diagnosis \"" + named.visit() + "\" is taken off visit \"" + entry.id() + "\" already",
                "each once"))).orElse(List.of());
    }

    /** The invoice of a visit all of whose invoices were given back. */
    private static Optional<String> givenBack(Reading open, String visit) {
        return StandingInvoices.visit(open, visit).isPresent()
                ? Optional.empty()
                : open.papers().ofVisit(visit).stream().filter(paper -> paper.series().kind() == PaperKind.INVOICE)
                        .map(IssuedPaper::number).reduce((earlier, later) -> later);
    }

    /** The visit, unless its diagnosis is not to be taken off it any more. */
    static Validated<Visit> standing(Reading open, Visit repair) {
        Problems problems = new Problems();
        problems.addAll(problems(open, repair));
        return problems.or(() -> repair);
    }
}
