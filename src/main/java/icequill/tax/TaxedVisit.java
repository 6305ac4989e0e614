package icequill.tax;

import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.pricer.PricedVisit;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * A priced visit with its taxes.
 *
 * @param lines how each line is taxed, in the order of the priced lines
 * @param totals by rate
 * @param remarks what the customer should know about them: an exemption used, expired or missing
 */
public record TaxedVisit(PricedVisit priced, TaxPlace place, List<LineTax> lines, List<TaxTotal> totals,
        List<Phrase> remarks) {

    public TaxedVisit {
        lines = List.copyOf(lines);
        totals = List.copyOf(totals);
        remarks = List.copyOf(remarks);
    }

    /** The same with its place's name in each rate, for a paper on which rates of several places stand. */
    public TaxedVisit namingPlace() {
        return new TaxedVisit(priced, place,
                lines.stream().map(line -> new LineTax(line.base(), line.how(),
                        line.rate().map(place::named), line.why(), line.shown())).toList(),
                totals.stream().map(total -> total.at(place)).toList(), remarks);
    }

    /** What of it is of some tax category. */
    public List<Taxable> taxables() {
        return lines.stream().flatMap(line -> line.taxable().stream()).toList();
    }

    public MonetaryAmount tax() {
        return Amounts.sum(totals.stream().map(TaxTotal::tax).toList(), priced.currency());
    }

    public MonetaryAmount gross() {
        return priced.net().add(tax());
    }
}
