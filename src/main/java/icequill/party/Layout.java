package icequill.party;

import icequill.problem.Check;
import java.util.List;
import java.util.Set;

/**
 * How the machines of a site stand to each other, and what a visit must heed there.
 *
 * @param walk minutes between two machines for which no way is given
 * @param ways those that take longer or shorter
 * @param neverBothOff pairs of machines of which one must go on making ice while the other is off
 * @param neverAllOff sets of machines, by id, of which one must go on making ice while the others are off
 * @param circulations of machines whose maker gives other minutes than the task does
 */
public record Layout(int walk, List<Way> ways, List<Pair> neverBothOff, List<Set<String>> neverAllOff,
        List<Circulation> circulations) {

    /** Common practice: two minutes with tools in hand. */
    public static final Layout USUAL = new Layout(2, List.of(), List.of(), List.of(), List.of());

    /** Minutes of walking between two machines, by id; none within a room. */
    public record Way(String one, String other, int minutes) {}

    /** Two machines, by id. */
    public record Pair(String one, String other) {}

    /** Minutes that a cleaner may circulate in a machine: counted when it is in, and from when pouring began. */
    public record Circulation(String machine, int least, int most) {
        public Circulation {
            Check.inRange(least, 0, most, "least");
        }
    }

    public Layout {
        ways = List.copyOf(ways);
        neverBothOff = List.copyOf(neverBothOff);
        neverAllOff = neverAllOff.stream().map(Set::copyOf).toList();
        circulations = List.copyOf(circulations);
    }
}
