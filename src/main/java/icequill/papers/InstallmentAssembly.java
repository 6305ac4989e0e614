package icequill.papers;

import icequill.agreement.Billing;
import icequill.agreement.Installment;
import icequill.agreement.MonthByMonth;
import icequill.document.InstallmentInvoice;
import icequill.document.ServicePeriod;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Site;
import icequill.party.Wording;
import icequill.plans.AgreementState;
import icequill.plans.InstallmentTax;
import icequill.plans.PlanSetting;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.tax.TaxedVisit;
import icequill.visits.ChargeSheet;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Puts the invoice of one installment of an agreement together. */
public record InstallmentAssembly(AgreementState hand, BillTo billTo) {

    /**
     * The invoice of a payment.
     *
     * @param number of the payment, from 1
     * @return a problem when there is no such payment, or when changes have left nothing of it to ask for
     */
    public Validated<InstallmentInvoice> invoice(int number, PaperOptions options) {
        Optional<Installment> payment = hand.payments().stream().filter(one -> one.number() == number).findFirst();
        if (payment.isEmpty()) {
            return Validated.invalid(new Problem(Code.OUT_OF_RANGE, Place.NOWHERE,
                    "the agreement has no installment " + number,
                    "--installment from 1 to " + hand.termPayments().size() + afterTerm()));
        }
        if (!hand.isPayable(payment.get())) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "nothing of installment " + number + " is left after the changes",
                    "a payment that asks for something"));
        }
        return Validated.valid(invoice(payment.get(), options));
    }

    private String afterTerm() {
        List<Integer> after = hand.payments().stream().map(Installment::number).filter(MonthByMonth::isAfterTerm)
                .toList();
        return after.isEmpty() ? "" : ", or from " + after.getFirst() + " to " + after.getLast() + " after its term";
    }

    private InstallmentInvoice invoice(Installment payment, PaperOptions options) {
        PlanSetting setting = hand.setting();
        Site site = setting.whole();
        Wording plan = hand.plan().tier().name();
        ServicePeriod served = new ServicePeriod(site.name(), site.storeNumber(), site.address(),
                hand.request().purchaseOrder(), payment.due(), until(payment));
        Phrase text = text(payment, served, plan);
        TaxedVisit taxed = new InstallmentTax(setting).taxed(payment, text, options.date());
        ChargeSheet sheet = new ChargeSheet(site, taxed);
        return new InstallmentInvoice(options.number(), options.date(), due(payment, options.date()), setting.shop(),
                hand.language(options.language()), setting.shop().paper(), billTo, site.customer().vendorNumber(),
                hand.request().number(), plan, payment.number(), hand.termPayments().size(), served, sheet.lines(),
                sheet.totals(), taxed.remarks());
    }

    private Phrase text(Installment payment, ServicePeriod served, Wording plan) {
        Fact agreement = new Fact.Text(hand.request().number());
        Fact from = new Fact.Day(served.from());
        Fact last = new Fact.Day(served.until());
        return MonthByMonth.isAfterTerm(payment.number())
                ? Phrase.of("line.agreement-month", agreement, plan.named(), from, last)
                : Phrase.of("line.agreement-payment", Fact.number(payment.number(), ""),
                        Fact.number(hand.termPayments().size(), ""), agreement, plan.named(), from, last);
    }

    /** The day on which the payment falls due, or the end of the usual days to pay where that is later. */
    private LocalDate due(Installment payment, LocalDate date) {
        int days = hand.setting().whole().customer().paymentDays().orElse(hand.setting().shop().paymentDays());
        LocalDate usual = date.plusDays(days);
        return usual.isAfter(payment.due()) ? usual : payment.due();
    }

    /**
     * The day before the next payment falls due; the last one is for the rest of the term. One for a visit is for its day, one for a month
     * in which the site is open for that month.
     */
    private LocalDate until(Installment payment) {
        Optional<Billing> billing = hand.request().scope().billing();
        if (billing.isEmpty()) {
            return payment.due();
        }
        if (billing.get() == Billing.OPEN_MONTHS || MonthByMonth.isAfterTerm(payment.number())) {
            return hand.request().termUntil(payment.due()).lastOfMonth(payment.due());
        }
        List<LocalDate> later = hand.termPayments().stream().map(Installment::due)
                .filter(due -> due.isAfter(payment.due())).sorted().toList();
        return later.isEmpty() ? hand.plan().term().lastDay() : later.getFirst().minusDays(1);
    }
}
