package icequill.plans;

import icequill.document.CallCharge;
import icequill.money.Amounts;
import icequill.pricer.PricedLine;
import icequill.pricer.PricedVisit;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Grade;
import icequill.work.Band;
import icequill.work.ChargeClass;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** What calls to a site cost in every labor band. */
public record CallCharges(PlanSetting setting, LocalDate day) {

    public Validated<List<CallCharge>> all() {
        Problems problems = new Problems();
        List<CallCharge> charges = new ArrayList<>();
        for (Band band : setting.rates().labor().bands()) {
            problems.take(new HypotheticalCall(setting.shop(), setting.site(), setting.rates()).price(day, band,
                    HypotheticalCall.Work.of(1, ChargeClass.REPAIR, List.of()))).map(priced -> charge(band, priced))
                    .ifPresent(charges::add);
        }
        return problems.or(() -> charges);
    }

    private CallCharge charge(Band band, PricedVisit shortest) {
        List<MonetaryAmount> comingOut = shortest.lines().stream()
                .filter(line -> line.chargeClass() == ChargeClass.TRAVEL).map(PricedLine::net).toList();
        return new CallCharge(band, Amounts.sum(comingOut, shortest.currency()),
                Optional.of(setting.rates().serviceCall().includes()).filter(minutes -> minutes > 0),
                setting.rates().labor().grades().stream()
                        .map(grade -> hour(grade, band)).toList(),
                shortest.net(), Optional.of(setting.rates().serviceCall().eachDay()).filter(each -> each));
    }

    private CallCharge.Hour hour(Grade grade, Band band) {
        MonetaryAmount price = grade.hourly().work(band);
        return new CallCharge.Hour(grade.name(), price, grade.minimum(band),
                grade.hourly().firstHour(band), grade.hourly().travel(band),
                setting.rates().labor().counting().overtime()
                        .map(over -> new CallCharge.Overtime(over.after(), grade.hourly().work(over.band())))
                        .filter(over -> over.price().isGreaterThan(price)));
    }
}
