package icequill.answer;

import java.time.LocalDate;

/** A recorded visit that was taken back. */
public record WithdrawnVisit(String visit, String site, LocalDate day, String reason) {}
