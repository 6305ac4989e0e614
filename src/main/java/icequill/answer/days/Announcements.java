package icequill.answer.days;

import icequill.life.telling.Telling;
import icequill.life.telling.Tellings;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Planned visits, and whether their customers were told of them.
 *
 * @param visits by their beginning
 * @param files of papers that were written
 */
public record Announcements(List<Visit> visits, List<Path> files) {

    /**
     * A planned visit.
     *
     * @param visit by id
     * @param site by id
     * @param people who come
     * @param state whether the customer knows of it as it is planned now
     * @param told on which day he was told last; missing where he was not
     * @param way how
     */
    public record Visit(String visit, String site, String siteName, ZonedDateTime begins, ZonedDateTime ends,
            List<String> people, Tellings.State state, Optional<LocalDate> told, Optional<Telling.Way> way) {

        public Visit {
            people = List.copyOf(people);
        }
    }

    public Announcements {
        visits = List.copyOf(visits);
        files = List.copyOf(files);
    }

    /** The same with papers that were written. */
    public Announcements with(List<Path> written) {
        return new Announcements(visits, written);
    }
}
