package icequill.answer.amounts;

import icequill.document.CallCharge;
import icequill.party.Language;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * What a call costs in a labor band.
 *
 * @param band by id
 * @param least that it comes to
 */
public record CallPrice(String band, MonetaryAmount serviceCall, List<Hour> hours, MonetaryAmount least) {

    /** What an hour of one grade costs. */
    public record Hour(String grade, MonetaryAmount price, int minimumMinutes) {}

    public CallPrice {
        hours = List.copyOf(hours);
    }

    static CallPrice of(CallCharge call, Language language) {
        return new CallPrice(call.band().id(), call.serviceCall(), call.grades().stream()
                .map(hour -> new Hour(hour.grade().in(language), hour.price(), hour.minimum())).toList(),
                call.least());
    }
}
