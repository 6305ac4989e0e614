package icequill.answer.history;

import icequill.render.words.Sentences;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/**
 * Days from the first to the last; empty for as long as there is anything.
 *
 * @param until the last day
 */
public record Period(Optional<LocalDate> from, Optional<LocalDate> until) {

    public static Period of(YearMonth month) {
        return new Period(Optional.of(month.atDay(1)), Optional.of(month.atEndOfMonth()));
    }

    /** A whole month by its name; empty where no bound is set. */
    Optional<String> words(Sentences sentences) {
        if (from.isEmpty() && until.isEmpty()) {
            return Optional.empty();
        }
        return from.map(YearMonth::from).filter(month -> equals(of(month)))
                .map(month -> sentences.word("history.month", sentences.word("month." + month.getMonthValue()),
                        String.valueOf(month.getYear())))
                .or(() -> Optional.of(sentences.word(from.isEmpty()
                        ? "history.until"
                        : until.isEmpty() ? "history.from" : "history.from-until", day(from, sentences),
                        day(until, sentences))));
    }

    private static String day(Optional<LocalDate> day, Sentences sentences) {
        return day.map(sentences.formats()::day).orElse("");
    }
}
