package icequill.cli.terminal;

/** Where the program prints. */
public final class Terminal {

    private Terminal() {
    }

    /** How many columns it has, as the launcher found it; without bounds where it is a file or another program. */
    public static int columns() {
        return Integer.getInteger("icequill.columns", Integer.MAX_VALUE);
    }
}
