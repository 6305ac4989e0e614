package icequill.outlook;

import icequill.agreement.PlannedVisit;
import icequill.document.CareOptionKind;
import icequill.document.CareOptionScope;
import icequill.plans.Calendars;
import icequill.plans.OpenMonths;
import icequill.plans.PlanContext;
import icequill.plans.PlanSetting;
import icequill.pricer.PricedSlot;
import java.util.List;
import java.util.Optional;

/** Tells what a customer gets for the price of each way of care in the first year. */
record CareOptionScopes(SiteForecast forecast) {

    CareOptionScope of(CareOption way) {
        boolean doCallsClean = forecast.risks().policy().cleans() > 0;
        if (way.kind() == CareOptionKind.PAY_PER_CALL) {
            return new CareOptionScope(0, 0, Optional.of(0), 0, 0, way.catchUp().price(), doCallsClean);
        }
        List<PlannedVisit> planned = way.plan().orElseThrow().year().slots().stream().map(PricedSlot::visit).toList();
        List<PlannedVisit> full = planned.stream().filter(visit -> visit.slot().scope().isFullClean()).toList();
        if (way.kind() == CareOptionKind.INTERVAL) {
            int cleanings = cleanings(way);
            return new CareOptionScope(cleanings, cleanings, Optional.empty(), full.stream().anyMatch(this::isRead)
                    ? cleanings
                    : 0, 0, way.catchUp().price(), doCallsClean);
        }
        return new CareOptionScope(planned.size(), full.size(),
                Optional.of((int) planned.stream().filter(PlannedVisit::filtersDue).count()),
                (int) planned.stream().filter(this::isRead).count(), way.included(), way.catchUp().price(),
                doCallsClean);
    }

    /** Those that fall into the first year. */
    private int cleanings(CareOption way) {
        PlanContext hand = forecast.hand();
        return new Calendars(new OpenMonths(hand.setting().site().season()), hand.request().scope().term().start())
                .inYears(way.care().cleaned().orElseThrow()).getFirst();
    }

    private boolean isRead(PlannedVisit visit) {
        PlanSetting setting = forecast.hand().setting();
        return setting.site().machines().stream()
                .flatMap(machine -> visit.slot().scope().tasksOn(machine, setting.rates().tasks()).stream())
                .anyMatch(task -> !task.procedure().readings().isEmpty());
    }
}
