package icequill.papers;

import icequill.agreement.Billing;
import icequill.agreement.Installment;
import icequill.agreement.MonthByMonth;
import icequill.document.InstallmentInvoice;
import icequill.document.InstallmentInvoice.BilledSite;
import icequill.document.InstallmentInvoice.BilledSites;
import icequill.document.InvoiceLine;
import icequill.document.ServicePeriod;
import icequill.document.Where;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.party.Wording;
import icequill.plans.AgreementAtSite;
import icequill.plans.InstallmentTax;
import icequill.plans.WholeAgreement;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.rates.EarlyPaymentTerms;
import icequill.request.PaperOptions;
import icequill.tax.TaxedVisit;
import icequill.visits.ChargeSheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts the invoice of one installment of an agreement together. */
public record InstallmentAssembly(WholeAgreement hand, BillTo billTo) {

    /**
     * The invoice of a payment.
     *
     * @param number of the payment, from 1
     * @return a problem when there is no such payment, or when changes, or its end, have left nothing of it to ask for
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
                    "nothing of installment " + number + " is left to be billed",
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
        Site site = hand.site();
        Shop shop = hand.first().setting().shop();
        Wording plan = hand.first().plan().tier().name();
        ServicePeriod served = served(payment, options.date());
        Phrase text = text(payment, served, plan);
        List<AgreementAtSite> asked = hand.sites().stream().filter(state -> at(state, payment).isPresent()).toList();
        boolean naming = TotalsTogether.nameTheirPlaces(
                asked.stream().map(state -> state.setting().place()).toList());
        List<ChargeSheet> sheets = asked.stream().map(state -> {
            TaxedVisit taxed = new InstallmentTax(state.setting()).taxed(at(state, payment).orElseThrow(),
                    hand.isOverSeveralSites() ? at(state.setting().whole(), text) : text, options.date());
            return new ChargeSheet(state.setting().whole(), naming ? taxed.namingPlace() : taxed);
        }).toList();
        LocalDate due = due(payment, options.date());
        List<InvoiceLine> lines = sheets.stream().flatMap(sheet -> sheet.lines().stream()).toList();
        return new InstallmentInvoice(options.number(), options.date(), due, shop,
                hand.language(options.language()), shop.paper(), billTo, site.customer().vendorNumber(),
                hand.request().number(), plan, payment.number(), hand.termPayments().size(), served,
                hand.isOverSeveralSites()
                        ? Optional.of(new BilledSites(asked.stream().map(state -> state.setting().whole())
                                .map(one -> new BilledSite(one.id(), Where.of(one))).toList()))
                        : Optional.empty(),
                lines,
                new EarlyPaymentAssembly(new TotalsTogether(sheets).totals(shop.taxBasis()), lines, shop.taxBasis(),
                        options.date(), due).offered(early(asked)),
                sheets.stream().flatMap(sheet -> sheet.taxed().remarks().stream()).distinct().toList());
    }

    /** What all of some sites have; nothing where they differ, or their places' rules on the tax of it do. */
    private static Optional<EarlyPaymentTerms> early(List<AgreementAtSite> sites) {
        List<Optional<EarlyPaymentTerms>> terms = sites.stream()
                .map(state -> state.setting().rates().adjustments().earlyPayment()).distinct().toList();
        boolean alike = terms.size() == 1 && sites.stream()
                .map(state -> state.setting().place().earlyPaymentReducesTax()).distinct().count() == 1;
        return alike ? terms.getFirst() : Optional.empty();
    }

    /** What a site has of a payment; empty where it has nothing of it. */
    private static Optional<Installment> at(AgreementAtSite state, Installment payment) {
        return state.payments().stream().filter(one -> one.number() == payment.number())
                .filter(one -> !one.amount().isZero()).findFirst();
    }

    /** Which of the sites a line is for, and what. */
    private static Phrase at(Site site, Phrase text) {
        List<Fact> facts = new ArrayList<>(text.facts());
        facts.add(new Fact.Text(site.storeNumber().map(store -> site.name() + ", " + store).orElse(site.name())));
        return new Phrase(text.key() + "-at", facts);
    }

    /** @param date of the invoice, by which a purchase order stands for it */
    private ServicePeriod served(Installment payment, LocalDate date) {
        Optional<String> order = hand.request().orders().on(date);
        Site site = hand.site();
        if (!hand.isOverSeveralSites()) {
            return new ServicePeriod(site.name(), site.storeNumber(), site.address(), order,
                    payment.due(), until(payment));
        }
        String names = hand.sites().stream().filter(state -> at(state, payment).isPresent())
                .map(state -> state.setting().whole().name()).collect(Collectors.joining("; "));
        return new ServicePeriod(names, Optional.empty(), site.address(), order,
                payment.due(), until(payment), Optional.of(true));
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
        int days = hand.site().customer().paymentDays().orElse(hand.first().setting().shop().paymentDays());
        LocalDate usual = date.plusDays(days);
        return usual.isAfter(payment.due()) ? usual : payment.due();
    }

    /**
     * The day before the next payment falls due; the last one is for the rest of the term. One for a visit is for its day, one for a month
     * in which the site is open for that month; none for days after an early end.
     */
    private LocalDate until(Installment payment) {
        Optional<Billing> billing = hand.request().scope().billing();
        if (billing.isEmpty()) {
            return payment.due();
        }
        LocalDate until = untilNext(payment, billing.get());
        return hand.request().isPastEnd(until) ? hand.request().ended().orElseThrow().lastDay() : until;
    }

    private LocalDate untilNext(Installment payment, Billing billing) {
        if (billing == Billing.OPEN_MONTHS || MonthByMonth.isAfterTerm(payment.number())) {
            return hand.request().termUntil(payment.due()).lastOfMonth(payment.due());
        }
        List<LocalDate> later = hand.termPayments().stream().map(Installment::due)
                .filter(due -> due.isAfter(payment.due())).sorted().toList();
        return later.isEmpty() ? hand.first().plan().term().lastDay() : later.getFirst().minusDays(1);
    }
}
