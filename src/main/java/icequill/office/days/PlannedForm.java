package icequill.office.days;

import icequill.days.DueVisit;
import icequill.days.Going;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.YamlWriter;
import icequill.party.Machine;
import icequill.rates.Rates;
import icequill.shop.FormName;
import icequill.work.Task;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The form of a planned visit that somebody might have written: the work of an agreement, included in its price.
 *
 * @param row in which its day was settled, from 0
 * @param going who comes, all at the same time
 * @param rates whose tasks are done
 */
record PlannedForm(int row, DueVisit due, List<Going> going, LocalDateTime at, Rates rates) {

    private static final String OUTCOME = "outcome";
    private static final String INCLUDED = "included";

    /** @param id under which the book is to have it */
    FormName named(String id) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("format", 1);
        form.put(Form.KIND_KEY, FormKind.PLANNED_VISIT.key());
        form.put(Form.ID_KEY, id);
        form.put("site", due.site().id());
        form.put("serviceCall", INCLUDED);
        form.put("people", going.stream().map(this::attendance).toList());
        form.put("machines", due.site().machines().stream()
                .filter(machine -> due.work().machines().contains(machine.id())).map(this::machine).toList());
        return new FormName.InHand(id, YamlWriter.text(List.of(form)));
    }

    private Map<String, Object> attendance(Going one) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("name", one.person().name());
        row.put("grade", one.person().grade());
        row.put("arrived", at.toString());
        row.put("left", at.plusMinutes(one.minutes()).toString());
        row.put("on", "cleaning");
        row.put(OUTCOME, INCLUDED);
        return row;
    }

    private Map<String, Object> machine(Machine machine) {
        List<Task> tasks = due.work().visit().tasksOn(machine, rates.tasks(), rates.plans().filters());
        return Map.of("machine", machine.id(), "tasks",
                tasks.stream().map(task -> Map.of("task", task.id(), OUTCOME, INCLUDED)).toList());
    }
}
