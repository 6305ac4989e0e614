package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** What an accepted repair is paid in, from its first invoice to the last. The quote is 229.85 and 20.40 of tax, as QuoteTest works it out. */
@Tag("wide")
class JobBillsTest {

    private static final String QUOTE = "RQ-2026-00001";

    @TempDir
    private Path folder;

    /** 30 % of 229.85 is 68.955; 250.25 - 68.96 = 181.29. */
    @ParameterizedTest
    @EnumSource
    void deposit_invoiced_paid_usedUp(Database database) throws IOException {
        BookShop shop = accepted(database, "deposit: 30");
        assertThat(stages(shop)).containsExactly("deposit 68.96 open true");
        assertThat(job(shop).path("unpaid").asBoolean()).isTrue();

        JsonNode deposit = shop.json("job", "deposit", QUOTE, "--date", "2026-05-18").path("papers").get(0);
        assertThat(deposit.path("gross").asString()).isEqualTo("68.96");
        assertThat(stages(shop)).containsExactly("deposit 68.96 invoiced false");
        assertThat(shop.problems("job", "deposit", QUOTE, "--date", "2026-05-18").getFirst())
                .startsWith(":0: : it was invoiced already: INV-2026-00001");

        shop.json("payment", "add", "pennon-wharf-taproom", "68.96", "--date", "2026-05-19", "--way", "check", "--for",
                "INV-2026-00001");
        assertThat(stages(shop)).containsExactly("deposit 68.96 paid false");
        assertThat(job(shop).path("unpaid").asBoolean()).isFalse();

        done(shop);
        JsonNode work = shop.json("invoice", "issue", "float-switch", "--date", "2026-05-28").path("papers").get(0);
        assertThat(work.path("gross").asString()).isEqualTo("181.29");
        assertThat(stages(shop)).containsExactly("deposit 68.96 used-up false");
        assertThat(
                shop.problems("credit", "issue", "INV-2026-00001", "--reason", "By mistake.", "--date", "2026-05-29"))
                .containsExactly(":0: : INV-2026-00001 was taken off INV-2026-00002 (credit that one first)");
        assertThat(shop.json("paper", "rework", "INV-2026-00002").path("differences")).isEmpty();
        // The work earned all of its 229.85, not what was left to be asked for.
        assertThat(shop.json("visit", "earnings", "--from", "2026-05-20", "--until", "2026-05-20")
                .at("/total/net").asString())
                .isEqualTo("229.85");

        shop.json("credit", "issue", "INV-2026-00002", "--reason", "Wrong day.", "--date", "2026-05-29");
        assertThat(stages(shop)).containsExactly("deposit 68.96 paid false");
        assertThat(shop.json("invoice", "issue", "float-switch", "--date", "2026-05-29").path("papers").get(0)
                .path("gross").asString()).isEqualTo("181.29");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** 229.85 in 60 and 40 %, a tenth held back: 136.36, 90.91 and 22.98, as QuoteTest works it out. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void parts_heldBack_releasedAfterTheWork(Database database) throws IOException {
        BookShop shop = accepted(database, "stages: [60, 40]\n  retainage: 10");
        assertThat(bill(shop, "progress", "2026-05-18")).isEqualTo("136.36");
        assertThat(shop.problems("job", "release", QUOTE, "--date", "2026-05-19").getFirst())
                .startsWith(":0: : the work of " + QUOTE + " is not done yet");
        assertThat(bill(shop, "progress", "2026-05-19")).isEqualTo("90.91");
        assertThat(shop.problems("job", "deposit", QUOTE).getFirst()).startsWith(":0: : " + QUOTE
                + " asks for no deposit");

        done(shop);
        assertThat(shop.json("invoice", "issue", "float-switch", "--date", "2026-05-28").path("papers").get(0)
                .path("gross").asString()).isEqualTo("0.00");
        assertThat(bill(shop, "release", "2026-06-30")).isEqualTo("22.98");

        assertThat(stages(shop)).containsExactly("progress 136.36 used-up false", "progress 90.91 used-up false",
                "release 22.98 invoiced false");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void deposit_ofAJobThatWillNotBeDone_isGivenBack(Database database) throws IOException {
        BookShop shop = accepted(database, "deposit: 30");
        shop.json("job", "deposit", QUOTE, "--date", "2026-05-18");
        shop.json("invoice", "reissue", "INV-2026-00001", "--purchase-order", "PO-77", "--due", "keep", "--reason",
                "Wrong order.", "--date", "2026-05-19");
        assertThat(job(shop).path("stages").get(0).path("invoice").asString()).isEqualTo("INV-2026-00002");

        shop.json("job", "withdraw", QUOTE, "--reason", "The bar closes.", "--on", "2026-05-20");
        assertThat(stages(shop)).containsExactly("deposit 68.96 due-back false");
        shop.json("credit", "issue", "INV-2026-00002", "--reason", "Not done.", "--date", "2026-05-21");

        assertThat(stages(shop)).containsExactly("deposit 68.96 refunded false");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    private BookShop accepted(Database database, String paid) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        Path quote = shop.folder().resolve("quotes/float-switch.yaml");
        Files.writeString(quote, Files.readString(quote).replace("deposit: 30", paid));
        shop.json("visit", "add", shop.folder().resolve("visits/late-call.yaml").toString());
        shop.json("import", quote.toString());
        shop.json("quote", "issue", "float-switch", "--date", "2026-05-14");
        shop.json("quote", "accept", QUOTE, "--by", "D. Okafor", "--way", "mail", "--on", "2026-05-18");
        return shop;
    }

    private static void done(BookShop shop) throws IOException {
        shop.json("visit", "add", shop.write("planned/float-switch.yaml",
                Files.readString(shop.folder().resolve("quotes/float-switch.yaml"))
                        .replace("form: planned-visit", "form: visit").replaceAll("(?s)quote:.*?people:", "people:"))
                .toString());
    }

    private static String bill(BookShop shop, String what, String date) {
        return shop.json("job", what, QUOTE, "--date", date).path("papers").get(0).path("gross").asString();
    }

    private static JsonNode job(BookShop shop) {
        return shop.json("job", "show", QUOTE);
    }

    private static List<String> stages(BookShop shop) {
        return job(shop).path("stages").valueStream().map(stage -> stage.path("kind").asString() + " "
                + stage.path("due").asString() + " " + stage.path("state").asString() + " "
                + stage.path("ready").asBoolean()).toList();
    }
}
