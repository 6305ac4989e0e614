package icequill.office.agreement;

import icequill.answer.BookedPaper;
import icequill.answer.agreement.AgreementTransfer;
import icequill.answer.agreement.AgreementTransfer.Payment;
import icequill.answer.agreement.AgreementTransfer.Rest;
import icequill.explain.Explanation;
import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.office.billing.StandingInvoices;
import icequill.plans.AgreementAtSite;
import icequill.plans.Handover;
import icequill.render.words.Sentences;
import icequill.request.AgreementRequest.Ended;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Tells what goes over to a new owner, in the language of the reader.
 *
 * @param old as it was before
 * @param next the agreement of the new owner
 */
record HandoverTelling(Reading open, Sentences sentences, HeldAgreement old, HeldAgreement next, Handover handover,
        Ended ended) {

    AgreementTransfer told(String former, CustomerEntry owner, List<BookedPaper> credits, boolean isTrial) {
        LocalDate from = next.request().firstDay();
        EndTelling end = new EndTelling(old, handover.end(), sentences);
        return new AgreementTransfer(old.request().number(), next.request().number(), from,
                next.request().scope().term().lastDay(), former, old.hand().site().customer().name(), owner.id(),
                owner.customer().name(), end.back(), credits,
                end.unbilled(StandingInvoices.byPayment(open, old.request().number()), false),
                old.request().sites().stream().flatMap(site -> toBill(site.scope().site(), from)).toList(),
                old.hand().sites().stream().filter(AgreementAtSite::isInAtTheEnd).map(this::rest).toList(),
                next.hand().payments().stream().filter(next.hand()::isPayable).map(payment -> new Payment(
                        payment.number(), payment.due(), payment.amount(), sentences.formula(payment.how().figure())))
                        .toList(),
                next.hand().sites().stream().flatMap(this::visits)
                        .sorted(Comparator.comparing(AgreementTransfer.Visit::day)).toList(),
                isTrial);
    }

    /** Visits of the former owner that are done and that nobody was billed for yet; what its agreement bills is not among them. */
    private Stream<String> toBill(String site, LocalDate from) {
        return open.entries().visitsAt(site).stream()
                .filter(visit -> !visit.isPlanned() && visit.began().toLocalDate().isBefore(from))
                .map(VisitEntry::id).filter(visit -> open.entries().withdrawal(visit).isEmpty()
                        && StandingInvoices.visit(open, visit).isEmpty());
    }

    private Rest rest(AgreementAtSite site) {
        Explanation how = handover.rest(site, ended);
        return new Rest(site.setting().whole().name(), handover.restPrice(site, ended),
                sentences.formula(how.figure()), how.reasons().stream().map(sentences::say).toList());
    }

    private Stream<AgreementTransfer.Visit> visits(AgreementAtSite site) {
        return site.calendar().visits().stream().map(visit -> new AgreementTransfer.Visit(visit.date(),
                site.setting().whole().name(), sentences.in(visit.slot().name())));
    }
}
