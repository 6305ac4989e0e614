package icequill.office;

import java.time.LocalDate;

/** A site of which the book has less than the year. */
record NewerSite(String site, LocalDate since) {}
