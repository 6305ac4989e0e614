package icequill.mail;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.party.Language;
import icequill.problem.Place;
import icequill.problem.Validated;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever people write, a mail says just that, or is refused. */
class WordsOfMailTest {

    private static final byte[] NOTHING = {};

    @Provide
    Arbitrary<String> words() {
        return Arbitraries
                .of("a", "Z", "7", " ", "  ", "é", "ñ", "¿", "=", "?", "=?", "_", "\"", "\\", "<", ">", ",", ";",
                        ":", "@", "(", ")", "[", "%41", "=41", "🧊", "日本", "…", ".", "longer", "From ", "'")
                .list().ofMinSize(1)
                .ofMaxSize(60).map(pieces -> "x" + String.join("", pieces) + "x");
    }

    @Property(tries = 100)
    void subjectNamesAndText_areReadAsWritten(@ForAll("words") String words) {
        MailAddress ana = Mails.address("ana@example.com").named(words, Place.NOWHERE).orElseThrow();
        String fileName = words.replaceAll("[/\\\\:*?\"<>|]", "-").replaceAll("^(.{0,140}).*", "$1x");
        MailMessage mail = new MailMessage(new MailParties(ana, Optional.of(ana), List.of(ana, ana)),
                Mails.content(words, words, List.of(Mails.enclosure(fileName, "text/plain", NOTHING))), Mails.ID,
                Mails.to("bo@example.com").date());

        String form = new String(EmlDraft.bytes(mail), StandardCharsets.ISO_8859_1);
        RawMail read = RawMail.of(form);
        assertThat(form.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(998));
        assertThat(read.words("Subject")).isEqualTo(words);
        assertThat(unquoted(read.words("Reply-To"))).isEqualTo(words + " <ana@example.com>");
        assertThat(read.parts().get(0).text()).isEqualTo(words);
        assertThat(read.parts().get(1).fileName()).isEqualTo(fileName);
        assertThat(read.fieldNames()).containsExactly("Date", "From", "Reply-To", "To", "Message-ID", "Subject",
                "MIME-Version", "Content-Type", "Content-Language", "X-Unsent");
    }

    /** A quoted string of RFC 5322, section 3.2.4. */
    private static String unquoted(String address) {
        return address.startsWith("\"")
                ? address.substring(1).replaceAll("(?<!\\\\)((?:\\\\\\\\)*)\" <", "$1 <").replaceAll("\\\\(.)", "$1")
                : address;
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\nBcc: eve@example.com", "\nBcc: eve@example.com", "\rBcc: eve@example.com", "\u0000",
            "\u0007", "\u0085", "\u2028", "\u2029", "\u007f", "\ud83e", "=?UTF-8?Q?=0D=0ABcc:_eve@example.com?="})
    void lineBreaks_andWhatMeansThem_areRefusedEverywhere(String bad) {
        assertThat(problems(MailAddress.read("ana" + bad + "@example.com", Place.NOWHERE))).hasSize(1);
        assertThat(problems(MailAddress.read("ana@example.com" + bad, Place.NOWHERE))).hasSize(1);
        assertThat(problems(Mails.address("ana@example.com").named("Ana" + bad, Place.NOWHERE))).hasSize(1);
        assertThat(problems(Enclosure.of("a" + bad + ".pdf", "application/pdf", NOTHING, Place.NOWHERE))).hasSize(1);
        assertThat(problems(content("Invoice" + bad, ""))).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u0000", "\u0007", "\u001b[2J", "\u0085", "\ud83e"})
    void signsThatAreNoText_areRefusedInIt(String bad) {
        assertThat(problems(content("Invoice", "Hello" + bad))).hasSize(1);
    }

    private static Validated<MailContent> content(String subject, String text) {
        return MailContent.of(Language.ENGLISH, subject, text, List.of(), Place.NOWHERE);
    }

    private static List<String> problems(Validated<?> result) {
        return result.problems().stream().map(problem -> problem.text()).toList();
    }
}
