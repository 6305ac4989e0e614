package icequill.web.rates;

import icequill.answer.rates.AdoptedRates;
import icequill.answer.rates.RatesList;
import icequill.answer.rates.RatesSheet;
import icequill.office.care.RatesOffice;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.Optional;

/** The versions of the rates, and what is different in the one in force. */
public final class VersionsPage implements Page {

    /** What is told of the rates; {@code now} is empty before any are in force. */
    public record VersionsAnswer(RatesList all, Optional<RatesSheet> now, Optional<String> waiting) {}

    @Override
    public Answer answer(Asked asked) {
        RatesOffice office = RatesOffice.of(asked.book());
        return Answer.of("rates-versions",
                office.list()
                        .map(all -> new VersionsAnswer(all, office.show(Optional.empty()).found(), waiting(office))));
    }

    private static Optional<String> waiting(RatesOffice office) {
        return office.adopt(false).found().filter(folder -> !folder.before().equals(Optional.of(folder.version())))
                .map(AdoptedRates::version);
    }
}
