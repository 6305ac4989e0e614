package icequill.web.run;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.life.mail.MailMatter.Occasion;
import icequill.mail.ScriptedServer;
import icequill.office.mail.MailOffice;
import icequill.office.mail.SendingOffice;
import icequill.shop.StandingShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an office sends while it is open, without being asked, round by round at moments that the test chooses. */
class OwnSendingTest {

    private static final String PAPER = "INV-2026-00008";
    private static final String MAIL = PAPER + ".m1";

    @TempDir
    private Path temporary;
    private Path folder;
    private final Moving clock = new Moving();
    private final List<Throwable> faults = new ArrayList<>();
    private StandingShop shop;
    private OwnSending sending;

    /** Stands where the test puts it. */
    private static final class Moving extends Clock {

        private Instant now = Instant.parse("2026-12-30T17:00:00Z");

        void move(int minutes) {
            now = now.plus(Duration.ofMinutes(minutes));
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.fixed(now, zone);
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    @BeforeEach
    void open() throws IOException {
        folder = FinishedDemo.copy(temporary.resolve("shop"));
        assertThat(MailOffice.of(folder, clock).write(List.of(PAPER), Occasion.ISSUED, false).orElseThrow().mails())
                .hasSize(1);
        shop = StandingShop.of(folder, clock);
        sending = new OwnSending(shop, faults::add);
    }

    @AfterEach
    void close() {
        sending.close();
        shop.close();
        assertThat(faults).isEmpty();
    }

    /** What somebody has sent and the server has put off goes out half an hour later, once; what nobody has sent stays. */
    @Test
    void putOff_goesOutWhenItsTimeHasCome() throws IOException {
        try (ScriptedServer busy = ScriptedServer.plain(Map.of("RCPT1", "450 full"))) {
            served(busy, "");
            assertThat(sending.round()).isZero();
            assertThat(SendingOffice.of(folder, clock).send(List.of(MAIL), mail -> true).problems()).isEmpty();
        }
        try (ScriptedServer well = ScriptedServer.plain(Map.of())) {
            served(well, "");
            clock.move(29);
            assertThat(sending.round()).isZero();
            clock.move(1);
            assertThat(sending.round()).isEqualTo(1);
            assertThat(sending.round()).isZero();
            assertThat(well.taken()).singleElement().asString().contains(PAPER);
        }
    }

    @Test
    void everything_goesOutUnasked_andNothingWhereTheShopWantsNone() throws IOException {
        try (ScriptedServer well = ScriptedServer.plain(Map.of())) {
            served(well, "  byItself: nothing\n");
            assertThat(sending.round()).isZero();
            served(well, "  byItself: everything\n");
            assertThat(sending.round()).isEqualTo(1);
            assertThat(well.taken()).hasSize(1);
        }
    }

    /** A password that is refused is not tried again each minute. */
    @Test
    void serverThatCannotBeUsed_isLeftAloneForHalfAnHour() throws IOException {
        Files.writeString(folder.resolve("mail.txt"), "secret-word\n");
        try (ScriptedServer server = ScriptedServer.plain(Map.of("AUTH", "535 no"))) {
            served(server, "  byItself: everything\n");
            Path settings = folder.resolve("shop.yaml");
            Files.writeString(settings, Files.readString(settings).replace("security: plain",
                    "security: plain, user: office, passwordFile: mail.txt"));
            sending.round();
            clock.move(29);
            sending.round();
            assertThat(server.commands().stream().filter(line -> line.startsWith("AUTH"))).hasSize(1);
            clock.move(1);
            sending.round();
            assertThat(server.commands().stream().filter(line -> line.startsWith("AUTH"))).hasSize(2);
        }
    }

    private void served(ScriptedServer server, String more) throws IOException {
        Path settings = folder.resolve("shop.yaml");
        Files.writeString(settings, Files.readString(settings).replaceFirst("(?s)\nmail:\n.*", "")
                + "\nmail:\n  server: {host: localhost, port: " + server.port() + ", security: plain}\n" + more);
    }
}
