package icequill.rates;

import icequill.agreement.Plans;
import icequill.work.Task;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;

/** All prices of one day, plain: nothing in them depends on a date any more. */
public record Rates(CurrencyUnit currency, LaborRates labor, ServiceCallRates serviceCall, List<Material> materials,
        List<Task> tasks, Adjustments adjustments, Plans plans) {

    public Rates {
        materials = List.copyOf(materials);
        tasks = List.copyOf(tasks);
    }

    public Optional<Material> material(String id) {
        return materials.stream().filter(material -> material.id().equals(id)).findFirst();
    }

    public Optional<Task> task(String id) {
        return tasks.stream().filter(task -> task.id().equals(id)).findFirst();
    }
}
