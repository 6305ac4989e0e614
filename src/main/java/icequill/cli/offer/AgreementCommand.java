package icequill.cli.offer;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on agreements. */
@Command(name = "agreement", mixinStandardHelpOptions = true, subcommands = {AgreementChangeCommand.class,
        AgreementEndCommand.class,
        AgreementListCommand.class,
        AgreementNextCommand.class, AgreementNoticeCommand.class, AgreementOrderCommand.class,
        AgreementPrintCommand.class,
        AgreementRefuseCommand.class,
        AgreementRenewCommand.class,
        AgreementRenewalCommand.class,
        AgreementRenewalsCommand.class,
        AgreementShowCommand.class,
        AgreementTransferCommand.class}, description = "Shows how agreements stand, prints, changes and ends them, says which of their installments are to be billed, and gives notice of their renewal.", footerHeading = "%nExamples:%n", footer = {
                "  icequill agreement list", "  icequill agreement show A-2026-004",
                "  icequill agreement print crumb-lane-bakery",
                "  icequill agreement next crumb-lane-bakery      which installment is to be billed",
                "  icequill agreement renewal crumb-lane-bakery   the notice, and when to send it",
                "  icequill agreement renewals                    the windows of the coming year"})
public final class AgreementCommand extends Noun {}
