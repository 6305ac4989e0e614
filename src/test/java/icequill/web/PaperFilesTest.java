package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files of a paper, and how its lines were figured. */
class PaperFilesTest {

    private static final String PAPER = "/papers/INV-2026-00001";

    @TempDir
    private static Path folder;
    private static OpenOffice office;
    private static Visitor owner;

    @BeforeAll
    static void issued() {
        office = OpenOffice.withVisits(folder, "ten-minute-brushing");
        owner = office.owner();
        owner.post("/visits/ten-minute-brushing/issue", Map.of("key", owner.key("/visits/ten-minute-brushing")));
    }

    @AfterAll
    static void close() {
        office.close();
    }

    /** Ten minutes at 98.00 an hour, of which an hour is the least. */
    @Test
    void lines_sayHowTheyWereFigured() {
        assertThat(owner.get(PAPER).body()).contains("<summary>How figured</summary>", "98.00/h");
    }

    @Test
    void file_thatWasChanged_isPrintedAgain_andToldSo() throws IOException {
        Path pdf = office.shop().resolve("papers/issued/INV-2026/INV-2026-00001.pdf");
        byte[] issued = Files.readAllBytes(pdf);

        assertThat(looked().body()).contains("The file is there, byte for byte");
        Files.writeString(pdf, "something else");

        assertThat(looked().body()).contains("it was printed again, byte for byte");
        assertThat(Files.readAllBytes(pdf)).isEqualTo(issued);
    }

    private static HttpResponse<String> looked() {
        HttpResponse<String> answer = owner.post(PAPER + "/reprint", Map.of("key", owner.key(PAPER)));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return owner.get(answer.headers().firstValue("Location").orElseThrow());
    }

    @Test
    void copies_areSentWithoutDataAndAsXml_andNothingIsWritten() throws IOException {
        long before = files();

        HttpResponse<String> bare = owner.get(PAPER + "/bare");
        HttpResponse<String> xml = owner.get(PAPER + "/xml");

        assertThat(bare.body()).startsWith("%PDF-").doesNotContain("/EmbeddedFiles");
        assertThat(owner.get(PAPER + "/pdf").body()).contains("/EmbeddedFiles");
        assertThat(bare.headers().firstValue("Content-Disposition"))
                .contains("inline; filename=\"INV-2026-00001-bare.pdf\"");
        assertThat(xml.body()).startsWith("<?xml").contains("INV-2026-00001", "<cbc:PayableAmount");
        assertThat(xml.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"INV-2026-00001.xml\"");
        assertThat(files()).isEqualTo(before);
        assertThat(owner.get("/papers/INV-2026-09999/bare").statusCode()).isEqualTo(404);
        assertThat(owner.get(PAPER + "?file=%3Cb%3E").body()).doesNotContain("<b>", "role=\"status\"");
    }

    private static long files() throws IOException {
        try (Stream<Path> all = Files.walk(office.shop().resolve("papers"))) {
            return all.count();
        }
    }
}
