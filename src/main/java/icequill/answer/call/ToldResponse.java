package icequill.answer.call;

import icequill.life.call.Response;
import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * How soon somebody came.
 *
 * @param promised by when somebody was to be there
 * @param arrived when the first person did
 * @param minutes from the call to the arrival, in real time
 * @param kept as it stands now: a promise is missed too while nobody came, and the time is over
 */
public record ToldResponse(Optional<ZonedDateTime> promised, Optional<ZonedDateTime> arrived,
        Optional<Integer> minutes, Response.Kept kept) {

    public static ToldResponse of(Response response, ZonedDateTime now) {
        return new ToldResponse(response.promised(), response.arrived(),
                response.took().map(took -> Math.toIntExact(took.toMinutes())), response.at(now));
    }
}
