package icequill.visits;

import icequill.problem.Place;
import icequill.work.Attendance;
import icequill.work.Finding;
import icequill.work.Outcome;
import icequill.work.Visit;
import icequill.work.VisitLine;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What a visit calls included in an agreement. */
record IncludedWork(Visit visit) {

    boolean isAny() {
        return places().findAny().isPresent();
    }

    /** Where it says so. */
    Stream<Place> places() {
        List<Place> places = new ArrayList<>();
        if (visit.serviceCall() == Outcome.INCLUDED) {
            places.add(visit.place());
        }
        visit.people().stream().filter(IncludedWork::isIncluded).map(Attendance::place).forEach(places::add);
        visit.findings().stream().flatMap(IncludedWork::at).forEach(places::add);
        visit.lines().stream().filter(line -> line.outcome() == Outcome.INCLUDED).map(VisitLine::place)
                .forEach(places::add);
        return places.stream();
    }

    private static boolean isIncluded(Attendance person) {
        return person.spells().stream().anyMatch(spell -> spell.outcome() == Outcome.INCLUDED);
    }

    /** Of a machine. */
    static Stream<Place> at(Finding finding) {
        return finding.tasks().stream().filter(done -> done.outcome() == Outcome.INCLUDED)
                .map(Finding.TaskDone::place);
    }
}
