package icequill.office.care;

import icequill.answer.TrailSheet;
import icequill.ledger.Reading;
import icequill.ledger.trail.TrailQuestion;
import icequill.ledger.trail.TrailRow;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.UnknownName;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** The office that tells who changed what in the book. */
public final class TrailOffice {

    private final ShopBook book;
    private final ZoneId zone;

    private TrailOffice(ShopBook book, ZoneId zone) {
        this.book = book;
        this.zone = zone;
    }

    public static TrailOffice of(Path folder, Clock clock) {
        return new TrailOffice(ShopBook.of(folder, clock), ShopDay.zone(folder, clock));
    }

    /**
     * The changes that are wanted, the newest first.
     *
     * @param entry the id of a customer, site, machine or visit, or a paper's number
     * @param asked days where the shop is
     * @param who did it
     * @param most how many at most, from 1
     */
    public Validated<TrailSheet> trail(Optional<String> entry, AskedPeriod asked, Optional<String> who,
            int most) {
        return asked.period().then(period -> {
            TrailQuestion question = new TrailQuestion(entry, period.from().map(this::begin),
                    period.until().map(day -> begin(day.plusDays(1))), who, most + 1);
            return book.read(open -> found(open, question).map(rows -> TrailSheet.of(rows, most, zone)));
        });
    }

    private Instant begin(LocalDate day) {
        return day.atStartOfDay(zone).toInstant();
    }

    private static Validated<List<TrailRow>> found(Reading open, TrailQuestion question) {
        List<TrailRow> rows = open.trail().find(question);
        return rows.isEmpty() && question.entry().filter(entry -> !open.trail().knows(entry)).isPresent()
                ? Validated.invalid(UnknownName.name("trail of", question.entry().get(), open.trail().entries(),
                        "the id of a customer, site, machine or visit, or the number of a paper"))
                : Validated.valid(rows);
    }
}
