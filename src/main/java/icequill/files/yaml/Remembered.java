package icequill.files.yaml;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What was worked out lately, for those who ask the same again: a command asks several times for what its shop's files say, and an office
 * once for each request; to work such a thing out again takes longer than all else that many of them do. For what always comes to the same,
 * and cannot be changed. For many threads.
 */
public final class Remembered<K, V> {

    /** A shop's files some times over. */
    static final int FILES = 100;

    private final int most;
    private final Map<K, V> known;

    /** @param most that are remembered */
    public Remembered(int most) {
        this.most = most;
        this.known = new LinkedHashMap<>(most, 0.75f, true);
    }

    /** What it comes to, worked out where it is not known; two threads may both do so. */
    public V of(K asked, Supplier<V> work) {
        V before = get(asked);
        if (before != null) {
            return before;
        }
        V found = work.get();
        put(asked, found);
        return found;
    }

    private synchronized @Nullable V get(K asked) {
        return known.get(asked);
    }

    /** In the place of what nobody asked for the longest. */
    private synchronized void put(K asked, V found) {
        known.put(asked, found);
        if (known.size() > most) {
            known.remove(known.keySet().iterator().next());
        }
    }
}
