package icequill.web.visit;

import icequill.web.page.Typing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What was found, done, measured and recommended at each machine. Names of fields end in the machine's id. */
record MachineFields(Typing typing, Kept.Rows kept) {

    private static final List<String> NOTES = List.of("complaint", "cause", "correction", "side", "confirmed");
    private static final List<String> READING = List.of("what", "unit", "before", "after");
    private static final Set<String> SHOWN = Set.of("machine", "complaint", "cause", "correction", "side", "confirmed",
            "tasks", "readings", "recommended", "settled", "chemicals", "refrigerant");

    List<Map<String, Object>> read() {
        List<Map<String, Object>> machines = new ArrayList<>();
        for (String id : typing.texts("machine")) {
            String path = "machines[" + machines.size() + "]";
            Kept before = kept.next("machine", id);
            Map<String, Object> machine = new LinkedHashMap<>(before.but(SHOWN));
            machine.put("machine", id);
            typing.place(path, "machine");
            for (String note : NOTES) {
                typing.text(note + "-" + id).ifPresent(text -> machine.put(note, text));
                typing.place(path + "." + note, note + "-" + id);
            }
            list(machine, "tasks", tasks(id, path));
            list(machine, "readings", readings(id, path));
            list(machine, "recommended", recommended(id, path));
            list(machine, "settled",
                    typing.texts("settled-" + id).stream().map(EarlierRepair::of).map(EarlierRepair::form).toList());
            list(machine, "chemicals", new ChemicalFields(typing, id, before.rows("chemicals")).read(path));
            Map<String, Object> refrigerant = new RefrigerantFields(typing, id).read(path);
            if (!refrigerant.isEmpty()) {
                machine.put("refrigerant", refrigerant);
            }
            machines.add(machine);
        }
        return machines;
    }

    private List<Map<String, Object>> tasks(String id, String path) {
        List<Map<String, Object>> tasks = new ArrayList<>();
        for (String task : typing.texts("task-" + id)) {
            Map<String, Object> row = new LinkedHashMap<>(Map.of("task", task));
            typing.text("bears_" + id + "_" + task).ifPresent(outcome -> row.put("outcome", outcome));
            typing.place(path + ".tasks[" + tasks.size() + "]", "task-" + id);
            tasks.add(row);
        }
        return tasks;
    }

    private List<Map<String, Object>> readings(String id, String path) {
        List<Map<String, Object>> readings = new ArrayList<>();
        for (int i = 0; i < typing.rows("reading",
                READING.stream().map(part -> part + "-" + id).toArray(String[]::new)); i++) {
            String row = "reading" + i;
            typing.unnamed(row + "what-" + id, READING.stream().map(part -> row + part + "-" + id).toList(),
                    "it is not said what was read");
            if (typing.text(row + "what-" + id).isPresent()) {
                Map<String, Object> reading = new LinkedHashMap<>();
                READING.forEach(part -> typing.text(row + part + "-" + id)
                        .or(() -> Optional.of("").filter(none -> part.equals("unit")))
                        .ifPresent(text -> reading.put(part, text)));
                typing.place(path + ".readings[" + readings.size() + "]", row + "what-" + id);
                readings.add(reading);
            }
        }
        return readings;
    }

    private List<Map<String, Object>> recommended(String id, String path) {
        List<Map<String, Object>> recommended = new ArrayList<>();
        for (int i = 0; i < typing.rows("recommended", "-" + id); i++) {
            String field = "recommended" + i + "-" + id;
            String answer = "accepted" + i + "-" + id;
            typing.text(field).ifPresent(text -> {
                typing.place(path + ".recommended[" + recommended.size() + "]", field);
                Map<String, Object> advice = new LinkedHashMap<>(Map.of("text", text));
                advice.put("accepted", typing.text(answer).filter("yes"::equals).isPresent());
                recommended.add(advice);
            });
        }
        return recommended;
    }

    static void list(Map<String, Object> form, String key, List<?> rows) {
        if (!rows.isEmpty()) {
            form.put(key, rows);
        }
    }

    static void fill(Told form, Filling filling) {
        for (Told machine : form.rows("machines")) {
            String id = machine.text("machine").orElse("");
            filling.tick("machine", id);
            NOTES.forEach(note -> filling.put(note + "-" + id, machine.text(note)));
            for (Told task : machine.rows("tasks")) {
                String name = task.text("task").orElse("");
                filling.tick("task-" + id, name);
                filling.put("bears_" + id + "_" + name, task.text("outcome"));
            }
            List<Told> readings = machine.rows("readings");
            for (int i = 0; i < readings.size(); i++) {
                String row = "reading" + i;
                Told reading = readings.get(i);
                READING.forEach(part -> filling.put(row + part + "-" + id, reading.text(part)));
            }
            List<Told> recommended = machine.rows("recommended");
            for (int i = 0; i < recommended.size(); i++) {
                filling.put("recommended" + i + "-" + id, recommended.get(i).text("text"));
                filling.put("accepted" + i + "-" + id,
                        recommended.get(i).text("accepted").map(accepted -> accepted.equals("true") ? "yes" : "no"));
            }
            machine.rows("settled").forEach(earlier -> filling.tick("settled-" + id, EarlierRepair.of(earlier).text()));
            ChemicalFields.fill(machine, id, filling);
            RefrigerantFields.fill(machine, id, filling);
        }
    }
}
