package icequill.office.billing;

import icequill.answer.BookedPaper;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.function.Supplier;

/** Which days a paper may bear: none to come, and none before the newest of its series without a reason. */
record IssueDates(ShopBook book) {

    /** That the end of a visit is still to come. */
    Problems stillToCome(String visit, ZonedDateTime ended) {
        Problems problems = new Problems();
        if (ended.toInstant().isAfter(book.clock().instant())) {
            problems.add(Code.OUT_OF_RANGE, Place.NOWHERE,
                    "visit \"" + visit + "\" ends " + ended.toLocalDateTime() + ", which is still to come",
                    "a visit that was made; one to come says form: planned-visit");
        }
        return problems;
    }

    /**
     * Issues a paper if it may bear the day, and notes the reason of one that is dated back.
     *
     * @param backdate why an earlier day than that of the paper before it
     */
    Validated<IssuedPaper> issue(Transaction open, PaperKind kind, LocalDate date, Optional<String> backdate,
            Supplier<Validated<IssuedPaper>> issue) {
        Optional<LocalDate> newest = newest(open, kind, date).filter(date::isBefore);
        Problems problems = new Problems();
        LocalDate today = ShopDay.today(book.folder(), book.clock());
        if (date.isAfter(today)) {
            problems.add(Code.OUT_OF_RANGE, Place.NOWHERE, "dated " + date + ", but today is " + today,
                    "today or an earlier day");
        }
        if (newest.isPresent() && backdate.filter(reason -> !reason.isBlank()).isEmpty()) {
            problems.add(new Problem(Code.WRONG_ORDER, Place.NOWHERE,
                    "dated " + date + ", but the newest " + BookedPaper.words(kind) + " bears " + newest.get(),
                    "that day or a later one; else --backdate with the reason, which is kept"));
        }
        return problems.or(issue).then(done -> done).map(paper -> {
            newest.flatMap(later -> backdate)
                    .ifPresent(reason -> open.register().backdated(paper.number(), reason));
            return paper;
        });
    }

    private Optional<LocalDate> newest(Reading open, PaperKind kind, LocalDate date) {
        return open.papers().newest(book.series(kind, date.getYear()));
    }
}
