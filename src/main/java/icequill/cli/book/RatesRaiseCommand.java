package icequill.cli.book;

import icequill.answer.rates.RaisedPrices;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.NamedValue;
import icequill.office.care.RaiseOffice;
import icequill.office.care.RaiseWish;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Raises prices from a day on. */
@Command(name = "raise", mixinStandardHelpOptions = true, description = "Raises prices by percent from a day on: each file of pricing/ that holds some ends on that day, and a further one beside it begins, with all else and all comments as they are; files that begin later are raised as they stand, so that no price falls back, and rate sheets, which were agreed with somebody, stay. First it tells each price before and after; with --yes it writes the files. What they would have made of past visits: icequill rates try.", footerHeading = "%nExamples:%n", footer = {
        "  icequill rates raise labor=4:0.50 service-call=4:1 --from 2028-01-01         to the nearest 0.50 and 1.00",
        "  icequill rates raise filters=3 parts=3 --from 2028-01-01 --yes"})
public final class RatesRaiseCommand extends BookCommand {

    @Parameters(arity = "1..*", paramLabel = "GROUP=PERCENT[:STEP]", converter = NamedValue.Reader.class, description = "Which prices: labor, service-call, miles, chemicals, filters, parts, disposal, modifiers, fees or flat; by how much; and to which step, left out to the cent.")
    private List<NamedValue> groups = List.of();

    @Option(names = "--from", required = true, paramLabel = "DAY", description = "The first day of the new prices, as 2028-01-01.")
    private LocalDate from = LocalDate.MIN;

    @Option(names = "--yes", description = "Does it.")
    private boolean yes;

    public RatesRaiseCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Validated<RaisedPrices> result = NamedValue.byName(groups)
                .then(each -> RaiseOffice.of(folder(), clock()).raise(new RaiseWish(from, each), yes));
        int status = show(result, raised -> printLines(raised.lines().stream()));
        return result.found().filter(raised -> !raised.isWritten()).isPresent() ? asked() : status;
    }

    private int asked() {
        return printout().json()
                ? ExitCode.PROBLEMS.status()
                : printout().problems(List.of(new Problem(Code.MISSING, Place.NOWHERE, "nothing was written yet",
                        "--yes, once these are the prices that you mean")));
    }
}
