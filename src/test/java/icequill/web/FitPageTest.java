package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** How soon dirt stops machines, on a page: the same as the command tells, but that no paper is written. */
class FitPageTest {

    @TempDir
    private Path folder;
    private OpenOffice office;
    private Visitor owner;

    @BeforeEach
    void open() throws IOException {
        office = OpenOffice.withVisits(folder, "ten-minute-brushing");
        owner = office.owner();
    }

    @AfterEach
    void close() {
        office.close();
    }

    @Test
    void visitsOfTheBook_areTooFew_andNothingIsWritten() {
        JsonNode told = owner.json("/fit?on=2026-12-01");

        assertThat(told.path("settings")).isEmpty();
        assertThat(told.has("paper")).isFalse();
        assertThat(owner.get("/fit?on=2026-12-01").body()).contains("From 1\u00a0visit at 1 of our sites",
                "your settings stay");
        assertThat(office.shop().resolve("papers/fit-book.pdf")).doesNotExist();
    }

    @Test
    void tableThatIsPasted_isFittedAndDrawn_asByTheCommand() throws IOException {
        Path table = office.shop().resolve("records/runs.csv");
        JsonNode told = Run.of("fit", table.toString(), "--json").json();

        String page = owner.post("/fit/table", Map.of("table", Files.readString(table))).body();

        assertThat(page).contains("<svg class=\"drawn\" role=\"img\" aria-label=\"Plot: ").contains("</text></svg>");
        assertThat(told.path("settings")).isNotEmpty().allSatisfy(line -> assertThat(page)
                .contains(line.asString().replace("\"", "&quot;").replace(">", "&gt;").replace("'", "&#39;")));
    }

    @Test
    void tableWithFaults_isShownWithAllOfThem_andWhatWasTyped() {
        HttpResponse<String> page = owner.post("/fit/table", Map.of("table",
                "machine,kind,side,from,until,ended\na,hotel,roof,2025-03-03,2025-02-03,broke\n"));

        assertThat(page.body()).contains("Line 2, side</a>: ", "roof", "Line 2, ended</a>: ", "a,hotel,roof");
        assertThat(owner.get("/fit?on=soon").body()).contains("href=\"#on\"");
    }
}
