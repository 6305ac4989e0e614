package icequill.cli.book;

import icequill.answer.Reprint;
import icequill.answer.paper.PaperCopies;
import icequill.answer.paper.Reprints;
import icequill.answer.rates.Rework;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.ExtraOptions;
import icequill.office.care.PaperOffice;
import icequill.office.care.ReworkOffice;
import icequill.problem.Validated;
import icequill.request.Extras;
import java.time.Clock;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Prints an issued paper again. */
@Command(name = "reprint", mixinStandardHelpOptions = true, description = "Makes sure that a paper's PDF is there byte for byte as it was issued; where it is gone or was changed, it is copied out of the book that offices share, or printed again. With --html, --xml or --bare it writes such copies into papers/ instead.", footerHeading = "%nExamples:%n", footer = {
        "  icequill reprint INV-2026-00012",
        "  icequill reprint INV-2026-00012 --bare   without data, for mail gateways",
        "  icequill reprint --all                   every paper of the book into this folder",
        "  icequill reprint INV-2026-00012 --rework does it come to the same, worked out again?"})
public final class ReprintCommand extends BookCommand {

    @ArgGroup(multiplicity = "1")
    private Which which = new Which();

    /** One paper, or all. */
    static final class Which {

        @Parameters(paramLabel = "NUMBER", description = "The paper's number.")
        private String number = "";

        @Option(names = "--all", description = "Every paper of the book, those of other offices too.")
        private boolean all;
    }

    @Mixin
    private ExtraOptions extras = new ExtraOptions();

    @Option(names = "--rework", description = "Instead, works the paper out again by the rates of then, from what the book held then, and says whether it comes to what was issued. Nothing is written.")
    private boolean rework;

    public ReprintCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        String number = which.number;
        if (which.all && (rework || !extras.extras().equals(Extras.NONE))) {
            throw new ParameterException(spec().commandLine(), "--all goes with no other way to print");
        }
        if (rework) {
            Validated<Rework> result = ReworkOffice.of(folder(), clock()).rework(number);
            int status = show(result, again -> printLines(again.lines()));
            return result.found().filter(again -> !again.isSame()).isPresent() ? ExitCode.PROBLEMS.status() : status;
        }
        PaperOffice office = PaperOffice.of(folder(), clock());
        if (which.all) {
            return show(office.reprintAll().map(Reprints::new), this::tell);
        }
        if (!extras.extras().equals(Extras.NONE)) {
            return show(office.copies(number, extras.extras()).map(PaperCopies::new), this::wrote);
        }
        return show(office.reprint(number), this::tell);
    }

    private void wrote(PaperCopies copies) {
        copies.files().forEach(file -> print("Wrote " + file));
    }

    private void tell(Reprint paper) {
        paper.aside()
                .ifPresent(changed -> printout().err().println("Note: the file was changed; it lies in " + changed));
        print(paper.file().toString());
        print(paper.words());
    }

    private void tell(Reprints made) {
        made.papers().forEach(this::tell);
        print(made.papers().isEmpty()
                ? "All papers are there as issued."
                : made.papers().size() + " made anew; all others are there.");
    }
}
