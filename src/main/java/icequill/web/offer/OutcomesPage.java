package icequill.web.offer;

import icequill.answer.quote.QuoteOutcomes;
import icequill.office.care.AskedPeriod;
import icequill.office.quoting.QuoteOffice;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.Optional;

/** Quotes won and lost, and why. */
public final class OutcomesPage implements Page {

    /** What its page shows. */
    public record Shown(String month, QuoteOutcomes outcomes) {}

    @Override
    public Answer answer(Asked asked) {
        AskedPeriod period = new AskedPeriod(asked.month(), Optional.empty(), Optional.empty());
        return Answer.of(QuoteOffice.of(asked.book()).outcomes(period, asked.reader().today()),
                found -> new Answer.Shown("outcomes", new Shown(asked.text("month").orElse(""), found), found));
    }
}
