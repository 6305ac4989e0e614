package icequill.answer.days;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/** Writes events as a calendar (iCalendar, RFC 5545). */
public final class CalendarFile {

    private CalendarFile() {
    }

    /**
     * The file of some events.
     *
     * @param of what it is a calendar of, in English
     */
    public static byte[] of(String of, List<VEvent> events) {
        Calendar calendar = new Calendar(new PropertyList(List.of(new ProdId("-//Icequill//" + of + "//EN"),
                ImmutableVersion.VERSION_2_0)), new ComponentList<>(events));
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            new CalendarOutputter().output(calendar, bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
