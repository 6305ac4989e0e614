package icequill.agreement;

import java.time.LocalDate;

/** When the customer accepted, and on which paper. */
public record Acceptance(LocalDate date, String paper) {}
