package icequill.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.problem.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drafts where no server is set. */
class EmlDraftTest {

    private static MailMessage mail(String text) {
        return Mails.of(Mails.content("Invoice", text,
                List.of(Mails.enclosure("INV-1.pdf", "application/pdf", Mails.bytes(2_000)))), "ana@example.com");
    }

    @Test
    void sameMail_isTheSameBytes() {
        assertThat(EmlDraft.bytes(mail("Hello"))).isEqualTo(EmlDraft.bytes(mail("Hello")))
                .isNotEqualTo(EmlDraft.bytes(mail("Hallo")));
    }

    @Test
    void draft_isWrittenWhole_andReplaced(@TempDir Path folder) throws IOException {
        Path outbox = folder.resolve("outbox");
        assertThat(EmlDraft.write(mail("Hello"), outbox, "INV-1").found()).contains(outbox.resolve("INV-1.eml"));
        assertThat(EmlDraft.write(mail("Hallo"), outbox, "INV-1").problems()).isEmpty();

        assertThat(Files.readAllBytes(outbox.resolve("INV-1.eml"))).isEqualTo(EmlDraft.bytes(mail("Hallo")));
        try (var files = Files.list(outbox)) {
            assertThat(files).containsExactly(outbox.resolve("INV-1.eml"));
        }
    }

    @Test
    void whereNothingCanBeWritten_isAProblem(@TempDir Path folder) throws IOException {
        Path inTheWay = Files.createFile(folder.resolve("outbox"));

        assertThat(EmlDraft.write(mail("Hello"), inTheWay, "INV-1").problems()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ".", "../x", "a/b", "a\\b", ".hidden", "a\nb"})
    void nameThatLeadsElsewhere_isABug(String name, @TempDir Path folder) {
        MailMessage mail = mail("Hello");
        assertThatThrownBy(() -> EmlDraft.write(mail, folder, name)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a/b.pdf", "..", "../b.pdf", "a\\b.pdf", "C:b.pdf", "a\"b.pdf", " a.pdf", "a.pdf ",
            "a.pdf."})
    void enclosureThatLeadsElsewhere_isAProblem(String name) {
        assertThat(Enclosure.of(name, "application/pdf", new byte[0], Place.NOWHERE).problems()).hasSize(1);
    }
}
