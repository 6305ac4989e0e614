package icequill.office.days;

import icequill.agreement.Invoiced;
import icequill.days.Attended;
import icequill.days.DueVisit;
import icequill.ledger.entries.AgreementEntry;
import icequill.plans.AgreementAtSite;
import icequill.plans.WholeAgreement;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.shop.steps.AgreementSteps;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What agreements ask for.
 *
 * @param visits due up to a day, whatever became of them
 * @param cared sites that an agreement is for, by id
 * @param problems of agreements that could not be worked out
 */
record DueCare(List<DueVisit> visits, Set<String> cared, List<Problem> problems) {

    /** An agreement, and what happened to it. */
    private record Known(AgreementEntry entry, AgreementSteps steps) {

        /** Visits to a site that may be its own. */
        List<Attended> own(String site, AttendedVisits attended) {
            return attended.at(site).stream().filter(visit -> steps.mayHave(site, visit.day())).toList();
        }
    }

    /** Of all agreements of the book. */
    static Validated<DueCare> of(ShopBook book, AttendedVisits attended, LocalDate day, LocalDate until) {
        return book.read(open -> Validated.valid(
                open.entries().agreements().stream().filter(entry -> !entry.isForgotten())
                        .map(entry -> new Known(entry, BookForms.steps(open, entry.number()))).toList()))
                .map(all -> {
                    Problems problems = new Problems();
                    List<DueVisit> visits = new ArrayList<>();
                    Set<String> cared = new HashSet<>();
                    all.forEach(known -> states(book, known.entry(), until, problems).forEach(state -> {
                        String site = state.setting().whole().id();
                        if (state.request().isInForce(day) || state.request().isInForce(until)) {
                            cared.add(site);
                        }
                        visits.addAll(DueVisit.of(state, known.own(site, attended), day, until));
                    }));
                    return new DueCare(visits, cared, problems.list());
                });
    }

    private static List<AgreementAtSite> states(ShopBook book, AgreementEntry entry, LocalDate until,
            Problems problems) {
        Validated<WholeAgreement> read = new AgreementLoader(BookForms.shop(book),
                (request, site) -> Validated.valid(Invoiced.NOTHING)).of(new FormName.InBook(entry.id()), until);
        read.problems().stream()
                .map(problem -> new Problem(problem.code(), new Place(entry.number(), 0, problem.place().path()),
                        problem.message(), problem.allowed()))
                .forEach(problems::add);
        return read.found().map(WholeAgreement::sites).orElse(List.of());
    }
}
