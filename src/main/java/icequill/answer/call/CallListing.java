package icequill.answer.call;

import icequill.life.call.Response;
import java.util.List;

/**
 * Calls, the newest first.
 *
 * @param responses of all that fit
 * @param hasMore whether there are older ones that fit
 */
public record CallListing(List<CallRow> calls, Responses responses, boolean hasMore) {

    /**
     * How many of the promises were kept; calls that were withdrawn count nowhere.
     *
     * @param missed also those to which nobody came yet, and the time is over
     * @param waiting nobody came yet, and there is still time
     */
    public record Responses(int kept, int missed, int waiting, int notPromised) {}

    public CallListing {
        calls = List.copyOf(calls);
    }

    /** The newest of these. */
    public static CallListing of(List<CallRow> all, int most) {
        return new CallListing(all.stream().limit(most).toList(),
                new Responses(count(all, Response.Kept.KEPT), count(all, Response.Kept.MISSED),
                        count(all, Response.Kept.WAITING), count(all, Response.Kept.NOT_PROMISED)),
                all.size() > most);
    }

    private static int count(List<CallRow> all, Response.Kept kept) {
        return (int) all.stream().filter(row -> row.stage() != CallStage.WITHDRAWN && row.response().kept() == kept)
                .count();
    }
}
