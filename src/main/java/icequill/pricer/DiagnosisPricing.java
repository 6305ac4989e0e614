package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.rates.DiagnosisCredit;
import icequill.work.ChargeClass;
import icequill.work.Diagnosis;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** What a diagnosis charged, and the line by which it is taken off its repair. */
public final class DiagnosisPricing {

    private DiagnosisPricing() {
    }

    /** What a visit charged for diagnosis, and for coming out where that is taken off too; as shown, after its discounts. */
    public static MonetaryAmount charged(PricedVisit visit, DiagnosisCredit terms) {
        return Amounts.sum(IntStream.range(0, visit.lines().size())
                .filter(i -> isDiagnosis(visit.lines().get(i), terms)).mapToObj(visit::asShown).toList(),
                visit.currency());
    }

    private static boolean isDiagnosis(PricedLine line, DiagnosisCredit terms) {
        return (line.chargeClass() == ChargeClass.DIAGNOSIS && !line.net().isNegative())
                || (terms.serviceCall() && line.text().key().startsWith(ServiceCallPricing.LINE));
    }

    /** Empty where no diagnosis is taken off. */
    static Optional<PricedLine> line(ResolvedVisit bound) {
        CurrencyUnit currency = bound.rates().currency();
        return bound.visit().terms().diagnosis().flatMap(found -> found.charged().map(known -> {
            Explanation how = new Explanation(Figure.term(0, "").minus(Figure.price(known.amount(), "")),
                    List.of(Phrase.of("reason.diagnosis-credited", new Fact.Day(known.day()))));
            return PricedLine.bare(ChargeClass.DIAGNOSIS, text(found, known), how, currency);
        }));
    }

    private static Phrase text(Diagnosis found, Diagnosis.Charged known) {
        return Phrase.of("line.diagnosis-credited", new Fact.Day(known.day()), new Fact.Text(found.visit()));
    }
}
