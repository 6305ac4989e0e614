package icequill.document;

import icequill.party.Machine;
import icequill.work.Finding;
import java.util.List;

/**
 * What was found and done at one machine.
 *
 * @param tasks done, named in the paper's language
 */
public record MachineReport(Machine machine, Finding finding, List<String> tasks) {

    public MachineReport {
        tasks = List.copyOf(tasks);
    }
}
