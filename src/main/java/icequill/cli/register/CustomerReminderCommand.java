package icequill.cli.register;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.CustomerName;
import icequill.cli.terminal.MailOption;
import icequill.cli.terminal.PaperCommand;
import icequill.document.Reminder;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import java.util.Arrays;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Writes a reminder of what one account owes. */
@Command(name = "reminder", mixinStandardHelpOptions = true, description = "Writes a polite letter about invoices that are past due on a day (--date), as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill customer reminder fernhill-hotels",
        "  icequill customer reminder mercado-del-mar --level 2 --date 2026-08-31 --html"})
public final class CustomerReminderCommand extends PaperCommand {

    @Mixin
    private CustomerName customer = new CustomerName();

    @Option(names = "--level", paramLabel = "N", defaultValue = "1", converter = LevelReader.class, description = "1 for the first reminder, 2 for the second, 3 for the last. Default: 1.")
    private Reminder.Level level = Reminder.Level.FIRST;

    @Mixin
    private MailOption mail = new MailOption();

    public CustomerReminderCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected boolean isMailed() {
        return mail.isSet();
    }

    @Override
    protected String named() {
        return customer.text();
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return office.accounts().reminder(from, options, level);
    }

    /** Reads a level as people write it. */
    static final class LevelReader implements ITypeConverter<Reminder.Level> {
        @Override
        public Reminder.Level convert(String text) {
            return Arrays.stream(Reminder.Level.values())
                    .filter(known -> text.equals(String.valueOf(known.number()))).findFirst()
                    .orElseThrow(() -> new TypeConversionException(
                            "there is no level \"" + text + "\"; write 1, 2 or 3"));
        }
    }
}
