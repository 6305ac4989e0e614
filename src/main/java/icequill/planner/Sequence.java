package icequill.planner;

import java.util.List;

/**
 * Who does what in which order: all that a timetable needs where everything begins as early as it can.
 *
 * @param end when everything is done
 * @param walking minutes of all people together
 * @param steps by the time at which they begin
 */
record Sequence(int end, int walking, List<Step> steps) {

    /**
     * A task, and the people who do it.
     *
     * @param task by position
     * @param people by number; none where nobody is needed
     * @param begin the minute at which it begins; below 0 for as early as it can
     */
    record Step(int task, List<Integer> people, int begin) {
        Step {
            people = List.copyOf(people);
        }
    }

    /** Whether it says when each task begins. */
    boolean isTimed() {
        return steps.stream().allMatch(step -> step.begin() >= 0);
    }

    Sequence {
        steps = List.copyOf(steps);
    }

    /** Whether it is shorter than another, or as short with less walking. */
    boolean isBetter(Sequence other) {
        return end < other.end || (end == other.end && walking < other.walking);
    }
}
