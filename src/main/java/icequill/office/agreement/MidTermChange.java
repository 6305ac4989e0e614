package icequill.office.agreement;

import icequill.agreement.Installment;
import icequill.answer.agreement.AgreementChanging;
import icequill.answer.agreement.AgreementChanging.Part;
import icequill.answer.agreement.AgreementChanging.Payment;
import icequill.document.ServiceAgreement.Change;
import icequill.ledger.Transaction;
import icequill.life.agreement.AgreementEvent.Changed;
import icequill.life.agreement.AgreementState;
import icequill.office.billing.StandingInvoices;
import icequill.office.quoting.NewAgreement;
import icequill.plans.AgreementAtSite;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.request.AgreementRequest;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * Changes the machines of an agreement in mid-term: the step, and the credit notes of what the payments to come are too few for.
 *
 * @param book all of whose work is that of the transaction
 * @param today the day on which credit notes are dated
 * @param sentences for whoever asks
 */
record MidTermChange(ShopBook book, Transaction open, LocalDate today, Sentences sentences) {

    Validated<AgreementChanging> of(HeldAgreement held, ChangeWish wish) {
        return site(held.request(), wish).then(site -> {
            Changed change = new Changed(wish.day(), wish.from(), site.scope().site(), wish.added(), wish.removed(),
                    wish.who(), wish.words());
            return AgreementState.step(held.steps().state(), change, held.terms()).then(after -> {
                open.lifeSteps().add(held.steps().next(change, held.entry().site()));
                return HeldAgreement.of(book, held.request().number(), today);
            }).then(now -> changed(held, now, change, wish.isTrial()));
        });
    }

    /** The site that is meant, which must be part of the agreement on the day. */
    private static Validated<AgreementRequest> site(AgreementRequest request, ChangeWish wish) {
        List<String> all = request.sites().stream().map(site -> site.scope().site()).toList();
        if (wish.site().isEmpty() && all.size() > 1) {
            return Validated.invalid(new Problem(Code.MISSING, at("site"), "the agreement is for several sites",
                    Problem.oneOf("", all)));
        }
        String wanted = wish.site().orElse(all.getFirst());
        return request.sites().stream().filter(site -> site.scope().site().equals(wanted)).findFirst()
                .map(site -> within(site, wish.from()))
                .orElseGet(() -> Validated.invalid(
                        Problem.unknownName(at("site"), "site of this agreement", wanted, all)));
    }

    private static Validated<AgreementRequest> within(AgreementRequest site, LocalDate from) {
        return site.part().filter(part -> !part.contains(from)).isPresent()
                ? Validated.invalid(new Problem(Code.OUT_OF_RANGE, at("from"),
                        "the site is no part of the agreement on " + from, "a day on which it is"))
                : Validated.valid(site);
    }

    private Validated<AgreementChanging> changed(HeldAgreement before, HeldAgreement now, Changed change,
            boolean isTrial) {
        Map<Integer, String> billed = StandingInvoices.byPayment(open, now.request().number());
        Set<Integer> back = now.hand().payments().stream().map(Installment::number)
                .filter(number -> now.hand().givenBack(number).isGreaterThan(before.hand().givenBack(number)))
                .collect(Collectors.toSet());
        Problems problems = new Problems();
        Stream.of(change.from(), now.request().scope().term().lastDay()).flatMap(day -> NewAgreement
                .twice(BookForms.shop(book), now.request().number(), Set.copyOf(change.added()),
                        at(now, change.site()).setting().whole(), day)
                .stream()).limit(1)
                .forEach(message -> problems.add(Code.NOT_ALLOWED, at("add"), message,
                        "machines that no agreement looks after, or a change of that one first"));
        back.stream().filter(number -> !billed.containsKey(number)).sorted()
                .forEach(number -> problems.add(Code.WRONG_ORDER, at("from"),
                        "part of installment " + number + " would go back, and it is not billed yet",
                        "that installment billed first: icequill invoice due"));
        return problems.or(() -> back).then(payments -> new OwedCredits(book, now, today, billed)
                .of(payments, "agreed.change-reason", change.from()))
                .map(credits -> new AgreementChanging(now.request().number(), change.from(), change.site(),
                        named(now, change, Change::added), named(now, change, Change::removed),
                        before.yearPrice(), now.yearPrice(), parts(now, change.from()),
                        payments(before, now, billed), credits, isTrial));
    }

    private static AgreementAtSite at(HeldAgreement held, String site) {
        return held.hand().sites().stream().filter(state -> state.request().scope().site().equals(site)).findFirst()
                .orElseThrow();
    }

    /** What changes on a day at a site; empty where nothing does. */
    private static Optional<Change> on(AgreementAtSite site, LocalDate day) {
        return site.changes().stream().filter(change -> change.price().from().equals(day)).findFirst();
    }

    private static List<String> named(HeldAgreement now, Changed change, Function<Change, List<String>> names) {
        return on(at(now, change.site()), change.from()).map(names).orElse(List.of());
    }

    private List<Part> parts(HeldAgreement now, LocalDate from) {
        return now.hand().sites().stream().flatMap(site -> on(site, from).map(change -> part(site, change)).stream())
                .toList();
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

    private static Place at(String field) {
        return new Place("", 0, field);
    }
}
