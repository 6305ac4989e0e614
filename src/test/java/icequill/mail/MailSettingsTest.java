package icequill.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.problem.Place;
import icequill.problem.Validated;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Addresses and servers as they are typed. */
class MailSettingsTest {

    /** Punycode by RFC 3492's algorithm, as registries show it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            office@example.com            | office@example.com
            Office.Two@Example.COM        | Office.Two@example.com
            ` ana@example.com `           | ana@example.com
            ana+ice=shop@mail.example.com | ana+ice=shop@mail.example.com
            "ana b@c"@example.com         | "ana b@c"@example.com
            bo@bücher.example.com         | bo@xn--bcher-kva.example.com
            bo@NIÑO.example.com           | bo@xn--nio-8ma.example.com
            o'neil@3com.example.com       | o'neil@3com.example.com
            """)
    void address_isRead(String typed, String address) {
        assertThat(MailAddress.read(typed, Place.NOWHERE).map(MailAddress::text).found()).contains(address);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "@", "ana", "ana@", "@example.com", "ana@example", "ana@localhost", "ana@@example.com",
            "ana@exa mple.com", "a b@example.com", ".ana@example.com", "ana.@example.com", "a..b@example.com",
            "ana@-example.com", "ana@example-.com", "ana@example..com", ".ana@.example.com", "ana@example.com.",
            "ana@127.0.0.1", "ana@[127.0.0.1]", "Ana <ana@example.com>", "ana@example.com, bo@example.com",
            "ñandú@example.com", "ana@straße.example.com", "\"ana\"b@example.com", "\"a\"b\"@example.com",
            "<ana@example.com>", "ana@exam_ple.com", "ana@example.com>"})
    void whatIsNoAddress_isOneProblem(String typed) {
        assertThat(MailAddress.read(typed, Place.NOWHERE).problems()).hasSize(1);
    }

    @Test
    void lengths_areThoseOfTheStandard() {
        String domain = ("d".repeat(61) + ".").repeat(3) + "example";
        assertThat(domain).hasSize(193);

        assertThat(read("a".repeat(60) + "@" + domain).problems()).isEmpty();
        assertThat(read("a".repeat(61) + "@" + domain).problems()).hasSize(1);
        assertThat(read("a".repeat(64) + "@example.com").problems()).isEmpty();
        assertThat(read("a".repeat(65) + "@example.com").problems()).hasSize(1);
        assertThat(read("ana@" + "d".repeat(63) + ".example").problems()).isEmpty();
        assertThat(read("ana@" + "d".repeat(64) + ".example").problems()).hasSize(1);
    }

    private static Validated<MailAddress> read(String typed) {
        return MailAddress.read(typed, Place.NOWHERE);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            mail.example.com | 587   | STARTTLS | 0
            mail.example.com | 465   | TLS      | 0
            localhost        | 25    | PLAIN    | 0
            127.0.0.1        | 25    | PLAIN    | 0
            127.1.2.3        | 2525  | PLAIN    | 0
            ::1              | 25    | PLAIN    | 0
            mail.example.com | 25    | PLAIN    | 1
            localhost.example.com | 25 | PLAIN  | 1
            127.example.com  | 25    | PLAIN    | 1
            192.0.2.1        | 25    | PLAIN    | 1
            0.0.0.0          | 25    | PLAIN    | 1
            mail.example.com | 0     | TLS      | 1
            mail.example.com | 65536 | TLS      | 1
            mail example     | 465   | TLS      | 1
            -x               | 465   | TLS      | 1
            mail/x           | 0     | PLAIN    | 3
            """)
    void server_isToldOfOnlyEncryptedUnlessItIsThisMachine(String host, int port, Security security, int problems) {
        Validated<MailServer> read = MailServer.of(host, port, security, Optional.empty(), Optional.empty(),
                Timeouts.USUAL, Place.NOWHERE);

        assertThat(read.problems()).hasSize(problems);
        if (problems > 0) {
            assertThatThrownBy(() -> new MailServer(host, port, security, Optional.empty(), Optional.empty(),
                    Timeouts.USUAL)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void waiting_isBounded() {
        Duration moment = Duration.ofSeconds(1);
        assertThatThrownBy(() -> new Timeouts(moment, moment, Duration.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Timeouts(moment, Duration.ofMinutes(11), moment))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
