package icequill.files.form;

import icequill.files.pricing.TasksReader;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.files.yaml.Tree;
import icequill.party.Layout;
import icequill.problem.Code;
import icequill.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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
                fields.children("neverAllOff").stream().flatMap(entry -> set(entry).stream()).toList(),
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

    private Optional<Set<String>> set(Fields entry) {
        List<Tree.Leaf> named = entry.leaves("machines");
        named.stream().filter(leaf -> !machines.isEmpty() && !machines.contains(leaf.text())).forEach(leaf -> entry
                .problems().add(Problem.unknownName(leaf.place(), "machine", leaf.text(), machines)));
        Set<String> set = named.stream().map(Tree.Leaf::text).collect(Collectors.toSet());
        if (!named.isEmpty() && (set.size() < named.size() || set.size() < 2)) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("machines"),
                    set.size() < named.size() ? "a machine is named twice" : "one machine alone is no set",
                    "two to six machines, each once");
            return Optional.empty();
        }
        return Optional.of(set).filter(found -> !found.isEmpty());
    }

    private Optional<Layout.Circulation> circulation(Fields entry) {
        Names.refer(entry, "machine", "machine", machines);
        return TasksReader.timer(entry).flatMap(timer -> entry.id("machine")
                .map(machine -> new Layout.Circulation(machine, timer.least(), timer.most())));
    }
}
