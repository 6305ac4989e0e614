package icequill.cli.visit;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.BookingOptions;
import icequill.cli.terminal.CustomerLanguage;
import icequill.cli.terminal.PaperName;
import icequill.office.billing.IssueOptions;
import icequill.office.billing.StageBilling;
import icequill.tax.Stage;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Mixin;

/** What all commands share that bill a part of a job. */
abstract class JobStageCommand extends BookCommand {

    private final Stage.Kind kind;

    @Mixin
    private PaperName quote = new PaperName();

    @Mixin
    private CustomerLanguage language = new CustomerLanguage();

    @Mixin
    private BookingOptions booking = new BookingOptions();

    JobStageCommand(Clock clock, Stage.Kind kind) {
        super(clock);
        this.kind = kind;
    }

    @Override
    public final Integer call() {
        return booking.show(StageBilling.of(folder(), clock()).issue(quote.text(), kind,
                new IssueOptions(booking.day(folder(), clock()), language.language(), booking.booking(false)))
                .map(List::of), printout());
    }
}
