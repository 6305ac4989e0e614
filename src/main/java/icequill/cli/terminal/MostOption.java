package icequill.cli.terminal;

import picocli.CommandLine.Option;

/** How many of what fits are shown. */
public final class MostOption {

    private static final int LIMIT = 1_000_000;

    @Option(names = "--most", paramLabel = "N", description = "How many at most. Default: ${DEFAULT-VALUE}.", defaultValue = "50")
    private int most = 50;

    /** From 1 to a million. */
    public int most() {
        return Math.clamp(most, 1, LIMIT);
    }
}
