package icequill.cli.visit;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.MailOption;
import icequill.cli.terminal.PaperCommand;
import icequill.cli.terminal.VisitName;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes the record of one visit. */
@Command(name = "record", mixinStandardHelpOptions = true, description = "Writes the record of a visit, for the customer and the health inspector and without prices, as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit record spring-cleaning-bakery",
        "  icequill visit record spring-cleaning-bakery --lang es --html"})
public final class VisitRecordCommand extends PaperCommand {

    @Mixin
    private VisitName visit = new VisitName();

    @Mixin
    private MailOption mail = new MailOption();

    public VisitRecordCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected boolean isMailed() {
        return mail.isSet();
    }

    @Override
    protected String named() {
        return visit.text();
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return office.record(from, options);
    }
}
