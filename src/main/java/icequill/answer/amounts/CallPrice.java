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
     * @param travel on the road, where it has a price of its own
     * @param overtime on a long visit, where it costs more, from {@code overtimeAfterMinutes} of one person on
     */
    public record Hour(String grade, MonetaryAmount price, Optional<MonetaryAmount> firstHour,
            Optional<MonetaryAmount> travel, Optional<MonetaryAmount> overtime,
            Optional<Integer> overtimeAfterMinutes, int minimumMinutes) {}

    public CallPrice {
        hours = List.copyOf(hours);
    }

    static CallPrice of(CallCharge call, Language language) {
        return new CallPrice(call.band().id(), call.serviceCall(), call.includes(), call.grades().stream()
                .map(hour -> new Hour(hour.grade().in(language), hour.price(), hour.firstHour(), hour.travel(),
                        hour.overtime().map(CallCharge.Overtime::price),
                        hour.overtime().map(CallCharge.Overtime::after),
                        hour.minimum()))
                .toList(),
                call.least());
    }
}
