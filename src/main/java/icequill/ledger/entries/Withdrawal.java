package icequill.ledger.entries;

import java.time.Instant;

/** That a recorded visit is not to be billed, and why. */
public record Withdrawal(Instant at, String reason) {}
