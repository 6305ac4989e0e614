package icequill.cli.terminal;

import picocli.CommandLine.Option;

/** The option of commands whose paper can go out by mail. */
public final class MailOption {

    @Option(names = "--mail", description = "Write a mail about the paper, which brings it as it is printed now; it goes out by: icequill mail send")
    private boolean mail;

    public boolean isSet() {
        return mail;
    }
}
