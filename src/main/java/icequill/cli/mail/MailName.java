package icequill.cli.mail;

import picocli.CommandLine.Parameters;

/** The mail that a command is about. */
final class MailName {

    @Parameters(paramLabel = "MAIL", description = "The mail, such as INV-2026-00010.m1.")
    private String id = "";

    String id() {
        return id;
    }
}
