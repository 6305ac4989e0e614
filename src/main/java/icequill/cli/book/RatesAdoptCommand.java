package icequill.cli.book;

import icequill.answer.rates.AdoptedRates;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ExitCode;
import icequill.office.care.RatesOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Puts rates into force. */
@Command(name = "adopt", mixinStandardHelpOptions = true, description = "Puts the rates, templates and settings of this folder into force for every office that shares the book. First it tells what is different from those in force, file by file and value by value; with --yes it does it.", footerHeading = "%nExamples:%n", footer = {
        "  icequill rates adopt          what it would change", "  icequill rates adopt --yes    changes it"})
public final class RatesAdoptCommand extends BookCommand {

    @Option(names = "--yes", description = "Does it.")
    private boolean yes;

    public RatesAdoptCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Validated<AdoptedRates> result = RatesOffice.of(folder(), clock()).adopt(yes);
        int status = show(result, this::tell);
        return result.found().filter(adopted -> !adopted.isAdopted()).isPresent() ? asked() : status;
    }

    private void tell(AdoptedRates adopted) {
        printLines(adopted.lines());
    }

    private int asked() {
        return printout().json()
                ? ExitCode.PROBLEMS.status()
                : printout().problems(List.of(new Problem(Code.MISSING, Place.NOWHERE, "nothing was adopted yet",
                        "--yes, once what is different is what you mean")));
    }
}
