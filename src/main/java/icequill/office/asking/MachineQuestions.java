package icequill.office.asking;

import icequill.life.repair.RecommendedRepair;
import icequill.party.Machine;
import icequill.work.Task;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** At which machines something was done, and for each what was found, done and recommended. */
record MachineQuestions(Setting setting, Function<Draft, Turn> next) {

    Turn first(Draft draft) {
        List<Machine> machines = setting.site().machines();
        if (machines.isEmpty()) {
            return next.apply(draft);
        }
        Question question = asking().question("machines")
                .proposing(machines.size() == 1 ? Optional.of("1") : Optional.empty());
        return asking().someOf(question, Picks.numbered(machines.stream().map(setting::name).toList()), Picks::numbers,
                "numbers", places -> each(places.stream().map(machines::get).toList(), draft));
    }

    private Asking asking() {
        return setting.asking();
    }

    private Turn each(List<Machine> left, Draft draft) {
        return left.isEmpty()
                ? next.apply(draft)
                : complaint(left.getFirst(), draft,
                        row -> each(left.subList(1, left.size()), draft.adding("machines", row)));
    }

    private Turn complaint(Machine machine, Draft draft, Function<Draft, Turn> then) {
        Optional<String> asked = draft.values().get("asked") instanceof Map<?, ?> call
                && call.get("symptom") instanceof String symptom ? Optional.of(symptom) : Optional.empty();
        return note("complaint", machine, asked, complaint -> note("cause", machine, Optional.empty(),
                cause -> note("correction", machine, Optional.empty(), correction -> settled(machine,
                        Draft.EMPTY.with("machine", machine.id()).withAny("complaint", complaint)
                                .withAny("cause", cause).withAny("correction", correction),
                        then))));
    }

    private Turn note(String key, Machine machine, Optional<String> proposal, Function<Optional<String>, Turn> then) {
        return asking().noteOrNone(asking().question(key, setting.name(machine)).proposing(proposal), then);
    }

    /** What was recommended before and is done now; nobody is asked where nothing was. */
    private Turn settled(Machine machine, Draft row, Function<Draft, Turn> then) {
        List<RecommendedRepair> open = setting.repairs(machine);
        return open.isEmpty()
                ? tasks(machine, row, then)
                : asking().someOf(asking().question("settled", setting.name(machine)),
                        Picks.numbered(open.stream().map(this::told).toList()), Picks::numbers, "numbers", places -> {
                            Draft settled = row;
                            for (int place : places) {
                                settled = settled.adding("settled",
                                        Draft.EMPTY.with("visit", open.get(place).visit())
                                                .with("recommended", open.get(place).text()));
                            }
                            return tasks(machine, settled, then);
                        });
    }

    private String told(RecommendedRepair repair) {
        return repair.text() + " (" + setting.sentences().formats().day(repair.day()) + ")";
    }

    private Turn tasks(Machine machine, Draft row, Function<Draft, Turn> then) {
        List<Task> tasks = setting.tasks(machine);
        if (tasks.isEmpty()) {
            return recommended(machine, row, then);
        }
        return asking().someOf(asking().question("tasks", setting.name(machine)),
                Picks.lettered(tasks.stream().map(task -> setting.sentences().in(task.name())).toList()),
                Picks::letters, "letters",
                places -> new ChemicalQuestions(setting, machine).each(
                        places.stream().sorted().map(tasks::get).toList(),
                        done(places.stream().sorted().map(tasks::get).toList(), row),
                        noted -> recommended(machine, noted, then)));
    }

    private static Draft done(List<Task> tasks, Draft row) {
        Draft done = row;
        for (Task task : tasks) {
            done = done.adding("tasks", Draft.EMPTY.with("task", task.id()));
        }
        return done;
    }

    private Turn recommended(Machine machine, Draft row, Function<Draft, Turn> then) {
        return note("recommended", machine, Optional.empty(), text -> text.isEmpty()
                ? then.apply(row)
                : accepted(text.get(), accepted -> recommended(machine, row.adding("recommended",
                        Draft.EMPTY.with("text", text.get()).with("accepted", accepted)), then)));
    }

    private Turn accepted(String text, Function<Boolean, Turn> then) {
        return asking().oneOf(asking().question("accepted", text),
                List.of(setting.sentences().word("ask.yes"), setting.sentences().word("ask.no")),
                place -> then.apply(place == 0));
    }
}
