package icequill.answer;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

/** A recorded visit that was taken back. */
public record WithdrawnVisit(String visit, String site, LocalDate day, String reason) {

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("visit", visit);
        view.put("site", site);
        view.put("day", day.toString());
        view.put("reason", reason);
        return view;
    }
}
