package icequill.planner;

/** The flushes whose timers run in a partial schedule. */
final class DueFlushes {

    private final StateLayout layout;
    private final Network network;
    private final LongestPaths paths;
    private final int[] place;

    DueFlushes(StateLayout layout, LongestPaths paths, int[] place) {
        this.layout = layout;
        this.network = layout.network();
        this.paths = paths;
        this.place = place;
    }

    /**
     * Whether somebody can still be back in time for each of them, and whether so many people as there are can share them: a
     * person does two only if one can be begun in time after the other.
     */
    boolean arePossible() {
        int[] due = new int[layout.timers()];
        int count = 0;
        for (int timer = 0; timer < layout.timers(); timer++) {
            if (paths.isOpen(timer + 1)) {
                if (back(timer, timer) > layout.most(timer)) {
                    return false;
                }
                due[count++] = timer;
            }
        }
        return count <= place.length || canBeShared(due, count);
    }

    private boolean canBeShared(int[] due, int count) {
        int pairs = 0;
        int alone = 0;
        for (int i = 0; i < count; i++) {
            boolean paired = false;
            for (int j = 0; j < count; j++) {
                boolean both = i != j && (follows(due[i], due[j]) || follows(due[j], due[i]));
                paired |= both;
                pairs += both && i < j ? 1 : 0;
            }
            alone += paired ? 0 : 1;
        }
        return alone <= place.length && pairs >= count - place.length;
    }

    /** By how many minutes their pourings will have to be put off, if nothing begins before a minute. */
    int lateness(int newest) {
        int minutes = 0;
        for (int timer = 0; timer < layout.timers(); timer++) {
            if (paths.isOpen(timer + 1)) {
                int begin = Math.max(newest, back(timer, -1));
                minutes += Math.max(0, begin - paths.poured(timer) - layout.most(timer));
            }
        }
        return minutes;
    }

    /** The soonest at which the flush of a timer can begin, counted from when another was started; -1 for the beginning. */
    private int back(int timer, int from) {
        int row = from + 1;
        int flush = layout.flush(timer);
        int soonest = network.people[flush] == 0 ? Network.NONE : Integer.MAX_VALUE;
        for (int person = 0; person < place.length; person++) {
            if (layout.isFit(person, flush)) {
                soonest = Math.min(soonest,
                        paths.free(row, person) + network.walks.from(place[person], network.machine[flush]));
            }
        }
        return Math.max(soonest, paths.machineReady(row, flush));
    }

    /** Whether one person can begin one flush in time after another. */
    private boolean follows(int first, int second) {
        int flush = layout.flush(first);
        int other = layout.flush(second);
        int walk = network.walks.between(network.machine[flush], network.machine[other]);
        return network.people[flush] == 0 || network.people[other] == 0
                || back(first, second) + network.duration[flush] + walk <= layout.most(second);
    }
}
