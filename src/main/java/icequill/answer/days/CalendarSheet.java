package icequill.answer.days;

import icequill.answer.days.PersonCalendar.Entry;
import icequill.files.answer.Sheet;
import icequill.files.disk.SafeFile;
import icequill.problem.Validated;
import icequill.render.words.Formats;
import icequill.render.words.Sentences;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;

/** The planned visits of a person, for the screen in one language, as data, and as a calendar. */
public record CalendarSheet(PersonCalendar data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        return data.visits().isEmpty()
                ? List.of(sentences.word("calendar.none", data.person()))
                : data.visits().stream().flatMap(this::lines).toList();
    }

    private Stream<String> lines(Entry entry) {
        Formats formats = sentences.formats();
        return Stream.concat(
                Stream.of(Sentences.capitalized(formats.dayOfWeek(entry.begins().toLocalDate())) + ", "
                        + formats.span(entry.begins().toLocalTime(), entry.ends().toLocalTime()) + ": " + entry.title()
                        + ", " + entry.address() + " (" + entry.visit() + ")"),
                entry.notes().stream().map(note -> "  " + note));
    }

    /**
     * The calendar (RFC 5545). The same book gives the same bytes: a visit keeps its UID, and its stamp is the moment of its last change. Times
     * are those of UTC, so that no table of a time zone has to come along, and phones show them by their own.
     */
    public byte[] calendar() {
        return CalendarFile.of("Visits", data.visits().stream().map(CalendarSheet::event).toList());
    }

    /** Writes it into a file, in place of an earlier one. */
    public Validated<Path> write(Path file) {
        return SafeFile.write(file, calendar(), true);
    }

    private static VEvent event(Entry entry) {
        return new VEvent(new PropertyList(List.of(new Uid(entry.visit() + "@icequill"), new DtStamp(entry.changed()),
                new DtStart<>(entry.begins().toInstant()), new DtEnd<>(entry.ends().toInstant()),
                new Summary(entry.title()), new Location(entry.address()),
                new Description(String.join("\n", entry.notes())))), new ComponentList<>());
    }
}
