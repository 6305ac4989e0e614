package icequill.cli.visit;

import icequill.answer.job.JobSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.PaperName;
import icequill.explain.ConstantKey;
import icequill.life.job.JobEvent;
import icequill.office.quoting.JobOffice;
import icequill.shop.ShopDay;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What all commands share that note what happened to a job. */
abstract class JobNoting extends BookCommand {

    @Mixin
    private PaperName quote = new PaperName();

    @Option(names = "--on", paramLabel = "DAY", description = "On which day; today if left out.")
    private @Nullable LocalDate day;

    JobNoting(Clock clock) {
        super(clock);
    }

    /** What happened on the day. */
    abstract JobEvent event(LocalDate when);

    @Override
    public final Integer call() {
        JobEvent event = event(day == null ? ShopDay.today(folder(), clock()) : day);
        return show(JobOffice.of(folder(), clock()).note(quote.text(), event), this::tell);
    }

    private void tell(JobSheet job) {
        print(job.quote() + ": " + ConstantKey.words(job.state().name()) + " since " + job.since()
                + job.expected().map(due -> ", parts expected " + due).orElse(""));
    }
}
