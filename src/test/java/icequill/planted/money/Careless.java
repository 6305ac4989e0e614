package icequill.planted.money;

import icequill.planted.explain.RoundingHelper;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;

/** Does what no class of a pure package may do: each rule of {@code ArchitectureTest} must find something here or beside. */
public final class Careless {

    /** An inexact number. */
    public double price;

    /** A way to the outside, and a use against the arrows. */
    public Instant read(Path file, Clock clock, RoundingHelper helper) {
        return Instant.now();
    }

    /** Inexact numbers in what goes in and out. */
    public List<Double> shares(float weight) {
        return List.of();
    }
}
