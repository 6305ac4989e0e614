package icequill.forecast.stops;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Results that take long, kept for the next who asks: ways of care, horizons and guesses of one site share many. All are forgotten
 * when there are {@value #MOST}. Safe for use by many threads.
 *
 * @param <K> all that the result depends on
 */
final class KeptResults<K, V> {

    private static final int MOST = 1000;

    private final Map<K, V> found = new ConcurrentHashMap<>();

    V get(K asked, Function<? super K, ? extends V> work) {
        if (found.size() >= MOST) {
            found.clear();
        }
        return found.computeIfAbsent(asked, work);
    }
}
