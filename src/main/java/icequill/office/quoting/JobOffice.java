package icequill.office.quoting;

import icequill.answer.job.JobList;
import icequill.answer.job.JobSheet;
import icequill.answer.job.RecommendedRepairs;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.life.job.JobEvent;
import icequill.life.job.JobEvent.Dropped;
import icequill.life.job.JobEvent.Finished;
import icequill.life.job.JobState;
import icequill.life.job.JobState.Done;
import icequill.office.billing.StandingInvoices;
import icequill.office.register.RegisterOffice;
import icequill.office.writing.PaperNumbers;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.ShopFolder;
import icequill.shop.life.JobLife;
import icequill.shop.life.OpenRepairs;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** The office that sees accepted repairs through: parts, the visit, and whether it is billed. */
public final class JobOffice {

    private final ShopBook book;
    private final LocalDate today;

    private JobOffice(ShopBook book) {
        this.book = book;
        this.today = ShopDay.today(book.folder(), book.clock());
    }

    public static JobOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static JobOffice of(ShopBook book) {
        return new JobOffice(book);
    }

    /**
     * Jobs, those that wait longest first.
     *
     * @param isAll those too that are billed or withdrawn
     */
    public Validated<JobList> jobs(boolean isAll) {
        return book.read(open -> Validated.valid(new JobList(JobLife.numbers(open).stream()
                .flatMap(number -> found(open, number).found().stream()).map(life -> sheet(open, life))
                .filter(job -> isAll || !job.isOver()).sorted(Comparator.comparing(JobSheet::since)
                        .thenComparing(JobSheet::quote))
                .toList())));
    }

    /**
     * Where one stands.
     *
     * @param number of the quote, however it is typed
     */
    public Validated<JobSheet> job(String number) {
        return book.read(open -> found(open, number).map(life -> sheet(open, life)));
    }

    /**
     * Repairs that were recommended and are not done, the oldest first.
     *
     * @param site by id; empty for those of all sites
     */
    public Validated<RecommendedRepairs> recommended(Optional<String> site) {
        ShopFolder shop = BookForms.shop(book);
        return book.read(open -> {
            OpenRepairs repairs = new OpenRepairs(shop, open);
            return site.map(id -> RegisterOffice.found(open, id)
                    .map(entry -> repairs.at(entry.id()))).orElseGet(() -> Validated.valid(repairs.all()))
                    .map(found -> new RecommendedRepairs(
                            found.stream().map(one -> row(open, one)).toList()));
        });
    }

    private RecommendedRepairs.Row row(Reading open, OpenRepairs.One one) {
        return RecommendedRepairs.Row.of(one, open.entries().site(one.site()).orElseThrow().name(), today);
    }

    /** Notes what happened to a job. */
    public Validated<JobSheet> note(String number, JobEvent event) {
        Problems problems = new Problems();
        problems.take(ShopDay.notAhead(event.day(), today, new Place("", 0, "day")));
        if (event instanceof Dropped gone && gone.reason().filter(words -> !words.isBlank()).isEmpty()) {
            problems.add(Code.MISSING, new Place("", 0, "reason"), "no reason is given",
                    "a reason, which the book keeps");
        }
        return problems.or(() -> number).then(valid -> book.write(open -> found(open, number)
                .then(life -> fits(open, life, event)).then(life -> JobState.step(life.state(), event)
                        .then(after -> {
                            open.lifeSteps().add(life.next(event));
                            return JobLife.of(open, life.quote().issued());
                        }).map(after -> sheet(open, after)))));
    }

    /** Whether the visit that is named was done at the site of the job. */
    private static Validated<JobLife> fits(Reading open, JobLife life, JobEvent event) {
        if (!(event instanceof Finished(LocalDate day, String visit))) {
            return Validated.valid(life);
        }
        return open.entries().visit(visit).then(entry -> {
            boolean isThere = life.quote().issued().origin().site().filter(entry.site()::equals).isPresent();
            boolean isDone = !entry.isPlanned() && open.entries().withdrawal(visit).isEmpty();
            return isThere && isDone
                    ? Validated.valid(life)
                    : Validated.invalid(new Problem(Code.NOT_ALLOWED, new Place("", 0, "visit"), isThere
                            ? "visit \"" + visit + "\" is not done"
                            : "visit \"" + visit + "\" was at " + entry.site(),
                            "a visit that was done at the site of the job"));
        });
    }

    private JobSheet sheet(Reading open, JobLife life) {
        List<IssuedPaper> invoices = life.state() instanceof Done(LocalDate since, String visit)
                ? StandingInvoices.among(open.papers().ofVisit(visit))
                : List.of();
        return JobSheet.of(life, invoices.stream().map(IssuedPaper::number).toList(),
                JobStages.of(open, life, invoices), today);
    }

    private static Validated<JobLife> found(Reading open, String number) {
        return PaperNumbers.find(open, number, EnumSet.of(PaperKind.REPAIR_QUOTE))
                .then(issued -> JobLife.of(open, issued));
    }
}
