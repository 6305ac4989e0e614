package icequill.office.asking;

import icequill.life.repair.RecommendedRepair;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.rates.Rates;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.work.Task;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;

/**
 * Where and when it was, and what may be chosen from there.
 *
 * @param repairs that were recommended at the site before, and are not done
 */
record Setting(Asking asking, Site site, ZoneId zone, LocalDate day, Rates rates, List<RecommendedRepair> repairs) {

    Sentences sentences() {
        return asking.sentences();
    }

    /** The machines at which something was done. */
    List<Machine> machines(Draft draft) {
        return draft.texts("machines", "machine").stream().flatMap(id -> site.machine(id).stream()).toList();
    }

    /** What was recommended for a machine before the day, and is not done. */
    List<RecommendedRepair> repairs(Machine machine) {
        return repairs.stream().filter(repair -> repair.machine().equals(machine.id()) && !repair.day().isAfter(day))
                .toList();
    }

    String name(Machine machine) {
        return new MachineName(machine, sentences()).text();
    }

    /** What may be done to a machine, in the order in which it is done. */
    List<Task> tasks(Machine machine) {
        return rates.tasks().stream().filter(task -> task.suits(machine))
                .sorted(Comparator.comparingInt(Task::order)).toList();
    }
}
