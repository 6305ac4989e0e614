package icequill.visits;

import icequill.money.Amounts;
import icequill.pricer.DiagnosisPricing;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.DiagnosisCredit;
import icequill.rates.Rates;
import icequill.work.Diagnosis;
import icequill.work.Visit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A diagnosis that is to be taken off its repair.
 *
 * @param diagnosis priced by the rates of its own day
 */
public record CreditedDiagnosis(VisitContext diagnosis) {

    /** The repair with what the diagnosis charged, or why it is not taken off by the rates of the repair's day. */
    public Validated<Visit> off(Visit repair, Rates rates) {
        Problems problems = new Problems();
        Place place = repair.terms().diagnosis().map(Diagnosis::place).orElseThrow();
        Optional<DiagnosisCredit> terms = rates.adjustments().diagnosisCredit();
        String id = diagnosis.visit().id();
        LocalDate day = diagnosis.visit().day();
        long after = ChronoUnit.DAYS.between(day, repair.day());
        if (terms.isEmpty()) {
            problems.add(Code.NOT_ALLOWED, place, "the rates of " + repair.day() + " take no diagnosis off its repair",
                    "diagnosisCredit: in pricing/, or no diagnosis here");
        }
        if (!diagnosis.site().id().equals(repair.site())) {
            problems.add(Code.NOT_ALLOWED, place, "visit \"" + id + "\" was at \"" + diagnosis.site().id() + "\"",
                    "a diagnosis at \"" + repair.site() + "\"");
        }
        if (after < 0) {
            problems.add(Code.WRONG_ORDER, place, "visit \"" + id + "\" was on " + day + ", after this one",
                    "an earlier visit");
        }
        terms.filter(found -> after > found.days()).ifPresent(found -> problems.add(Code.OUT_OF_RANGE, place,
                "visit \"" + id + "\" was on " + day + ", " + after + " days before", "at most " + found.days()));
        Optional<MonetaryAmount> charged = terms
                .map(found -> DiagnosisPricing.charged(diagnosis.taxed().priced(), found));
        charged.filter(amount -> !amount.isPositive()).ifPresent(amount -> problems.add(Code.NOT_ALLOWED, place,
                "visit \"" + id + "\" charged " + Amounts.plain(amount) + " for diagnosis",
                "a visit with labor on diagnosis that was charged"));
        return problems.or(() -> repair.less(new Diagnosis.Charged(day, charged.orElseThrow())));
    }
}
