package icequill.office.agreement;

import icequill.answer.agreement.AgreementTransfer;
import icequill.files.form.Form;
import icequill.files.yaml.Tree;
import icequill.files.yaml.Tree.Leaf;
import icequill.ledger.Transaction;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.life.agreement.AgreementEvent.TakenOver;
import icequill.life.agreement.AgreementEvent.Transfer;
import icequill.life.agreement.AgreementState;
import icequill.money.Amounts;
import icequill.office.billing.StandingInvoices;
import icequill.office.quoting.NewAgreement;
import icequill.plans.AgreementAtSite;
import icequill.plans.EarlyEnd;
import icequill.plans.Handover;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.request.AgreementRequest;
import icequill.request.AgreementRequest.Ended;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.life.AgreementNumber;
import icequill.shop.steps.AgreementSteps;
import icequill.shop.steps.SiteOwners;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A new owner takes over the rest of an agreement: its end for the former one with his credit notes, the sites, and the agreement of the new one.
 *
 * @param book all of whose work is that of the transaction
 * @param today the day on which credit notes are dated
 * @param sentences for whoever asks
 */
record OwnerChange(ShopBook book, Transaction open, LocalDate today, Sentences sentences) {

    Validated<AgreementTransfer> of(HeldAgreement held, TransferWish wish) {
        Transfer transfer = new Transfer(today, wish.from(), AgreementNumber.free(open, wish.from().getYear()),
                wish.who(), wish.words());
        return AgreementState.step(held.steps().state(), transfer, held.terms()).then(after -> owner(held, wish))
                .then(owner -> changed(held, wish, transfer, owner));
    }

    /** The new one, who must be another one than the former. */
    private Validated<CustomerEntry> owner(HeldAgreement held, TransferWish wish) {
        Problems problems = new Problems();
        Optional<CustomerEntry> owner = open.entries().customer(wish.to()).found();
        if (owner.isEmpty()) {
            problems.add(open.entries().merged("customer", wish.to()).orElseGet(() -> Problem.unknownName(at("to"),
                    "customer", wish.to(), open.entries().customers().stream().map(CustomerEntry::id).toList())));
        }
        owner.filter(known -> known.forgotten().isPresent()).ifPresent(known -> problems.add(Code.NOT_ALLOWED,
                at("to"), "customer " + known.id() + " was forgotten", "a customer who is known"));
        if (wish.to().equals(held.owner(open))) {
            problems.add(Code.NOT_ALLOWED, at("to"),
                    held.request().number() + " is an agreement of " + wish.to() + " already", "another customer");
        }
        held.request().sites().stream().flatMap(site -> site.part().stream())
                .flatMap(part -> Stream.of(part.from(), part.until().map(last -> last.plusDays(1)))
                        .flatMap(Optional::stream))
                .filter(day -> !day.isBefore(wish.from())).findFirst()
                .ifPresent(day -> problems.add(Code.WRONG_ORDER, at("from"),
                        "a site comes in or goes out on " + day + ", which is known already", "a day after that"));
        return problems.or(owner::orElseThrow);
    }

    private Validated<AgreementTransfer> changed(HeldAgreement held, TransferWish wish, Transfer transfer,
            CustomerEntry owner) {
        EarlyEnd end = new EarlyEnd(held.hand(), wish.from().minusDays(1), held.shop().earning(),
                held.doneBefore(wish.from()), today);
        Handover handover = new Handover(end);
        Ended ended = handover.ended();
        String former = held.owner(open);
        open.lifeSteps().add(held.steps().next(transfer, held.entry().site(), ended, former));
        return sold(held, wish.from(), owner.id())
                .then(sites -> NewAgreement.of(book, BookForms.shop(book), form(held, handover, ended, wish,
                        transfer.next()), wish.from()))
                .then(entry -> open.register().add(entry)).then(entry -> linked(entry, held, wish.from()))
                .then(next -> new OwedCredits(book, held, today,
                        StandingInvoices.byPayment(open, held.request().number()))
                        .of(ended.credited(), "agreed.transfer-reason", wish.from())
                        .map(credits -> new HandoverTelling(open, sentences, held, next, handover, ended).told(former,
                                owner, credits, wish.isTrial())));
    }

    /** The sites that are in belong to the new owner from his first day on. */
    private Validated<Boolean> sold(HeldAgreement held, LocalDate from, String owner) {
        Problems problems = new Problems();
        for (AgreementRequest part : held.request().sites().stream().filter(site -> site.isHere(from)).toList()) {
            problems.take(open.entries().siteNow(part.scope().site())).ifPresent(site -> {
                SiteOwners owners = BookForms.owners(open, site.id());
                String before = BookForms.owner(open, site, from);
                Optional<LocalDate> last = owners.soldLast().filter(sale -> sale.isAfter(from));
                if (last.isPresent()) {
                    problems.add(Code.WRONG_ORDER, at("from"), site.id() + " was sold again on " + last.get(),
                            "a day from " + last.get() + " on");
                } else if (!before.equals(owner)) {
                    open.lifeSteps().add(owners.next(from, before));
                    problems.take(open.register().change(new SiteEntry(site.id(), owner, site.name(),
                            site.storeNumber(), site.address(), site.taxPlace(), site.data())));
                }
            });
        }
        return problems.or(() -> true);
    }

    private Form form(HeldAgreement held, Handover handover, Ended ended, TransferWish wish, String number) {
        String old = held.request().number();
        FollowingForm next = new FollowingForm(BookForms.form(held.entry()), held.hand(), number, "rest of " + old,
                wish.from());
        List<FollowingForm.Staying> staying = held.hand().sites().stream()
                .filter(AgreementAtSite::isInAtTheEnd).map(site -> {
                    Map<String, Tree> own = next.own(site, wish.from(), site.currentYearPrice());
                    own.put("rest", rest(site, handover, ended, old));
                    return new FollowingForm.Staying(site, own);
                }).toList();
        return next.form(Map.of(), wish.order(), staying);
    }

    private static Tree rest(AgreementAtSite site, Handover handover, Ended ended, String old) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        entries.put("of", Leaf.written(old));
        entries.put("from", Leaf.written(ended.lastDay().plusDays(1)));
        entries.put("price", Leaf.counted(Amounts.plain(handover.restPrice(site, ended))));
        Optional.ofNullable(ended.goingOver().get(site.request().scope().site()))
                .ifPresent(visit -> entries.put("visit", Leaf.written(visit)));
        return Tree.Branch.of(entries);
    }

    /** The new agreement, which knows what it is the rest of; the new owner must be billed by somebody on his first day. */
    private Validated<HeldAgreement> linked(AgreementEntry entry, HeldAgreement held, LocalDate from) {
        open.lifeSteps().add(new AgreementSteps(entry.number(), List.of())
                .next(new TakenOver(from, held.request().number()), entry.site()));
        return HeldAgreement.of(book, entry.number(), today)
                .then(next -> next.hand().billTo(from).map(payer -> next));
    }

    private static Place at(String field) {
        return new Place("", 0, field);
    }
}
