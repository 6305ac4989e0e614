package icequill.papers;

import icequill.document.Totals;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.money.Amounts;
import icequill.party.TaxBasis;
import icequill.tax.TaxPlace;
import icequill.tax.TaxPlace.Regime;
import icequill.tax.TaxTotal;
import icequill.tax.TaxTotals;
import icequill.tax.TaxedVisit;
import icequill.visits.ChargeSheet;
import java.util.List;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * The sums of several sales on one paper: nets are the sum of theirs; tax by invoice is figured once for each rate of a place on the
 * sum of the bases, tax by item line by line as ever.
 */
record TotalsTogether(List<ChargeSheet> sheets) {

    /** A sales tax goes to authorities of its place, even where those of another charge the same; so rates name it. */
    static boolean nameTheirPlaces(List<TaxPlace> places) {
        return places.getFirst().regime() == Regime.SALES_TAX
                && places.stream().map(TaxPlace::id).distinct().count() > 1;
    }

    Totals totals(TaxBasis shops) {
        TaxedVisit first = sheets.getFirst().taxed();
        CurrencyUnit currency = first.priced().currency();
        List<Totals> each = sheets.stream().map(ChargeSheet::totals).toList();
        MonetaryAmount net = Amounts.sum(each.stream().map(Totals::net).toList(), currency);
        List<TaxTotal> taxes = TaxTotals.of(sheets.stream().map(ChargeSheet::taxed)
                .flatMap(taxed -> taxed.taxables().stream()).toList(), first.place().basis(shops), currency);
        MonetaryAmount tax = Amounts.sum(taxes.stream().map(TaxTotal::tax).toList(), currency);
        return new Totals(Amounts.sum(each.stream().map(Totals::lines).toList(), currency),
                each.stream().flatMap(totals -> totals.discount().stream()).reduce(TotalsTogether::together), net,
                first.place(), taxes, tax, net.add(tax));
    }

    private static Totals.Discount together(Totals.Discount one, Totals.Discount other) {
        return new Totals.Discount(one.text(), one.amount().add(other.amount()),
                Explanation.of(Figure.price(one.amount(), "").plus(Figure.price(other.amount(), ""))));
    }
}
