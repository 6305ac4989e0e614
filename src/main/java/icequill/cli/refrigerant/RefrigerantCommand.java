package icequill.cli.refrigerant;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on refrigerant. */
@Command(name = "refrigerant", mixinStandardHelpOptions = true, subcommands = {
        RefrigerantLogCommand.class,
        RefrigerantRecordCommand.class}, description = "Shows what technicians added to machines and recovered from them, as recorded visits say it, and how fast machines leak.", footerHeading = "%nExamples:%n", footer = {
                "  icequill refrigerant log                     all of the shop",
                "  icequill refrigerant log --site hotel-fernhill --from 2026-01-01",
                "  icequill refrigerant record hotel-fernhill --lang es"})
public final class RefrigerantCommand extends Noun {}
