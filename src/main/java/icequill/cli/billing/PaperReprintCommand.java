package icequill.cli.billing;

import icequill.answer.Reprint;
import icequill.answer.paper.PaperCopies;
import icequill.answer.paper.Reprints;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.CopyOptions;
import icequill.office.care.PaperOffice;
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
        "  icequill paper reprint INV-2026-00012",
        "  icequill paper reprint INV-2026-00012 --bare   without data, for mail gateways",
        "  icequill paper reprint --all                   every paper of the book into this folder"})
public final class PaperReprintCommand extends BookCommand {

    @ArgGroup(multiplicity = "1")
    private Which which = new Which();

    /** One paper, or all. */
    static final class Which {

        @Parameters(paramLabel = "NUMBER", description = "The number of the paper (of INV-2026-00012 also 12, where no other paper has it), or its PDF.")
        private String number = "";

        @Option(names = "--all", description = "Every paper of the book, those of other offices too.")
        private boolean all;
    }

    @Mixin
    private CopyOptions copy = new CopyOptions();

    @Option(names = "--xml", description = "Write an invoice, credit note or quote as UBL 2.1 beside the PDF.")
    private boolean xml;

    public PaperReprintCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Extras extras = copy.extras(xml);
        PaperOffice office = PaperOffice.of(folder(), clock());
        if (which.all) {
            if (!extras.equals(Extras.NONE)) {
                throw new ParameterException(spec().commandLine(), "--all goes with no other way to print");
            }
            return show(office.reprintAll().map(Reprints::new), this::tell);
        }
        return extras.equals(Extras.NONE)
                ? show(office.reprint(which.number), this::tell)
                : show(office.copies(which.number, extras).map(PaperCopies::new), this::wrote);
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
