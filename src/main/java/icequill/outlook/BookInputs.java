package icequill.outlook;

import icequill.document.Outlook.Input;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.Cause;
import icequill.forecast.inputs.SiteVisits;

/** Says what a forecast takes from the shop's own visits. */
final class BookInputs {

    private BookInputs() {
    }

    /** The calls of the last twelve months by what they were for; where the book is younger, that it is too young to tell. */
    static Input calls(SiteVisits book) {
        SiteVisits.Calls calls = book.calls();
        return new Input(calls.isWhole()
                ? Phrase.of("outlook.in.book-calls", Fact.number(calls.all(), "call"), number(calls, Cause.CONDENSER),
                        number(calls, Cause.WATER), number(calls, Cause.RANDOM), Fact.number(calls.unknown(), ""))
                : Phrase.of("outlook.in.book-young"), origin(book));
    }

    private static Fact number(SiteVisits.Calls calls, Cause cause) {
        return Fact.number(calls.of(cause), "");
    }

    /** From so many visits since a day. */
    static Phrase origin(SiteVisits book) {
        return Phrase.of("outlook.origin.book", Fact.number(book.visits(), "visit"), new Fact.Day(book.since()));
    }
}
