package icequill.cli.billing;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on payments. */
@Command(name = "payment", mixinStandardHelpOptions = true, subcommands = {PaymentAddCommand.class,
        PaymentAllotCommand.class, PaymentListCommand.class, PaymentShowCommand.class,
        PaymentWithdrawCommand.class}, description = "Keeps in the shop's book what customers paid, and what for.", footerHeading = "%nExamples:%n", footer = {
                "  icequill payment add mill-lane 350.00 --way check --reference \"check 2207\"",
                "  icequill payment add mill-lane 350.00 --for \"INV-2026-00012 | amount: 301.13; INV-2026-00015\"",
                "  icequill payment add mill-lane 87.10 --back yes --for CN-2026-00003",
                "  icequill payment allot mill-lane-2026-07-02 --for INV-2026-00021",
                "  icequill payment list mill-lane",
                "  icequill payment withdraw mill-lane-2026-07-02 --reason \"The check was returned.\""})
public final class PaymentCommand extends Noun {}
