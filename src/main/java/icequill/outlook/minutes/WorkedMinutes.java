package icequill.outlook.minutes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What visits took against what was planned.
 *
 * @param counted those that say something
 * @param farOff those that took thrice as long as planned, or a third of it, and are left out
 */
public record WorkedMinutes(List<VisitTime> counted, List<VisitTime> farOff) {

    /** Of all visits, in any order. */
    public static WorkedMinutes of(List<VisitTime> visits) {
        return new WorkedMinutes(visits.stream().filter(visit -> !visit.isFarOff()).toList(),
                visits.stream().filter(VisitTime::isFarOff).toList());
    }

    public WorkedMinutes {
        counted = List.copyOf(counted);
        farOff = List.copyOf(farOff);
    }

    /** Empty where no visit says anything. */
    public Optional<Times> all() {
        return counted.isEmpty() ? Optional.empty() : Optional.of(Times.of(counted));
    }

    /** Of visits that somebody did alone, by name. */
    public Map<String, Times> byPerson() {
        return by(VisitTime::people);
    }

    /** Of visits whose machines were all of one model, by model. */
    public Map<String, Times> byMachine() {
        return by(visit -> visit.machines().stream().distinct().toList());
    }

    private Map<String, Times> by(Function<VisitTime, List<String>> what) {
        Map<String, List<VisitTime>> groups = new TreeMap<>();
        counted.stream().filter(visit -> what.apply(visit).size() == 1).forEach(visit -> groups
                .computeIfAbsent(what.apply(visit).getFirst(), first -> new ArrayList<>()).add(visit));
        Map<String, Times> times = new TreeMap<>();
        groups.forEach((name, visits) -> times.put(name, Times.of(visits)));
        return times;
    }

    /**
     * For each task that visits had, in the order of ids.
     *
     * @param now attended minutes as the rates have them, by task
     */
    public List<TaskProposal> proposals(Map<String, Integer> now) {
        if (counted.isEmpty()) {
            return List.of();
        }
        GroupTimes found = GroupTimes.of(counted);
        Map<String, TaskProposal> proposals = new TreeMap<>();
        for (int i = 0; i < found.times().size(); i++) {
            List<String> group = found.groups().groups().get(i);
            Times times = found.times().get(i);
            group.forEach(task -> Optional.ofNullable(now.get(task))
                    .ifPresent(minutes -> proposals.put(task, TaskProposal.of(task, minutes, times, group))));
        }
        return List.copyOf(proposals.values());
    }
}
