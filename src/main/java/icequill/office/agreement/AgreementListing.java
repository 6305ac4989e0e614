package icequill.office.agreement;

import icequill.answer.agreement.AgreementAnswer;
import icequill.answer.agreement.AgreementList;
import icequill.answer.agreement.AgreementList.Next;
import icequill.answer.agreement.AgreementList.Row;
import icequill.answer.agreement.AgreementList.Standing;
import icequill.answer.register.RenewalList.Todo;
import icequill.ledger.Reading;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.office.billing.InstallmentBilling;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lists agreements as they stand.
 *
 * @param renewals what is to be done about those that renew themselves, by number
 */
record AgreementListing(ShopBook book, Sentences sentences, LocalDate today, Map<String, Todo> renewals) {

    AgreementList of(Reading open) {
        Problems problems = new Problems();
        List<Row> rows = open.entries().agreements().stream().filter(entry -> !entry.isForgotten())
                .map(entry -> row(open, entry, problems)).sorted(Comparator.comparing(Row::number)).toList();
        return new AgreementList(today, rows, problems.list());
    }

    private Row row(Reading open, AgreementEntry entry, Problems problems) {
        Validated<AgreementAnswer> read = HeldAgreement.of(book, entry.number(), today)
                .map(held -> new AgreementTelling(held, open, sentences, today).sheet().data());
        read.problems().stream().map(problem -> InstallmentBilling.of(entry.number(), problem)).forEach(problems::add);
        Optional<AgreementAnswer> told = read.found();
        return new Row(entry.id(), entry.number(), entry.site(),
                told.map(AgreementAnswer::customer).or(() -> open.entries().siteNow(entry.site()).found()
                        .map(SiteEntry::customer)),
                told.map(answer -> answer.customerName() + ", " + answer.siteName()).orElse(""),
                told.map(this::standing));
    }

    private Standing standing(AgreementAnswer told) {
        return new Standing(told.stage(), told.plan(), told.yearPrice(), told.lastDay(), told.refuseUntil(),
                told.payments().stream().filter(payment -> payment.invoice().isEmpty())
                        .min(Comparator.comparing(AgreementAnswer.Payment::due))
                        .map(payment -> new Next(payment.number(), payment.due(), payment.net())),
                told.visits().stream().filter(visit -> visit.done().isEmpty() && !visit.late())
                        .map(AgreementAnswer.DueVisit::day).findFirst(),
                Optional.ofNullable(renewals.get(told.agreement())));
    }
}
