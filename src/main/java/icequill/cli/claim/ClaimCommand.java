package icequill.cli.claim;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on claims. */
@Command(name = "claim", mixinStandardHelpOptions = true, subcommands = {ClaimListCommand.class, ClaimNoteCommand.class,
        ClaimPayCommand.class, ClaimRefuseCommand.class, ClaimReturnCommand.class, ClaimSendCommand.class,
        ClaimShowCommand.class}, description = "Claims what warranties pay: noted from a visit, sent, paid or refused. A claim is called as its visit is.", footerHeading = "%nExamples:%n", footer = {
                "  icequill claim list                          what waits, and visits that nobody claimed",
                "  icequill claim list --all"})
public final class ClaimCommand extends Noun {}
