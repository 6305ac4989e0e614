package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person's planned visits as a calendar, read back as others read it (iCalendar, RFC 5545). */
class VisitCalendarTest {

    @TempDir
    private Path folder;

    /** Planned for 14 July, 9:15 to 11:30 in New York, which is four hours behind UTC in summer. */
    @Test
    void plannedVisits_areEventsWithTheirPlace_andNothingOfPrices() throws IOException, ParserException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        Path file = folder.resolve("ada.ics");

        assertThat(shop.run("visit", "calendar", "--person", "Ada Quill", "--from", "2026-07-01", "--ics",
                file.toString()).status()).isZero();

        String text = Files.readString(file);
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        assertThat(calendar.validate().hasErrors()).isFalse();
        List<VEvent> events = calendar.getComponents(Component.VEVENT);
        VEvent bakery = events.stream()
                .filter(event -> event.getUid().orElseThrow().getValue().equals("summer-cleaning-bakery@icequill"))
                .findFirst().orElseThrow();
        assertThat(Objects.requireNonNull(bakery.getDateTimeStart()).getValue()).isEqualTo("20260714T131500Z");
        assertThat(Objects.requireNonNull(bakery.getDateTimeEnd()).getValue()).isEqualTo("20260714T153000Z");
        assertThat(Objects.requireNonNull(bakery.getLocation()).getValue())
                .isEqualTo("7 Crumb Lane, Alderton, NY 10999");
        assertThat(Objects.requireNonNull(bakery.getDescription()).getValue()).contains("09:00 to 15:00",
                "Alley behind the ovens, not before nine.", "QD-350-1182");
        // The hotel's order has a limit of 900.00.
        assertThat(text).contains("autumn-condensers-hotel@icequill").doesNotContain("900.00", "USD", "FH-21340");
        assertThat(text.getBytes(StandardCharsets.UTF_8)).isEqualTo(text.lines().map(line -> line + "\r\n")
                .reduce("", String::concat).getBytes(StandardCharsets.UTF_8));

        assertThat(shop.run("visit", "calendar", "--person", "Ada Quill", "--from", "2026-07-01", "--ics",
                file.toString()).status()).isZero();
        assertThat(file).hasContent(text);
    }

    /** Both come at 8:15; the helper leaves at 10:30, the other at 11:45, in New York. */
    @Test
    void whoLeavesBeforeOthers_hasHisOwnHours() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        Path file = folder.resolve("teo.ics");

        shop.run("visit", "calendar", "--person", "Teo Lindqvist", "--from", "2026-09-01", "--ics", file.toString());
        String teo = Files.readString(file);
        shop.run("visit", "calendar", "--person", "Ada Quill", "--from", "2026-09-01", "--ics", file.toString());

        assertThat(teo).contains("DTSTART:20260922T121500Z", "DTEND:20260922T143000Z");
        assertThat(file).content().contains("DTSTART:20260922T121500Z", "DTEND:20260922T154500Z");
    }

    @Test
    void unknownPerson_isToldWhomTheBookKnows() throws IOException {
        assertThat(BookShop.in(folder, Database.SQLITE).problems("visit", "calendar", "--person", "Ada"))
                .singleElement().asString().contains("there is no person \"Ada\"", "Ada Quill");
    }
}
