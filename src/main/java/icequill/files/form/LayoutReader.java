package icequill.files.form;

import icequill.files.pricing.TasksReader;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.party.Layout;
import icequill.problem.Code;
import java.util.Optional;
import java.util.Set;

/**
 * Makes the layout of a site from its file.
 *
 * @param machines every id that the file gives a machine
 */
record LayoutReader(Fields fields, Set<String> machines) {

    Layout read() {
        return new Layout(fields.integer("walk").orElse(Layout.USUAL.walk()),
                fields.children("ways").stream().flatMap(entry -> way(entry).stream()).toList(),
                fields.children("neverBothOff").stream().flatMap(entry -> pair(entry).stream()).toList(),
                fields.children("circulation").stream().flatMap(entry -> circulation(entry).stream()).toList());
    }

    private Optional<Layout.Way> way(Fields entry) {
        return pair(entry).flatMap(pair -> entry.integer("minutes")
                .map(minutes -> new Layout.Way(pair.one(), pair.other(), minutes)));
    }

    private Optional<Layout.Pair> pair(Fields entry) {
        Names.refer(entry, "one", "machine", machines);
        Names.refer(entry, "other", "machine", machines);
        Optional<Layout.Pair> pair = entry.id("one")
                .flatMap(one -> entry.id("other").map(other -> new Layout.Pair(one, other)));
        if (pair.filter(same -> same.one().equals(same.other())).isPresent()) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("other"),
                    "\"" + pair.get().one() + "\" is named twice", "two machines");
            return Optional.empty();
        }
        return pair;
    }

    private Optional<Layout.Circulation> circulation(Fields entry) {
        Names.refer(entry, "machine", "machine", machines);
        return TasksReader.timer(entry).flatMap(timer -> entry.id("machine")
                .map(machine -> new Layout.Circulation(machine, timer.least(), timer.most())));
    }
}
