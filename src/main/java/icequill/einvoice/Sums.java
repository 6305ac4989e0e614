package icequill.einvoice;

import icequill.money.Amounts;
import java.util.List;
import java.util.function.Predicate;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * The sums of a document (BG-22), added up from what is written, so that they can be compared with the paper's.
 *
 * @param lines BT-106
 * @param allowances BT-107
 * @param charges BT-108
 * @param net BT-109
 * @param tax BT-110
 * @param gross BT-112, which is also what is due, BT-115: no paper knows a prepayment yet
 */
record Sums(MonetaryAmount lines, MonetaryAmount allowances, MonetaryAmount charges, MonetaryAmount net,
        MonetaryAmount tax, MonetaryAmount gross) {

    static Sums of(List<Line> lines, List<Adjustment> adjustments, List<TaxShare> taxes, CurrencyUnit currency) {
        MonetaryAmount sum = Amounts.sum(lines.stream().map(Line::net).toList(), currency);
        MonetaryAmount allowances = sum(adjustments, adjustment -> !adjustment.isCharge(), currency);
        MonetaryAmount charges = sum(adjustments, Adjustment::isCharge, currency);
        MonetaryAmount net = sum.subtract(allowances).add(charges);
        MonetaryAmount tax = Amounts.sum(taxes.stream().map(TaxShare::tax).toList(), currency);
        return new Sums(sum, allowances, charges, net, tax, net.add(tax));
    }

    private static MonetaryAmount sum(List<Adjustment> adjustments, Predicate<Adjustment> which,
            CurrencyUnit currency) {
        return Amounts.sum(adjustments.stream().filter(which).map(Adjustment::amount).toList(), currency);
    }
}
