package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** A repair from its quote to its invoice. */
@Tag("wide")
class JobLifeTest {

    private static final String QUOTE = "RQ-2026-00001";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void acceptedRepair_waitsForParts_isDoneByItsVisit_andBilled(Database database) throws IOException {
        BookShop shop = accepted(database);
        assertThat(shop.json("job", "list").path("jobs")).extracting(job -> job.path("state").asString())
                .containsExactly("accepted");

        assertThat(note(shop, "order", "--from", "the maker", "--expected", "2026-05-27", "--on", "2026-05-18")
                .path("late").asBoolean()).isTrue();
        assertThat(note(shop, "ready", "--on", "2026-05-26").path("state").asString()).isEqualTo("ready");

        Path form = shop.folder().resolve("planned/float-switch.yaml");
        Files.createDirectories(form.getParent());
        Files.writeString(form, Files.readString(shop.folder().resolve("quotes/float-switch.yaml"))
                .replace("form: planned-visit", "form: visit").replaceAll("(?s)quote:.*?people:", "people:"));
        shop.json("visit", "add", form.toString());
        JsonNode done = shop.json("job", "show", QUOTE);
        assertThat(done.path("state").asString()).isEqualTo("done");
        assertThat(done.path("visit").asString()).isEqualTo("float-switch");

        shop.json("invoice", "issue", "float-switch", "--date", "2026-05-28");
        assertThat(shop.json("job", "show", QUOTE).path("invoices")).hasSize(1);
        assertThat(shop.json("job", "list").path("jobs")).isEmpty();
        assertThat(shop.json("job", "list", "--all").path("jobs")).hasSize(1);
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void whatCannotBe_isToldAtOnce(Database database) throws IOException {
        BookShop shop = accepted(database);
        shop.json("visit", "add", shop.folder().resolve("visits/ten-minute-brushing.yaml").toString());

        assertThat(shop.problems("job", "done", QUOTE, "--visit", "float-switch", "--on", "2026-05-20"))
                .containsExactly(
                        ":0: visit: visit \"float-switch\" is not done (a visit that was done at the site of the"
                                + " job)");
        assertThat(
                shop.problems("job", "done", QUOTE, "--visit", "ten-minute-brushing", "--on", "2026-05-20").getFirst())
                .startsWith(":0: visit: visit \"ten-minute-brushing\" was at ");
        assertThat(shop.problems("job", "order", QUOTE, "--on", "2026-05-20", "--expected", "2026-05-19"))
                .containsExactly(":0: expected: parts are to come before they are ordered (2026-05-20 or a later day)");
        assertThat(shop.problems("job", "withdraw", QUOTE, "--reason", " ").getFirst())
                .startsWith(":0: reason: no reason is given");
        note(shop, "withdraw", "--reason", "The bar closes.", "--on", "2026-05-20");
        assertThat(shop.problems("job", "ready", QUOTE)).containsExactly(
                ":0: : the job was withdrawn on 2026-05-20 (a job that is still open)");
    }

    private BookShop accepted(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        shop.json("visit", "add", shop.folder().resolve("visits/late-call.yaml").toString());
        shop.json("import", shop.folder().resolve("quotes/float-switch.yaml").toString());
        shop.json("quote", "issue", "float-switch", "--date", "2026-05-14");
        shop.json("quote", "accept", QUOTE, "--by", "D. Okafor", "--way", "mail", "--on", "2026-05-18");
        return shop;
    }

    private static JsonNode note(BookShop shop, String what, String... more) {
        String[] line = new String[more.length + 3];
        line[0] = "job";
        line[1] = what;
        line[2] = QUOTE;
        System.arraycopy(more, 0, line, 3, more.length);
        return shop.json(line);
    }
}
