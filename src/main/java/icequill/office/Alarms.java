package icequill.office;

import icequill.planner.Timetable;
import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * The moments of a visit at which a wait is over, as a calendar for the technicians' phones (iCalendar, RFC 5545): one event each,
 * with alarms two minutes before and at it. The same timetable gives the same bytes, and the same events when it is taken in again.
 *
 * @param visit by id
 * @param begins when the visit does
 */
record Alarms(String visit, Instant begins, Timetable table) {

    private static final List<Duration> BEFORE = List.of(Duration.ofMinutes(-2), Duration.ZERO);

    byte[] calendar() {
        List<VEvent> events = table.entries().stream().filter(entry -> entry.kind() == Kind.WAIT).map(this::event)
                .toList();
        Calendar calendar = new Calendar(new PropertyList(List.of(new ProdId("-//Icequill//Timetable//EN"),
                ImmutableVersion.VERSION_2_0)), new ComponentList<>(events));
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            new CalendarOutputter().output(calendar, bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private VEvent event(Entry wait) {
        Instant over = begins.plus(Duration.ofMinutes(wait.end()));
        String text = wait.machine() + ": " + wait.task() + ", the wait is over";
        return new VEvent(
                new PropertyList(List.of(new Uid(visit + "-" + wait.machine() + "-" + wait.task() + "@icequill"),
                        new DtStamp(begins), new DtStart<>(over), new DtEnd<>(over.plus(Duration.ofMinutes(1))),
                        new Summary(text))),
                new ComponentList<>(BEFORE.stream().map(before -> alarm(before, text)).toList()));
    }

    private static VAlarm alarm(Duration before, String text) {
        return new VAlarm(new PropertyList(
                List.of(ImmutableAction.DISPLAY, new Trigger(before), new Description(text))));
    }
}
