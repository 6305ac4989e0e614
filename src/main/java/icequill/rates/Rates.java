package icequill.rates;

import icequill.agreement.Plans;
import icequill.work.Task;
import java.util.List;
import javax.money.CurrencyUnit;

/** All prices of one day, plain: nothing in them depends on a date any more. */
public record Rates(CurrencyUnit currency, LaborRates labor, ServiceCallRates serviceCall, List<Material> materials,
        List<Task> tasks, Adjustments adjustments, Plans plans) {

    public Rates {
        materials = List.copyOf(materials);
        tasks = List.copyOf(tasks);
    }
}
