package icequill.office.agreement;

import icequill.ledger.Reading;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.life.agreement.AgreementEvent;
import icequill.life.agreement.AgreementEvent.Changed;
import icequill.life.agreement.AgreementEvent.SiteIn;
import icequill.life.agreement.AgreementEvent.SiteOut;
import icequill.life.agreement.AgreementState;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import icequill.request.PlanScope;
import icequill.shop.BookForms;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What somebody wants to change of an agreement in mid-term, as the step that it is, or all that is in the way.
 *
 * @param held as it is without it
 */
record WishedChange(HeldAgreement held, Reading open, ChangeWish wish) {

    /** The step, and at which site it is. */
    record Step(AgreementEvent event, String site) {}

    Validated<Step> step() {
        Problems problems = new Problems();
        Optional<Step> step = wish.siteIn().map(site -> coming(site, problems))
                .orElseGet(() -> wish.siteOut().map(site -> going(site, problems)).orElseGet(() -> machines(problems)));
        step.ifPresent(found -> problems.take(AgreementState.step(held.steps().state(), found.event(), held.terms())));
        return problems.or(step::orElseThrow);
    }

    private Optional<Step> coming(String site, Problems problems) {
        if (wish.site().isPresent() || wish.siteOut().isPresent() || !wish.removed().isEmpty()) {
            problems.add(Code.NOT_ALLOWED, at("addSite"), "more than a site that comes in and its machines",
                    "one site a step, with those of its machines that are looked after");
        }
        Optional<SiteEntry> entry = open.entries().siteNow(site).found();
        if (entry.isEmpty()) {
            problems.add(Problem.unknownName(at("addSite"), "site of this customer", site,
                    new CustomerSites(held, open).all().stream().map(SiteEntry::id).toList()));
            return Optional.empty();
        }
        String owner = BookForms.owner(open, entry.get(), wish.from());
        if (!owner.equals(held.owner(open))) {
            problems.add(Code.NOT_ALLOWED, at("addSite"), entry.get().id() + " belongs to " + owner + " on "
                    + wish.from(), "a site of " + held.owner(open));
        }
        List<String> all = open.entries().machinesOf(entry.get().id()).stream().map(MachineEntry::id).toList();
        if (all.isEmpty()) {
            problems.add(Code.MISSING, at("addSite"), "no machine is known at " + entry.get().id(),
                    "its machines first: icequill machine add");
        }
        wish.added().stream().filter(machine -> !all.contains(machine))
                .forEach(machine -> problems.add(Problem.unknownName(at("add"), "machine", machine, all)));
        return Optional.of(new Step(new SiteIn(wish.day(), wish.from(), entry.get().id(), wish.added(), wish.who(),
                wish.words()), entry.get().id()));
    }

    private Optional<Step> going(String site, Problems problems) {
        if (wish.site().isPresent() || !wish.added().isEmpty() || !wish.removed().isEmpty()) {
            problems.add(Code.NOT_ALLOWED, at("removeSite"), "a site goes out with all of its machines",
                    "the site alone");
        }
        return part(site, "removeSite", problems).map(found -> {
            visitsFrom(found).filter(visit -> !visit.isPlanned()).findFirst()
                    .ifPresent(visit -> problems.add(Code.WRONG_ORDER, at("from"),
                            "visit " + visit.id() + " was done there on " + visit.began().toLocalDate(),
                            "a day after the last visit that was done by the agreement"));
            return new Step(new SiteOut(wish.day(), wish.from(), found, wish.who(), wish.words()), found);
        });
    }

    /** What stands in the book of a site from the first day of the change on. */
    Stream<VisitEntry> visitsFrom(String site) {
        return open.entries().visitsAt(site).stream()
                .filter(visit -> !visit.began().toLocalDate().isBefore(wish.from()))
                .filter(visit -> open.entries().withdrawal(visit.id()).isEmpty());
    }

    private Optional<Step> machines(Problems problems) {
        List<String> all = sites();
        if (wish.site().isEmpty() && all.size() > 1) {
            problems.add(Code.MISSING, at("site"), "the agreement is for several sites", Problem.oneOf("", all));
            return Optional.empty();
        }
        return part(wish.site().orElse(all.getFirst()), "site", problems).map(site -> {
            held.request().sites().stream().filter(known -> known.scope().site().equals(site))
                    .filter(known -> !known.isHere(wish.from())).findFirst()
                    .ifPresent(known -> problems.add(Code.OUT_OF_RANGE, at("from"),
                            "the site is no part of the agreement on " + wish.from(), "a day on which it is"));
            return new Step(new Changed(wish.day(), wish.from(), site, wish.added(), wish.removed(), wish.who(),
                    wish.words()), site);
        });
    }

    /** One of the sites that the agreement is for. */
    private Optional<String> part(String site, String field, Problems problems) {
        Optional<String> found = sites().stream().filter(site::equals).findFirst();
        if (found.isEmpty()) {
            problems.add(Problem.unknownName(at(field), "site of this agreement", site, sites()));
        }
        return found;
    }

    private List<String> sites() {
        return held.request().sites().stream().map(AgreementRequest::scope).map(PlanScope::site).toList();
    }

    static Place at(String field) {
        return new Place("", 0, field);
    }
}
