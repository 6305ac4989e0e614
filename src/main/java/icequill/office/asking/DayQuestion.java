package icequill.office.asking;

import icequill.problem.Validated;
import icequill.rates.Rates;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * On which day it was, by which everything else is priced.
 *
 * @param rates of a day
 */
record DayQuestion(Asking asking, LocalDate today, Function<LocalDate, Validated<Rates>> rates,
        BiFunction<LocalDate, Rates, Turn> next) {

    Turn.Ask first() {
        return asking.needed(asking.question("day").proposing(today.toString()),
                answer -> day(answer).map(this::taken).orElseGet(() -> asking.wrong("day", answer, today.toString())));
    }

    static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException noDay) {
            return Optional.empty();
        }
    }

    private Turn taken(LocalDate day) {
        if (day.isAfter(today)) {
            return asking.wrong("future", day.toString(), today.toString());
        }
        return switch (rates.apply(day)) {
        case Validated.Valid<Rates> valid -> next.apply(day, valid.value());
        case Validated.Invalid<Rates> invalid -> asking.wrong(invalid.problems().getFirst());
        };
    }
}
