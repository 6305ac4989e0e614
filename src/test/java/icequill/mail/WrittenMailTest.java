package icequill.mail;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What arrives at a real mail server, read line by line, is what was sent. */
class WrittenMailTest {

    private static final String SUBJECT = "Factura INV-2026-00012, orden de compra Ñ-7/ü, tienda 042, Café El Búho: limpieza"
            + " trimestral de la máquina de hielo de la barra y cambio del filtro de agua 🧊";
    private static final String TEXT = "Estimada señora Muñoz:\r\n.\r\n..una línea que empieza con puntos\r\nFrom aquí\r\n"
            + "tab\tespacio al final \r\n=3D y = solo\r\n" + "línea muy larga, ".repeat(200) + "\r\nFin sin salto";
    private static final String FILE = "Factura INV-2026-00012, OC Ñandú 7, Café El Búho, tienda 042 (copia para la"
            + " contabilidad del señor Muñoz).pdf";
    private static final byte[] PDF = Mails.bytes(100_003);
    private static final byte[] XML = "<Invoice xmlns=\"urn:x\">ñ</Invoice>\n".getBytes(StandardCharsets.UTF_8);

    private final GreenMail server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));

    @BeforeEach
    void start() {
        server.start();
    }

    @AfterEach
    void stop() {
        server.stop();
    }

    private static MailMessage mail() {
        MailContent content = Mails.content(SUBJECT, TEXT, List.of(Mails.enclosure(FILE, "application/pdf", PDF),
                Mails.enclosure("INV-2026-00012.xml", "application/xml", XML)));
        return Mails.of(content, "ana@example.com", "bo@bücher.example.com");
    }

    private List<String> arrived() throws MessagingException, IOException {
        List<String> texts = new ArrayList<>();
        for (MimeMessage message : server.getReceivedMessages()) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            message.writeTo(bytes);
            texts.add(bytes.toString(StandardCharsets.ISO_8859_1));
        }
        return texts;
    }

    private Submission send(MailMessage mail, Optional<Login> login) {
        return Mails.send(Mails.server(server.getSmtp().getPort(), Security.PLAIN, login), mail);
    }

    @Test
    void headParts_andEveryByte_arrive() throws MessagingException, IOException {
        assertThat(send(mail(), Optional.empty())).isInstanceOf(Submission.Taken.class);

        assertThat(arrived()).hasSize(2);
        RawMail mail = RawMail.of(arrived().get(0));
        assertThat(mail.words("Subject")).isEqualTo(SUBJECT);
        assertThat(mail.words("From")).isEqualTo("Icewright Ice Service <office@icewright.example.com>");
        assertThat(mail.field("To")).isEqualTo("ana@example.com, bo@xn--bcher-kva.example.com");
        assertThat(mail.field("Message-ID")).isEqualTo("<" + Mails.ID + ">");
        assertThat(mail.field("Date")).isEqualTo("Wed, 3 Jun 2026 09:05:00 -0600");
        assertThat(mail.field("Content-Language")).isEqualTo("es");
        assertThat(mail.field("MIME-Version")).isEqualTo("1.0");
        assertThat(mail.field("Content-Type")).startsWith("multipart/mixed;");

        List<RawMail> parts = mail.parts();
        assertThat(parts).hasSize(3);
        assertThat(parts.get(0).field("Content-Type")).isEqualTo("text/plain; charset=UTF-8");
        assertThat(parts.get(0).text()).isEqualTo(TEXT);
        assertThat(parts.get(1).field("Content-Type")).isEqualTo("application/pdf");
        assertThat(parts.get(1).field("Content-Disposition")).startsWith("attachment;");
        assertThat(parts.get(1).fileName()).isEqualTo(FILE);
        assertThat(parts.get(1).content()).isEqualTo(PDF);
        assertThat(parts.get(2).fileName()).isEqualTo("INV-2026-00012.xml");
        assertThat(parts.get(2).content()).isEqualTo(XML);
    }

    /** RFC 5322, section 2.1.1: at most 998 characters, and should be 78; RFC 2045: 76 in an encoded body. */
    @Test
    void everyLine_isShortAsciiAndEndsAsItShould() {
        String form = new String(EmlDraft.bytes(mail()), StandardCharsets.ISO_8859_1);

        assertThat(form.replace("\r\n", "")).doesNotContain("\r", "\n").matches("[\t -~]*");
        assertThat(form.lines().filter(line -> line.length() > 78)).isEmpty();
    }

    @Test
    void draft_isWhatIsSent_exceptThatItSaysSo() throws MessagingException, IOException {
        try (ScriptedServer scripted = ScriptedServer.plain(Map.of())) {
            Mails.send(Mails.server(scripted.port(), Security.PLAIN, Optional.empty()), mail());
            String draft = new String(EmlDraft.bytes(mail()), StandardCharsets.ISO_8859_1);

            assertThat(draft).contains("\r\nX-Unsent: 1\r\n");
            assertThat(draft.replace("\r\nX-Unsent: 1\r\n", "\r\n")).isEqualTo(scripted.taken().get(0));
        }
    }

    @Test
    void rightLogin_goesThrough_wrongOne_stopsTheRun() {
        server.getUserManager().setAuthRequired(true);
        server.setUser("office", Mails.SECRET);

        assertThat(send(mail(), Mails.login(Mails.SECRET))).isEqualTo(new Submission.Taken("250 OK"));
        assertThat(send(mail(), Mails.login("wrong"))).isInstanceOfSatisfying(Submission.Unusable.class,
                unusable -> assertThat(unusable.why()).isEqualTo(Why.LOGIN_REFUSED));
        assertThat(server.getReceivedMessages()).hasSize(2);
    }
}
