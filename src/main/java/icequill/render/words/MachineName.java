package icequill.render.words;

import icequill.party.Machine;

/** How a paper names a machine: where it stands, its model and its serial number. */
public record MachineName(Machine machine, Sentences sentences) {

    public String text() {
        String serial = machine.serial().map(number -> " · " + sentences.word("machine.serial") + " " + number)
                .orElse("");
        return Sentences.capitalized(machine.where()) + " · " + machine.model() + serial;
    }
}
