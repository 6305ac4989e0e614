package icequill.cli.offer;

import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.agreement.AgreementLifeOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is done with an agreement by --yes, and only shown without. */
abstract class AgreementStepCommand extends BookCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @Option(names = "--yes", description = "Does it.")
    private boolean yes;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    AgreementStepCommand(Clock clock) {
        super(clock);
    }

    /** What is asked for of the agreement that is named, on a day. */
    interface Step<T> {
        Validated<T> of(AgreementLifeOffice office, String agreement, LocalDate today, boolean isTrial);
    }

    /**
     * Takes the step, or shows what it would come to.
     *
     * @param undone that nothing was done yet
     */
    final <T> int step(Step<T> step, Function<T, List<String>> lines, String undone) {
        Path folder = pricing(folder());
        Validated<T> result = step.of(AgreementLifeOffice.of(folder, clock(), reader.language()), agreement.text(),
                ShopDay.today(folder, clock()), !yes);
        int status = show(result, answer -> printLines(lines.apply(answer).stream()));
        return yes || result.found().isEmpty() ? status : asked(undone);
    }

    private int asked(String undone) {
        return printout().json()
                ? ExitCode.PROBLEMS.status()
                : printout().problems(List.of(new Problem(Code.MISSING, Place.NOWHERE, undone,
                        "--yes, once this is what you mean")));
    }
}
