package icequill.pricer;

import icequill.pricer.ResolvedVisit.Worker;
import icequill.problem.Code;
import icequill.rates.Grade;
import icequill.rates.Rates;
import icequill.work.Attendance;
import icequill.work.Visit;
import icequill.work.Visit.Named;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Who came to a visit, and what is wrong with the times and grades that it says of them. */
record WorkerNames(Visit visit, Rates rates, KnownNames names) {

    /** Who left and came back is one person. */
    List<Worker> workers() {
        Map<Object, List<Attendance>> byPerson = new LinkedHashMap<>();
        for (Attendance person : visit.people()) {
            Object who = person.known().<Object>map(name -> name).orElseGet(Object::new);
            byPerson.computeIfAbsent(who, name -> new ArrayList<>()).add(person);
        }
        return byPerson.values().stream().flatMap(stays -> worker(stays).stream()).toList();
    }

    private Optional<Worker> worker(List<Attendance> stays) {
        List<Attendance> inOrder = stays.stream().sorted(Comparator.comparing(Attendance::arrived)).toList();
        for (int i = 1; i < inOrder.size(); i++) {
            checkStays(inOrder.get(i - 1), inOrder.get(i));
        }
        List<Optional<Grade>> grades = stays.stream().map(this::grade).toList();
        return grades.getFirst().map(grade -> new Worker(inOrder, grade));
    }

    private void checkStays(Attendance before, Attendance after) {
        if (after.overlaps(before)) {
            names.problems().add(Code.OVERLAP, after.place(),
                    after.person() + " is here twice at the same time: from " + before.arrived().toLocalDateTime()
                            + " to " + before.left().toLocalDateTime() + ", and from "
                            + after.arrived().toLocalDateTime(),
                    "each person once at any time");
        }
        if (!after.grade().equals(before.grade())) {
            names.problems().add(Code.NOT_ALLOWED, after.place(),
                    after.person() + " has the grade \"" + after.grade() + "\" here, and \"" + before.grade()
                            + "\" at " + before.place().reference(),
                    "one grade for each person of a visit");
        }
    }

    private Optional<Grade> grade(Attendance person) {
        if (person.spells().stream().anyMatch(spell -> !spell.outcome().isDone())) {
            names.problems().add(Code.NOT_ALLOWED, person.place(), "time that was spent is marked declined",
                    "charged, included, warranty, callback or goodwill");
        }
        Named name = new Named(person.grade(), person.place());
        return names.find(name, "grade", rates.labor().grades(), Grade::id);
    }
}
