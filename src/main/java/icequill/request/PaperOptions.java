package icequill.request;

import icequill.party.Language;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a paper is to be like.
 *
 * @param number empty for a draft
 * @param language empty for the customer's
 */
public record PaperOptions(Optional<String> number, LocalDate date, Optional<Language> language, Extras extras) {}
