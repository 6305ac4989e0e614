package icequill.planner;

import icequill.problem.Check;
import icequill.work.Qualification;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The technicians who come, all alike but for what they may be given to do.
 *
 * @param qualified what each is qualified for; from 1 to {@link #MOST} people
 */
public record Crew(List<Set<Qualification>> qualified) {

    public static final int MOST = 6;

    public Crew {
        qualified = qualified.stream().map(Set::copyOf).toList();
        Check.inRange(qualified.size(), 1, MOST, "size");
    }

    /** So many people, each qualified for everything. */
    public Crew(int size) {
        this(Collections.nCopies(Math.max(0, size), EnumSet.allOf(Qualification.class)));
    }

    public int size() {
        return qualified.size();
    }

    /** Whether somebody may be given a task that needs this. */
    boolean isFit(int person, Set<Qualification> needs) {
        return qualified.get(person).containsAll(needs);
    }

    /** How many may be given it. */
    int fit(Set<Qualification> needs) {
        return Math.toIntExact(qualified.stream().filter(each -> each.containsAll(needs)).count());
    }
}
