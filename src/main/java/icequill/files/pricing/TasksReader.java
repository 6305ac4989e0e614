package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.party.Machine;
import icequill.problem.Code;
import icequill.work.Caution;
import icequill.work.ChargeClass;
import icequill.work.DustLevel;
import icequill.work.MachineState;
import icequill.work.Part;
import icequill.work.Procedure;
import icequill.work.Qualification;
import icequill.work.Reading;
import icequill.work.Task;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Makes the tasks from a file of kind tasks.
 *
 * @param materials every id that a file of materials mentions; empty when none could be read, and then doses go unchecked
 */
public record TasksReader(Fields fields, Set<String> materials) {

    List<Task> read() {
        return Names.list(fields.children("tasks"), this::task);
    }

    private Optional<Task> task(String id, Fields entry) {
        Optional<ChargeClass> chargeClass = entry.constant("class", ChargeClass.class);
        Optional<MachineState> state = entry.constant("state", MachineState.class);
        if (chargeClass.isEmpty() || state.isEmpty()) {
            return Optional.empty();
        }
        attended(entry);
        return entry.wording("name").map(name -> new Task(id, name, entry.wording("done"),
                constants(entry, "makes", Machine.Make.class),
                constants(entry, "coolings", Machine.Cooling.class), chargeClass.get(), state.get(),
                entry.integer("order").orElse(0), entry.integer("attended").orElse(0),
                entry.integer("unattended").orElse(0), entry.integer("people").orElse(1),
                entry.constant("part", Part.class).orElse(Part.OTHER),
                entry.constant("dust", DustLevel.class).orElse(DustLevel.NEITHER),
                entry.children("doses").stream().flatMap(dose -> dose(dose).stream()).toList(),
                entry.leaves("cautions").stream()
                        .flatMap(leaf -> Fields.constantOf(leaf.text(), Caution.class).stream())
                        .toList(),
                constants(entry, "needs", Qualification.class), procedure(entry), entry.place("id")));
    }

    /** No chemical goes in or is flushed out with nobody at the machine. */
    private static void attended(Fields entry) {
        boolean chemical = entry.child("timer").isPresent() || entry.integer("flushes").orElse(0) > 0
                || !entry.children("doses").isEmpty();
        if (chemical && entry.integer("attended").filter(minutes -> minutes == 0).isPresent()) {
            entry.problems().add(Code.OUT_OF_RANGE, entry.place("attended"),
                    "nobody would be at the machine while a chemical goes in or is flushed out",
                    "at least 1 minute for a task with a timer, flushes or doses");
        }
    }

    private static Procedure procedure(Fields entry) {
        return new Procedure(entry.child("timer").flatMap(TasksReader::timer), entry.integer("flushes").orElse(0),
                entry.leaves("record").stream()
                        .flatMap(leaf -> Fields.constantOf(leaf.text(), Reading.class).stream()).toList());
    }

    public static Optional<Procedure.Timer> timer(Fields entry) {
        Optional<Integer> least = entry.integer("least");
        Optional<Integer> most = entry.integer("most");
        if (least.isEmpty() || most.isEmpty() || least.get() < 0) {
            return Optional.empty();
        }
        if (least.get() > most.get()) {
            entry.problems().add(Code.WRONG_ORDER, entry.place("least"),
                    "at least " + least.get() + " minutes, but at most " + most.get(), "the smaller number first");
        }
        // What was reported stands in as the other way round, so that nobody is told of a missing timer too.
        return Optional.of(
                new Procedure.Timer(Math.min(least.get(), most.get()), Math.max(least.get(), most.get())));
    }

    private static <E extends Enum<E>> Set<E> constants(Fields entry, String key, Class<E> type) {
        return entry.leaves(key).stream().flatMap(leaf -> Fields.constantOf(leaf.text(), type).stream())
                .collect(Collectors.toSet());
    }

    private Optional<Task.Dose> dose(Fields entry) {
        Names.refer(entry, "material", "material", materials);
        List<Task.Step> steps = entry.children("perMachine").stream().flatMap(step -> step.number("upTo")
                .flatMap(upTo -> step.number("amount").map(amount -> new Task.Step(upTo, amount, step.number("water"))))
                .stream()).toList();
        return entry.text("material").map(material -> new Task.Dose(material, steps, entry.place("material")));
    }
}
