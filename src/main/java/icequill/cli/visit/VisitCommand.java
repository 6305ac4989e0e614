package icequill.cli.visit;

import icequill.cli.days.VisitAnnounceCommand;
import icequill.cli.days.VisitCalendarCommand;
import icequill.cli.days.VisitDaysCommand;
import icequill.cli.days.VisitDueCommand;
import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on visits. */
@Command(name = "visit", mixinStandardHelpOptions = true, subcommands = {VisitAddCommand.class,
        VisitAnnounceCommand.class,
        VisitCalendarCommand.class, VisitDaysCommand.class, VisitDueCommand.class, VisitEarningsCommand.class,
        VisitListCommand.class, VisitMinutesCommand.class, VisitNewCommand.class, VisitRecordCommand.class,
        VisitShowCommand.class,
        VisitTimetableCommand.class,
        VisitWithdrawCommand.class,
        VisitWorksheetCommand.class}, description = "Keeps the visits of the shop's book, planned and done, and writes their papers.", footerHeading = "%nExamples:%n", footer = {
                "  icequill visit new hotel-fernhill                 asks what was done, and stores it",
                "  icequill visit add today.yaml                     into the book",
                "  icequill visit list --month 2026-05 --state done  done, and not billed",
                "  icequill visit worksheet summer-cleaning-bakery   for the technician",
                "  icequill visit record spring-cleaning-bakery      for the customer and the inspector"})
public final class VisitCommand extends Noun {}
