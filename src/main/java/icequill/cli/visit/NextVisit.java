package icequill.cli.visit;

import icequill.shop.FormName;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The second visit of a day, and the way to it. */
final class NextVisit {

    @Option(names = "--then", paramLabel = "VISIT", description = "Also plan a second visit of that day by the same crew, who drive there when all is done at the first.")
    private @Nullable String then;

    @Option(names = "--drive", paramLabel = "MINUTES", description = "Minutes from the first site to the second, from 0 to 600. Default: 0.")
    private int drive;

    Optional<FormName> named(Function<String, FormName> form) {
        return Optional.ofNullable(then).map(form);
    }

    int drive() {
        return drive;
    }
}
