package icequill.answer.register;

import icequill.answer.Listing;
import java.util.List;
import java.util.Optional;

/** Machines of the book. */
public record MachineList(List<Row> machines) implements Listing {

    public MachineList {
        machines = List.copyOf(machines);
    }

    /** One of them. */
    public record Row(String site, String id, String model, Optional<String> serial) {
        private List<String> cells() {
            return List.of(site, id, model, serial.orElse(""));
        }
    }

    /** Only those that hold the text somewhere, in capitals or not. */
    public MachineList with(String text) {
        return new MachineList(machines.stream().filter(one -> Listing.holds(one.cells(), text)).toList());
    }

    @Override
    public List<String> head() {
        return List.of("site", "id", "model", "serial");
    }

    @Override
    public List<List<String>> rows() {
        return machines.stream().map(Row::cells).toList();
    }
}
