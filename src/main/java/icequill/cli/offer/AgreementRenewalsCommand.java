package icequill.cli.offer;

import icequill.answer.register.RenewalList;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.cli.terminal.Table;
import icequill.office.RenewalOffice;
import icequill.problem.Problem;
import icequill.shop.ShopDay;
import java.time.Clock;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists the renewals to come. */
@Command(name = "renewals", mixinStandardHelpOptions = true, description = "Lists the agreements that renew themselves, with the days on which customers are to be told by the laws on record. Check with your adviser.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement renewals                      terms that end within a year",
        "  icequill agreement renewals --until 2027-06-30"})
public final class AgreementRenewalsCommand extends BookCommand {

    @Option(names = "--until", paramLabel = "DAY", description = "Terms that end up to this day; a year from today if left out.")
    private @Nullable LocalDate until;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public AgreementRenewalsCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        LocalDate today = ShopDay.today(folder(), clock());
        return show(
                RenewalOffice.of(folder(), clock(), reader.language()).upcoming(today,
                        until == null ? today.plusYears(1) : until),
                this::tell);
    }

    private void tell(RenewalList list) {
        print(list.rows().isEmpty() ? "None." : Table.of(list.head(), list.rows(), list.head().size()));
        list.renewals().forEach(row -> printLines(Stream.concat(row.why().stream(),
                row.notices().stream().filter(notice -> !notice.served()).flatMap(notice -> notice.why().stream()))
                .map(text -> row.agreement() + ": " + text)));
        list.problems().stream().map(Problem::text).forEach(printout().err()::println);
    }
}
