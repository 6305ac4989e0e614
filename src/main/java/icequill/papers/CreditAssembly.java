package icequill.papers;

import icequill.document.Bill;
import icequill.document.CreditNote;
import icequill.document.InvoiceLine;
import icequill.document.Totals;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.TaxBasis;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.CreditPart;
import icequill.tax.TaxCredit;
import icequill.tax.TaxTotal;
import icequill.tax.TaxedPart;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Puts a credit note together from the invoice it corrects: the same lines, or a part of one, at the original's tax.
 *
 * @param reason printed for the customer
 * @param lines of the invoice as it is printed, from 1; empty for all of which something is left
 * @param part what goes back of them
 * @param before what was given back of it already
 */
public record CreditAssembly(Bill invoice, CreditNote.Original original, String reason, List<Integer> lines,
        CreditPart part, List<CreditNote> before) {

    public CreditAssembly {
        before = List.copyOf(before);
    }

    /** The credit note, or which lines cannot be credited. */
    public Validated<CreditNote> credit(Optional<String> number, LocalDate date) {
        Problems problems = new Problems();
        checkLines(problems);
        return problems.or(() -> assembled(number, date));
    }

    private void checkLines(Problems problems) {
        CreditLines known = known();
        int count = known.count();
        Set<Integer> seen = new LinkedHashSet<>();
        lines.forEach(line -> {
            if (line < 1 || line > count) {
                unknown(line, count, problems);
            } else if (!seen.add(line) || known.line(line).isSpent()) {
                problems.add(new Problem(Code.DUPLICATE_NAME, Place.NOWHERE,
                        "line " + line + " is credited twice", "each line once, and none that was credited before"));
            }
        });
        if (problems.isEmpty() && numbers().isEmpty()) {
            problems.add(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "every line has been credited already", ""));
        }
        if (problems.isEmpty()) {
            problems.addAll(parts().problems());
        }
        if (problems.isEmpty()) {
            checkLeft(problems);
        }
    }

    /** What was taken back makes less be left than the lines by themselves come to. */
    private void checkLeft(Problems problems) {
        CreditLines known = known();
        CurrencyUnit currency = invoice.totals().gross().getCurrency();
        MonetaryAmount left = Amounts.sum(
                known.open().stream().map(line -> known.line(line).rest().tax().base()).toList(), currency);
        MonetaryAmount wanted = Amounts.sum(chosen().stream().map(line -> line.tax().base()).toList(), currency);
        boolean fits = invoice.totals().taxes().stream()
                .allMatch(total -> credit(total).allows(sum(taxed(total), total)));
        if (!fits || wanted.isNegative() || wanted.isGreaterThan(left)) {
            List<Integer> back = known.open().stream().filter(line -> known.line(line).left().isNegative()).toList();
            problems.add(new Problem(Code.OUT_OF_RANGE, Place.NOWHERE,
                    "lines " + numbers() + " come to " + Amounts.plain(wanted)
                            + ", more than what is left beside what was taken back",
                    "the lines of what was taken back, " + back + ", together with those it belongs to; or an amount"));
        }
    }

    private void unknown(int line, int count, Problems problems) {
        problems.add(new Problem(Code.OUT_OF_RANGE, Place.NOWHERE, "the invoice has no line " + line,
                "a line from 1 to " + count));
    }

    private CreditNote assembled(Optional<String> number, LocalDate date) {
        return new CreditNote(number, date, original, reason, invoice.shop(), invoice.language(),
                invoice.size(), invoice.billTo(), invoice.vendorNumber(), invoice.served(), chosen(),
                parts().orElseThrow().stream().map(CreditParts.Part::number).toList(), totals(),
                List.of());
    }

    private Totals totals() {
        CurrencyUnit currency = invoice.totals().gross().getCurrency();
        MonetaryAmount lines = Amounts.sum(chosen().stream().map(InvoiceLine::net).toList(), currency);
        MonetaryAmount net = Amounts.sum(chosen().stream().map(line -> line.tax().base()).toList(), currency);
        List<TaxTotal> taxes = invoice.totals().taxes().stream().flatMap(total -> tax(total).stream()).toList();
        MonetaryAmount tax = Amounts.sum(taxes.stream().map(TaxTotal::tax).toList(), currency);
        return new Totals(lines, discount(lines, net), net, invoice.totals().taxPlace(), taxes, tax, net.add(tax));
    }

    /** What the discount on the whole invoice took off these lines. */
    private Optional<Totals.Discount> discount(MonetaryAmount lines, MonetaryAmount net) {
        MonetaryAmount off = lines.subtract(net);
        return invoice.totals().discount().filter(whole -> !off.isZero())
                .map(whole -> new Totals.Discount(whole.text(), off, Explanation.of(
                        Figure.price(lines, "").minus(Figure.price(net, "")), Phrase.of("reason.discount-of-lines"))));
    }

    private Optional<TaxTotal> tax(TaxTotal original) {
        List<TaxedPart> parts = taxed(original);
        if (sum(parts, original).isZero()) {
            return Optional.empty();
        }
        TaxBasis basis = invoice.totals().taxPlace().basis(invoice.shop().taxBasis());
        return Optional.of(credit(original).further(parts, basis));
    }

    private static MonetaryAmount sum(List<TaxedPart> parts, TaxTotal original) {
        return Amounts.sum(parts.stream().map(TaxedPart::base).toList(), original.base().getCurrency());
    }

    private List<TaxedPart> taxed(TaxTotal original) {
        return parts().orElseThrow().stream()
                .filter(part -> part.line().tax().rate().equals(Optional.of(original.rate())))
                .map(part -> known().line(part.number()).taxed(part.line())).toList();
    }

    private TaxCredit credit(TaxTotal original) {
        return new TaxCredit(original, before.stream().flatMap(note -> note.totals().taxes().stream())
                .filter(total -> total.rate().equals(original.rate())).toList());
    }

    private List<InvoiceLine> chosen() {
        return parts().orElseThrow().stream().map(CreditParts.Part::line).toList();
    }

    private Validated<List<CreditParts.Part>> parts() {
        return new CreditParts(known(), numbers()).of(part);
    }

    private List<Integer> numbers() {
        return lines.isEmpty() ? known().open() : lines.stream().sorted().toList();
    }

    private CreditLines known() {
        return new CreditLines(invoice, before);
    }
}
