package icequill.planner;

import icequill.problem.Check;
import icequill.problem.Place;
import icequill.work.DustLevel;
import icequill.work.MachineState;
import icequill.work.Procedure;
import icequill.work.Qualification;
import java.util.Optional;
import java.util.Set;

/**
 * One task at one machine, as far as a timetable is concerned.
 *
 * @param machine by id
 * @param name as it appears in the timetable
 * @param order its place among the machine's tasks, low first; tasks of equal order follow in any sequence, or side by side
 * @param people it takes at the same time, from 1
 * @param needs what everybody at it must be qualified for
 * @param attended minutes with them at the machine, from 0 to 480
 * @param unattended minutes that must pass by themselves afterwards, from 0 to 480
 * @param timer the minutes that a chemical circulates: it counts from when it is in ({@code least}) and from when pouring began
 *        ({@code most}), up to the first task that flushes
 * @param accompanied whether somebody else must be on site meanwhile, wherever he is at work
 * @param flushes whether it flushes a chemical out; such a task, and one with a timer, has attended minutes and a state
 */
public record MachineTask(String machine, String name, MachineState state, int order, int people,
        Set<Qualification> needs, int attended, int unattended, Optional<Procedure.Timer> timer, boolean flushes,
        DustLevel dust, boolean accompanied, Place place) {

    /** The most minutes that a task, or the wait after it, may take. */
    public static final int LONGEST = 480;

    public MachineTask {
        needs = Set.copyOf(needs);
        Check.inRange(people, 1, Crew.MOST, "people");
        Check.inRange(attended, 0, LONGEST, "attended");
        Check.inRange(unattended, 0, LONGEST, "unattended");
        Check.that(!(flushes || timer.isPresent()) || (state != MachineState.ANY && attended > 0),
                "a chemical needs the pump and somebody at the machine: " + name);
    }

    /** Minutes that must pass after the attended ones before the machine is ready for its next task. */
    int pause() {
        return Math.max(unattended, timer.map(Procedure.Timer::least).orElse(0));
    }

    /** Whether the machine must be in one state for this and in another for that. */
    boolean clashes(MachineTask other) {
        return state != MachineState.ANY && other.state != MachineState.ANY && state != other.state;
    }

    /** Whether a timetable cannot tell the two apart but by their machines. */
    boolean isLike(MachineTask other) {
        return state == other.state && order == other.order && people == other.people && needs.equals(other.needs)
                && attended == other.attended
                && unattended == other.unattended && timer.equals(other.timer) && flushes == other.flushes
                && dust == other.dust && accompanied == other.accompanied;
    }
}
