package icequill.office.agreement;

import icequill.agreement.NoticePlan;
import icequill.agreement.NoticeRule;
import icequill.agreement.RenewalPrice;
import icequill.agreement.ServedNotice;
import icequill.ledger.Transaction;
import icequill.ledger.entries.AgreementEntry;
import icequill.life.agreement.AgreementEvent.Begun;
import icequill.life.agreement.AgreementEvent.Renewal;
import icequill.life.agreement.AgreementState;
import icequill.life.agreement.AgreementState.InForce;
import icequill.office.quoting.NewAgreement;
import icequill.party.BillTo;
import icequill.plans.AgreementAtSite;
import icequill.plans.NextTerm;
import icequill.plans.RenewalAssembly;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.life.AgreementNumber;
import icequill.shop.steps.AgreementSteps;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Renews an agreement: what it goes on as is written from it, with the price of its renewal, and each of both knows the other.
 *
 * @param book all of whose work is that of the transaction
 */
record GoingOnAgain(ShopBook book, Transaction open) {

    /** The number of what it goes on as. */
    Validated<String> of(HeldAgreement held, RenewalWish wish) {
        String number = AgreementNumber.free(open, held.request().renewal().terms().begins().getYear());
        Renewal renewal = new Renewal(wish.day(), number, wish.agreed());
        return AgreementState.step(held.steps().state(), renewal, held.terms()).then(after -> bound(held, wish))
                .then(bound -> prices(held, wish.day())).then(prices -> NewAgreement.of(book, BookForms.shop(book),
                        new RenewedForm(BookForms.form(held.entry()), held.hand(), prices, number, wish.day()).form(),
                        wish.day()))
                .then(entry -> open.register().add(entry)).map(entry -> linked(held, entry, renewal));
    }

    private String linked(HeldAgreement held, AgreementEntry next, Renewal renewal) {
        Map<String, LocalDate> visits = firstDays(held);
        open.lifeSteps().add(held.steps().next(renewal, held.entry().site(), visits));
        open.lifeSteps().add(new AgreementSteps(next.number(), List.of())
                .next(new Begun(renewal.day(), held.request().number()), next.site(), visits));
        return next.number();
    }

    /** Of visits of the next term, by the id of the site. */
    private static Map<String, LocalDate> firstDays(HeldAgreement held) {
        Map<String, List<LocalDate>> done = held.doneDays();
        Map<String, LocalDate> days = new HashMap<>();
        held.hand().sites().stream().filter(AgreementAtSite::isInAtTheEnd).forEach(site -> {
            String id = site.request().scope().site();
            new NextTerm(site, done.getOrDefault(id, List.of())).firstDay().ifPresent(day -> days.put(id, day));
        });
        return days;
    }

    private static Validated<List<RenewalPrice>> prices(HeldAgreement held, LocalDate day) {
        Validated<BillTo> billTo = held.hand().billTo(day);
        return billTo.then(payer -> new RenewalAssembly(held.hand(), payer, held.shop().notices(),
                held.shop().schedule()).prices());
    }

    /** It goes on by itself only where the customer may not refuse any more, and was told as the laws on record ask for. */
    private static Validated<Boolean> bound(HeldAgreement held, RenewalWish wish) {
        Problems problems = new Problems();
        LocalDate refuse = held.request().renewal().terms().lastDayToRefuse();
        if (wish.agreed().isEmpty()) {
            if (!wish.day().isAfter(refuse)) {
                problems.add(Code.OUT_OF_RANGE, new Place("", 0, "day"),
                        "the customer may refuse until " + refuse, "a day after that, or who agreed to it");
            }
            unserved(held, wish.day()).forEach(rule -> problems.add(Code.MISSING, new Place("", 0, "agreed"),
                    "no notice counts by " + rule.id() + ", so it may not bind the customer", "who agreed to it"));
        }
        return problems.or(() -> true);
    }

    /** The laws on record by which no notice counts. */
    private static List<NoticeRule> unserved(HeldAgreement held, LocalDate day) {
        List<NoticeRule> rules = held.shop().notices().map(known -> NoticePlan.of(held.request().renewal().terms(),
                held.request().renewal().jurisdictions(), known, any -> true, day).rules()).orElse(List.of());
        boolean isServed = held.steps().state() instanceof InForce running && running.notices().stream()
                .anyMatch(sent -> ServedNotice.of(sent, held.request().renewal().terms(), rules).counts());
        return isServed ? List.of() : rules;
    }
}
