package icequill.cli.visit;

import icequill.answer.TimetableSheet;
import icequill.cli.terminal.Printout;
import icequill.cli.terminal.ShopOptions;
import icequill.cli.terminal.Table;
import icequill.cli.terminal.VisitName;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.TickedTimes;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes the timetable of one planned visit. */
@Command(name = "timetable", mixinStandardHelpOptions = true, description = "Finds the shortest safe timetable for a planned visit and prints it: who is at which machine when.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit timetable summer-cleaning-bakery",
        "  icequill visit timetable autumn-condensers-hotel --crew 3 --json",
        "  icequill visit timetable summer-cleaning-bakery --done \"proof-room pour=10:24\" --now 10:30",
        "  icequill visit timetable summer-cleaning-bakery --then noon-visit --drive 25"})
public final class VisitTimetableCommand implements Callable<Integer> {

    private static final int TEXT_COLUMNS = 4;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ShopOptions options = new ShopOptions();

    @Mixin
    private VisitName visit = new VisitName();

    @Option(names = "--crew", paramLabel = "N", description = "For so many people, from 1 to 6. Default: those whom the visit names.")
    private @Nullable Integer crew;

    @Option(names = "--ics", paramLabel = "FILE", description = "Also write the ends of waits as alarms for a phone (iCalendar).")
    private @Nullable Path alarms;

    @Option(names = "--done", paramLabel = "\"MACHINE TASK=TIME\"", description = "Of a visit that runs: a task and when it was over, by the clock at the site; what comes before it at its machine is taken to be over too. The rest is planned anew, flushes first. Give it once for each task.")
    private List<String> done = List.of();

    @Option(names = "--now", paramLabel = "TIME", description = "From when on the rest is planned. Default: the last time of --done.")
    private @Nullable String now;

    @Mixin
    private NextVisit next = new NextVisit();

    @Override
    public Integer call() {
        Printout printout = Printout.of(spec.commandLine(), options.json());
        OptionalInt size = crew == null ? OptionalInt.empty() : OptionalInt.of(crew);
        Path target = alarms;
        Office office = options.office(printout.pricing(options.folderOf(Path.of(visit.text()))));
        TickedTimes ticked = new TickedTimes(done, Optional.ofNullable(now));
        Validated<TimetableSheet> planned = next.named(options::form)
                .map(then -> office.plan(options.form(visit.text()), then, next.drive(), size, ticked,
                        options.language()))
                .orElseGet(() -> office.plan(options.form(visit.text()), size, ticked, options.language()));
        return printout.show(
                planned
                        .then(sheet -> target == null
                                ? Validated.valid(sheet)
                                : sheet.writeAlarms(target).map(written -> sheet)),
                sheet -> print(sheet, printout));
    }

    private void print(TimetableSheet sheet, Printout printout) {
        if (printout.json()) {
            printout.answer(sheet);
            return;
        }
        text(sheet, printout);
        for (Optional<TimetableSheet> after = sheet.next(); after.isPresent(); after = after.get().next()) {
            printout.out().println();
            printout.out().println(after.get().title());
            printout.out().println();
            text(after.get(), printout);
        }
        if (alarms != null) {
            printout.out().println("Wrote the alarms to " + alarms);
        }
    }

    private static void text(TimetableSheet sheet, Printout printout) {
        printout.out().println(Table.of(sheet.chart(), 2));
        printout.out().println();
        printout.out().println(Table.of(sheet.head(), sheet.rows(), TEXT_COLUMNS));
        printout.out().println();
        sheet.notes().forEach(printout.out()::println);
    }
}
