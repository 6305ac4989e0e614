package icequill.party;

import java.time.LocalDate;

/** When the customer accepted the shop's prices and minimums, and in which paper. */
public record Acceptance(LocalDate date, String paper) {}
