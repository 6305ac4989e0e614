package icequill.office.care;

import icequill.answer.history.Period;
import icequill.ledger.entries.VisitEntry;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The visits of a book that were done and not withdrawn. */
record DoneVisits(ShopBook book) {

    /** Those of a period, by their beginning; that there are none is a problem. */
    Validated<List<VisitEntry>> of(AskedPeriod period) {
        return of(period, Optional.empty());
    }

    /** The same of one site, by its id. */
    Validated<List<VisitEntry>> of(AskedPeriod period, Optional<String> site) {
        return period.period().then(days -> book.read(open -> Validated.valid(open.entries().visits().stream()
                .filter(entry -> isWithin(days, entry.began().toLocalDate()) && !entry.isForgotten()
                        && site.filter(id -> !id.equals(entry.site())).isEmpty()
                        && open.entries().withdrawal(entry.id()).isEmpty())
                .toList()))).then(entries -> entries.isEmpty()
                        ? Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "no visit was done on these days",
                                "other days; see: icequill visit list"))
                        : Validated.valid(entries));
    }

    private static boolean isWithin(Period days, LocalDate day) {
        return days.from().filter(day::isBefore).isEmpty() && days.until().filter(day::isAfter).isEmpty();
    }
}
