package icequill.answer.amounts;

import icequill.document.CallCharge;
import icequill.party.Language;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a call costs in a labor band.
 *
 * @param band by id
 * @param includedMinutes at the site that the service call pays for
 * @param least that it comes to
 */
public record CallPrice(String band, MonetaryAmount serviceCall, Optional<Integer> includedMinutes,
        List<Hour> hours, MonetaryAmount least) {

    /**
     * What an hour of one grade costs.
     *
     * @param firstHour of a visit, where it has a price of its own
     */
    public record Hour(String grade, MonetaryAmount price, Optional<MonetaryAmount> firstHour, int minimumMinutes) {}

    public CallPrice {
        hours = List.copyOf(hours);
    }

    static CallPrice of(CallCharge call, Language language) {
        return new CallPrice(call.band().id(), call.serviceCall(), call.includes(), call.grades().stream()
                .map(hour -> new Hour(hour.grade().in(language), hour.price(), hour.firstHour(), hour.minimum()))
                .toList(),
                call.least());
    }
}
