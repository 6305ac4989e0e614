package icequill.planner;

import icequill.problem.Check;
import icequill.work.Qualification;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The technicians who come, all alike but for what they may be given to do and when they are there.
 *
 * @param members from 1 to {@link #MOST} people
 * @param rest the break that everybody is due; empty for none
 */
public record Crew(List<Member> members, Optional<Rest> rest) {

    public static final int MOST = 6;

    /** Stays to the end, whenever that is. */
    public static final int TO_THE_END = Integer.MAX_VALUE;

    /**
     * One of them.
     *
     * @param from the minute of the visit at which he comes, from 0
     * @param until the minute by which he has left; {@link Crew#TO_THE_END} for one who stays
     */
    public record Member(Set<Qualification> qualified, int from, int until) {
        public Member {
            qualified = Set.copyOf(qualified);
            Check.inRange(from, 0, until, "from");
        }

        /** Somebody who is there all the time. */
        public Member(Set<Qualification> qualified) {
            this(qualified, 0, TO_THE_END);
        }

        boolean isThere(int begin, int over) {
            return from <= begin && over <= until;
        }
    }

    /**
     * A break: nobody works and walks for longer than so many minutes before he has it.
     *
     * @param after minutes from his first task, or from the end of his last break, to the end of a task, from 1
     * @param minutes without a task and without a walk, from 1
     */
    public record Rest(int after, int minutes) {
        public Rest {
            Check.inRange(after, 1, Integer.MAX_VALUE, "after");
            Check.inRange(minutes, 1, Integer.MAX_VALUE, "minutes");
        }
    }

    public Crew {
        members = List.copyOf(members);
        Check.inRange(members.size(), 1, MOST, "size");
    }

    /** People who are there all the time, with no break, by what each is qualified for. */
    public Crew(List<Set<Qualification>> qualified) {
        this(qualified.stream().map(Member::new).toList(), Optional.empty());
    }

    /** So many people, each qualified for everything. */
    public Crew(int size) {
        this(Collections.nCopies(Math.max(0, size), EnumSet.allOf(Qualification.class)));
    }

    public int size() {
        return members.size();
    }

    /** Whether somebody may be given a task that needs this. */
    boolean isFit(int person, Set<Qualification> needs) {
        return members.get(person).qualified().containsAll(needs);
    }

    /** How many may be given it. */
    int fit(Set<Qualification> needs) {
        return Math.toIntExact(members.stream().filter(each -> each.qualified().containsAll(needs)).count());
    }

    /** Whether nobody must leave before all is done. */
    boolean staysToTheEnd() {
        return members.stream().allMatch(each -> each.until() == TO_THE_END);
    }

    /** The same people, none of whom must leave. */
    Crew staying() {
        return new Crew(members.stream().map(each -> new Member(each.qualified(), each.from(), TO_THE_END)).toList(),
                rest);
    }

    /** Whether somebody else has come by a minute. */
    boolean hasCompany(int person, int begin) {
        for (int other = 0; other < members.size(); other++) {
            if (other != person && members.get(other).from() <= begin) {
                return true;
            }
        }
        return false;
    }

    /** Whether somebody else is there all the while. */
    boolean isAccompanied(int person, int begin, int over) {
        for (int other = 0; other < members.size(); other++) {
            if (other != person && members.get(other).isThere(begin, over)) {
                return true;
            }
        }
        return false;
    }
}
