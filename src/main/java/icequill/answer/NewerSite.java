package icequill.answer;

import java.time.LocalDate;

/** A site of which the book has less than the year. */
public record NewerSite(String site, LocalDate firstVisit) {}
