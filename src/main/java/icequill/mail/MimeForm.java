package icequill.mail;

import jakarta.activation.DataHandler;
import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.Session;
import jakarta.mail.internet.ContentType;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.util.ByteArrayDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.format.DateTimeFormatter;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/** A mail as the lines of RFC 5322, in ASCII alone, so that no server needs to change it. The same mail gives the same bytes. */
final class MimeForm {

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE, d MMM uuuu HH:mm:ss Z",
            Locale.ENGLISH);
    private static final int MARK = 30;

    private MimeForm() {
    }

    /** All of it, with further header fields. */
    static byte[] of(MailMessage mail, Map<String, String> more) {
        try {
            MimeMessage form = new Fixed(mail.messageId());
            head(form, mail);
            for (Map.Entry<String, String> field : more.entrySet()) {
                form.setHeader(field.getKey(), field.getValue());
            }
            form.setContent(new Parts(mail));
            form.saveChanges();
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            form.writeTo(bytes);
            return bytes.toByteArray();
        } catch (MessagingException impossible) {
            throw new IllegalStateException("a mail cannot be written", impossible);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static void head(MimeMessage form, MailMessage mail) throws MessagingException, IOException {
        MailParties parties = mail.parties();
        form.setHeader("Date", DATE.format(mail.date()));
        form.setFrom(address(parties.from()));
        if (parties.replyTo().isPresent()) {
            form.setReplyTo(addresses(List.of(parties.replyTo().get())));
        }
        form.setRecipients(MimeMessage.RecipientType.TO, addresses(parties.to()));
        form.setSubject(mail.content().subject(), "UTF-8");
        form.setContentLanguage(new String[]{mail.content().language().tag()});
    }

    private static InternetAddress[] addresses(List<MailAddress> from) throws IOException {
        InternetAddress[] addresses = new InternetAddress[from.size()];
        for (int at = 0; at < addresses.length; at++) {
            addresses[at] = address(from.get(at));
        }
        return addresses;
    }

    static InternetAddress address(MailAddress from) throws IOException {
        return new InternetAddress(from.text(), from.name().orElse(null), "UTF-8");
    }

    private static MimeBodyPart text(MailContent content) throws MessagingException {
        MimeBodyPart part = new MimeBodyPart();
        part.setDataHandler(data(content.text().getBytes(StandardCharsets.UTF_8), "text/plain; charset=UTF-8"));
        part.setHeader("Content-Transfer-Encoding", "quoted-printable");
        return part;
    }

    private static MimeBodyPart file(Enclosure enclosure) throws MessagingException {
        MimeBodyPart part = new MimeBodyPart();
        part.setDataHandler(data(enclosure.bytes(), enclosure.mediaType()));
        part.setHeader("Content-Type", enclosure.mediaType());
        part.setHeader("Content-Transfer-Encoding", "base64");
        part.setHeader("Content-Disposition", Part.ATTACHMENT + FileName.parameter(enclosure.name()));
        return part;
    }

    private static DataHandler data(byte[] bytes, String type) {
        return new DataHandler(new ByteArrayDataSource(bytes, type));
    }

    /** A mark that stands nowhere in what it parts: neither of both encodings has a _ after an =. */
    private static String mark(String messageId) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(messageId.getBytes(StandardCharsets.UTF_8));
            return "=_" + HexFormat.of().formatHex(hash).substring(0, MARK);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Keeps the identifier that the mail was given. */
    private static final class Fixed extends MimeMessage {

        private final String messageId;

        Fixed(String messageId) {
            super(Session.getInstance(new Properties()));
            this.messageId = messageId;
        }

        @Override
        protected void updateMessageID() throws MessagingException {
            setHeader("Message-ID", "<" + messageId + ">");
        }
    }

    /** The text first, then what goes with it. */
    private static final class Parts extends MimeMultipart {

        Parts(MailMessage mail) throws MessagingException {
            ContentType type = new ContentType("multipart", "mixed", null);
            type.setParameter("boundary", mark(mail.messageId()));
            contentType = type.toString();
            addBodyPart(text(mail.content()));
            for (Enclosure enclosure : mail.content().enclosures()) {
                addBodyPart(file(enclosure));
            }
        }
    }
}
