package icequill.answer;

import icequill.answer.days.CalendarFile;
import icequill.document.Schedule;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;

/**
 * The moments of a visit at which a wait is over, as a calendar for the technicians' phones (iCalendar, RFC 5545): one event each,
 * with alarms two minutes before and at it. The same timetable gives the same bytes, and the same events when it is taken in again.
 *
 * @param visit by id, with the day of a visit that takes several
 */
record Alarms(String visit, Schedule schedule) {

    private static final List<Duration> BEFORE = List.of(Duration.ofMinutes(-2), Duration.ZERO);

    static byte[] calendar(List<Alarms> visits) {
        return CalendarFile.of("Timetable", visits.stream().flatMap(Alarms::events).toList());
    }

    private Stream<VEvent> events() {
        return IntStream.range(0, schedule.alarms().size()).mapToObj(this::event);
    }

    private VEvent event(int number) {
        Schedule.Alarm alarm = schedule.alarms().get(number);
        Instant over = alarm.rings().toInstant();
        String text = text(alarm);
        return new VEvent(
                new PropertyList(List.of(new Uid(visit + "-alarm-" + (number + 1) + "@icequill"),
                        new DtStamp(schedule.begins().toInstant()), new DtStart<>(over),
                        new DtEnd<>(over.plus(Duration.ofMinutes(1))), new Summary(text))),
                new ComponentList<>(BEFORE.stream().map(before -> alarm(before, text)).toList()));
    }

    /** In signs that need no language: the machine, what follows at it, who does it, and by when. */
    private String text(Schedule.Alarm alarm) {
        return alarm.machine().id() + ": " + alarm.next().map(this::text).orElse(alarm.waited() + " ✓")
                + alarm.latest().map(latest -> " ≤ " + latest.toLocalTime()).orElse("");
    }

    private String text(Schedule.Next next) {
        String who = next.people().stream().map(schedule.people()::get).collect(Collectors.joining(", "));
        return who.isEmpty() ? next.step() : next.step() + " (" + who + ")";
    }

    private static VAlarm alarm(Duration before, String text) {
        return new VAlarm(new PropertyList(
                List.of(ImmutableAction.DISPLAY, new Trigger(before), new Description(text))));
    }
}
