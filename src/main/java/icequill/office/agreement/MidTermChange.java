package icequill.office.agreement;

import icequill.agreement.Installment;
import icequill.agreement.PlannedVisit;
import icequill.answer.agreement.AgreementChanging;
import icequill.answer.agreement.AgreementChanging.Part;
import icequill.answer.agreement.AgreementChanging.Payment;
import icequill.answer.agreement.Moved;
import icequill.document.ServiceAgreement.Change;
import icequill.ledger.Transaction;
import icequill.ledger.entries.VisitEntry;
import icequill.office.billing.StandingInvoices;
import icequill.office.quoting.NewAgreement;
import icequill.party.Site;
import icequill.plans.AgreementAtSite;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * Changes what an agreement looks after in mid-term, machines or a whole site: the step, and the credit notes of what the payments to come are too few for.
 *
 * @param book all of whose work is that of the transaction
 * @param today the day on which credit notes are dated
 * @param sentences for whoever asks
 */
record MidTermChange(ShopBook book, Transaction open, LocalDate today, Sentences sentences) {

    Validated<AgreementChanging> of(HeldAgreement held, ChangeWish wish) {
        WishedChange wished = new WishedChange(held, open, wish);
        return wished.step().then(step -> {
            open.lifeSteps().add(held.steps().next(step.event(), held.entry().site()));
            return HeldAgreement.of(book, held.request().number(), today)
                    .then(now -> changed(held, now, wished, step.site()));
        });
    }

    private Validated<AgreementChanging> changed(HeldAgreement before, HeldAgreement now, WishedChange wished,
            String site) {
        LocalDate from = wished.wish().from();
        Map<Integer, String> billed = StandingInvoices.byPayment(open, now.request().number());
        Set<Integer> back = now.hand().payments().stream().map(Installment::number)
                .filter(number -> now.hand().givenBack(number).isGreaterThan(before.hand().givenBack(number)))
                .collect(Collectors.toSet());
        Problems problems = new Problems();
        problems.addAll(now.hand().billTo(from).problems());
        twice(before, now, site, from).ifPresent(problems::add);
        back.stream().filter(number -> !billed.containsKey(number)).sorted()
                .forEach(number -> problems.add(Code.WRONG_ORDER, WishedChange.at("from"),
                        "part of installment " + number + " would go back, and it is not billed yet",
                        "that installment billed first: icequill invoice due"));
        return problems.or(() -> back).then(payments -> new OwedCredits(book, now, today, billed)
                .of(payments, "agreed.change-reason", from))
                .map(credits -> new AgreementChanging(now.request().number(), from, moved(now.at(site), from),
                        visits(before, now, site), planned(wished, site), before.yearPrice(), now.yearPrice(),
                        parts(before, now, from), payments(before, now, billed), credits, wished.wish().isTrial()));
    }

    /** That another agreement looks after machines that come in, on their first day or at the end. */
    private Optional<Problem> twice(HeldAgreement before, HeldAgreement now, String id, LocalDate from) {
        AgreementAtSite state = now.at(id);
        Site site = state.setting().whole();
        Set<String> added = new LinkedHashSet<>(state.request().machines(site, from));
        machines(before, id, site, from).forEach(added::remove);
        return Stream.of(from, now.request().scope().term().lastDay()).flatMap(day -> NewAgreement
                .twice(BookForms.shop(book), now.request().number(), added, site, day).stream()).findFirst()
                .map(message -> new Problem(Code.NOT_ALLOWED, WishedChange.at("add"), message,
                        "machines that no agreement looks after, or a change of that one first"));
    }

    private static Set<String> machines(HeldAgreement held, String id, Site site, LocalDate day) {
        return held.request().sites().stream().filter(known -> known.scope().site().equals(id)).findFirst()
                .map(known -> known.machines(site, day)).orElse(Set.of());
    }

    /** What changes on a day at a site; empty where nothing does. */
    private static Optional<Change> on(AgreementAtSite site, LocalDate day) {
        return site.changes().stream().filter(change -> change.price().from().equals(day)).findFirst();
    }

    private static Moved moved(AgreementAtSite site, LocalDate day) {
        List<Change> changes = on(site, day).stream().toList();
        return AgreementTelling.moved(site, day, changes.stream().flatMap(change -> change.added().stream()).toList(),
                changes.stream().flatMap(change -> change.removed().stream()).toList());
    }

    /** Days of the calendar on which a visit is due at a site that comes in, or no more at one that goes out. */
    private static List<LocalDate> visits(HeldAgreement before, HeldAgreement now, String site) {
        List<LocalDate> with = calendar(now, site);
        List<LocalDate> without = calendar(before, site);
        return Stream.concat(with.stream().filter(day -> !without.contains(day)),
                without.stream().filter(day -> !with.contains(day))).toList();
    }

    private static List<LocalDate> calendar(HeldAgreement held, String id) {
        return held.hand().sites().stream().filter(state -> state.request().scope().site().equals(id))
                .flatMap(state -> state.calendar().visits().stream()).map(PlannedVisit::date).toList();
    }

    private static List<String> planned(WishedChange wished, String site) {
        return wished.wish().siteOut().isEmpty()
                ? List.of()
                : wished.visitsFrom(site).filter(VisitEntry::isPlanned).map(VisitEntry::id).toList();
    }

    /** What this change adds, and not one that is known already for its day. */
    private List<Part> parts(HeldAgreement before, HeldAgreement now, LocalDate from) {
        Set<Change> known = before.hand().sites().stream().flatMap(site -> site.changes().stream())
                .collect(Collectors.toSet());
        return now.hand().sites().stream().flatMap(site -> on(site, from).filter(change -> !known.contains(change))
                .map(change -> part(site, change)).stream()).toList();
    }

    private Part part(AgreementAtSite site, Change change) {
        return new Part(site.setting().whole().name(), change.price().amount(),
                sentences.formula(change.price().how().figure()),
                Stream.concat(change.price().how().reasons().stream(), change.minutes().stream()).map(sentences::say)
                        .toList());
    }

    private static List<Payment> payments(HeldAgreement before, HeldAgreement now, Map<Integer, String> billed) {
        Map<Integer, MonetaryAmount> old = before.hand().payments().stream()
                .collect(Collectors.toMap(Installment::number, Installment::amount));
        return now.hand().payments().stream().filter(payment -> !billed.containsKey(payment.number()))
                .map(payment -> new Payment(payment.number(), payment.due(),
                        Optional.ofNullable(old.get(payment.number())), payment.amount()))
                .toList();
    }
}
