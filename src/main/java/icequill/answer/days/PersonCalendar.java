package icequill.answer.days;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;

/**
 * The planned visits of a person, as they stand in a calendar for his phone. Nothing of it says what anything costs.
 *
 * @param from the first day
 * @param until the last day
 * @param visits by their beginning
 */
public record PersonCalendar(String person, LocalDate from, LocalDate until, List<Entry> visits) {

    /**
     * A visit.
     *
     * @param visit by id
     * @param site by id
     * @param title the site's name, with its store number
     * @param begins when he comes
     * @param ends when he leaves, which may be before others do
     * @param address on one line
     * @param notes hours, parking, roof, whom to call, machines; in the language of the reader
     * @param changed when the book's entry was changed last
     */
    public record Entry(String visit, String site, String title, ZonedDateTime begins, ZonedDateTime ends,
            String address, List<String> notes, Instant changed) {

        public Entry {
            notes = List.copyOf(notes);
        }
    }

    public PersonCalendar {
        visits = List.copyOf(visits);
    }
}
