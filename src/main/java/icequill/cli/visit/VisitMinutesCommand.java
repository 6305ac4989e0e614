package icequill.cli.visit;

import icequill.answer.minutes.MinutesSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.CustomerLanguage;
import icequill.cli.terminal.DayOption;
import icequill.cli.terminal.PeriodOptions;
import icequill.cli.terminal.Table;
import icequill.office.care.MinutesOffice;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows the owner what visits took against what was planned. */
@Command(name = "minutes", mixinStandardHelpOptions = true, description = "Shows the owner what visits took against what is planned for their tasks: in all, by task, by model of machine and by person, each with how many visits say so and how sure it is; and proposes minutes for pricing/tasks.yaml.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit minutes", "  icequill visit minutes --from 2026-01-01"})
public final class VisitMinutesCommand extends BookCommand {

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private CustomerLanguage language = new CustomerLanguage();

    public VisitMinutesCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = folder();
        return show(MinutesOffice.of(folder, clock()).of(period.period(), day.in(folder, clock()),
                language.language()), this::print);
    }

    private void print(MinutesSheet sheet) {
        sheet.lead().forEach(this::print);
        table(sheet.title("tasks"), sheet.taskHeads(), sheet.tasks(), 2);
        table(sheet.title("machines"), sheet.heads(), sheet.machines(), 1);
        table(sheet.title("people"), sheet.heads(), sheet.people(), 1);
        print(sheet.title("people.note"));
        print("");
        sheet.settings().forEach(this::print);
    }

    /** @param left how many columns are words */
    private void table(String title, List<String> heads, List<List<String>> rows, int left) {
        if (!rows.isEmpty()) {
            print("");
            print(title);
            print(Table.of(heads, rows, left));
        }
    }
}
