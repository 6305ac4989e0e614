package icequill.cli.terminal;

/** What the program's exit status means; the one place that says so. */
public enum ExitCode {
    OK(0),
    /** A fault of the program or the machine. */
    FAULT(1),
    /** The command line itself is wrong. */
    USAGE(2),
    /** The input has problems, all of which were reported. */
    PROBLEMS(3);

    private final int status;

    ExitCode(int status) {
        this.status = status;
    }

    public int status() {
        return status;
    }
}
