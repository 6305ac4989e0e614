package icequill.papers;

import icequill.document.InvoiceLine;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.tax.LineTax;
import icequill.tax.TaxRate;
import icequill.tax.TaxTotal;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Lines of a part of a work, one for each rate of its tax and one for what bears none.
 *
 * @param text what each says
 * @param untaxed why a line bears no tax
 */
record StageLines(Phrase text, Phrase taxed, Phrase untaxed) {

    /** Of all of an amount before tax. */
    List<InvoiceLine> of(MonetaryAmount net, List<TaxTotal> taxes) {
        List<InvoiceLine> lines = new ArrayList<>();
        taxes.stream().filter(total -> !total.base().isZero())
                .forEach(total -> lines.add(line(total.base(), Optional.of(total.rate()), taxed)));
        MonetaryAmount rest = net
                .subtract(Amounts.sum(taxes.stream().map(TaxTotal::base).toList(), net.getCurrency()));
        if (!rest.isZero()) {
            lines.add(line(rest, Optional.empty(), untaxed));
        }
        return List.copyOf(lines);
    }

    private InvoiceLine line(MonetaryAmount net, Optional<TaxRate> rate, Phrase why) {
        Explanation how = Explanation.of(Figure.price(net, ""));
        return new InvoiceLine(ChargeClass.REPAIR, Outcome.CHARGED, text, Optional.empty(),
                Quantity.of(1, Unit.EACH), Optional.empty(), net, Amounts.zero(net.getCurrency()), net, how,
                new LineTax(net, how, rate, why));
    }
}
