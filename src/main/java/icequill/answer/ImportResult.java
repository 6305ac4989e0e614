package icequill.answer;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What was taken in from lists, or would be.
 *
 * @param dryRun whether nothing was stored
 */
public record ImportResult(int customers, int sites, int machines, int changed, boolean dryRun) {

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("customers", customers);
        view.put("sites", sites);
        view.put("machines", machines);
        view.put("changed", changed);
        view.put("dryRun", dryRun);
        return view;
    }
}
