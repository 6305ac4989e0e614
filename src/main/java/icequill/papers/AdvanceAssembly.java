package icequill.papers;

import icequill.document.CreditNote;
import icequill.document.Invoice.AdvanceBill;
import icequill.document.Invoice.Advanced;
import icequill.document.InvoiceLine;
import icequill.document.StageInvoice;
import icequill.document.Totals;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.tax.TaxLeft;
import icequill.tax.TaxTotal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Takes what was asked for before off the sums of a work. The tax that is left is the whole less what was asked for, so that all papers together
 * have the tax of the whole to the minor unit.
 *
 * @param lines of the work, those too that were declined
 * @param whole its sums
 */
record AdvanceAssembly(List<InvoiceLine> lines, Totals whole, List<AdvanceBill> bills) {

    private static final String HELD_BACK = "line.held-back";

    AdvanceAssembly {
        bills = List.copyOf(bills);
    }

    /** What an invoice of a part asked for, with what it holds back, less what was given back of it. */
    static AdvanceBill of(StageInvoice paper, List<CreditNote> credits) {
        CurrencyUnit currency = paper.totals().net().getCurrency();
        MonetaryAmount net = Amounts.sum(IntStream.range(0, paper.lines().size())
                .filter(i -> !paper.lines().get(i).text().key().equals(HELD_BACK))
                .mapToObj(i -> credits.stream().map(note -> note.netOf(i + 1))
                        .reduce(paper.lines().get(i).net(), MonetaryAmount::subtract))
                .toList(), currency);
        List<TaxTotal> taxes = new TaxLeft(paper.ofPart(),
                credits.stream().flatMap(note -> note.totals().taxes().stream()).toList()).totals();
        MonetaryAmount tax = sum(taxes, currency);
        return new AdvanceBill(paper.number().orElse(""), paper.date(), net, taxes, tax, net.add(tax));
    }

    /** The lines with those that take it off at their end. */
    List<InvoiceLine> all() {
        List<InvoiceLine> all = new ArrayList<>(lines);
        all.addAll(off());
        return List.copyOf(all);
    }

    private List<InvoiceLine> off() {
        Phrase taxed = Phrase.of("reason.tax-left");
        Phrase untaxed = Phrase.of("reason.advance-untaxed");
        return bills.stream().flatMap(bill -> new StageLines(
                Phrase.of("line.invoiced-before", new Fact.Text(bill.number()), new Fact.Day(bill.date())), taxed,
                untaxed).of(bill.net().negate(),
                        bill.taxes().isEmpty()
                                ? List.of()
                                : new TaxLeft(List.of(), bill.taxes()).totals())
                .stream()).toList();
    }

    /** What is left to be asked for, or that it is less than nothing. */
    Validated<Totals> left() {
        CurrencyUnit currency = whole.net().getCurrency();
        MonetaryAmount off = Amounts.sum(bills.stream().map(AdvanceBill::net).toList(), currency);
        List<TaxTotal> taxes = new TaxLeft(whole.taxes(),
                bills.stream().flatMap(bill -> bill.taxes().stream()).toList()).totals();
        MonetaryAmount net = whole.net().subtract(off);
        MonetaryAmount gross = net.add(sum(taxes, currency));
        return gross.isNegative() || net.isNegative()
                ? Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "the work comes to " + Amounts.plain(whole.gross()) + ", and more was invoiced before: "
                                + String.join(", ", bills.stream().map(AdvanceBill::number).toList()),
                        "a credit note for the part that is too much, then the invoice"))
                : Validated.valid(new Totals(whole.lines().subtract(off), whole.discount(), net, whole.taxPlace(),
                        taxes, sum(taxes, currency), gross));
    }

    Advanced advanced() {
        return new Advanced(whole, bills, off().size());
    }

    private static MonetaryAmount sum(List<TaxTotal> taxes, CurrencyUnit currency) {
        return Amounts.sum(taxes.stream().map(TaxTotal::tax).toList(), currency);
    }
}
