package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The day of a paper is that of the shop, wherever the machine stands. */
class ShopDayTest {

    @TempDir
    private Path other;

    /** At half past two of the first of January in London it is evening of the last of December in New York. */
    @ParameterizedTest
    @CsvSource({"America/New_York, 2027-01-01T02:30:00Z, UTC, INV-2026-00001",
            "America/New_York, 2027-01-01T02:30:00Z, Asia/Tokyo, INV-2026-00001",
            "America/New_York, 2027-01-01T05:00:00Z, America/Los_Angeles, INV-2027-00001",
            "Pacific/Auckland, 2026-12-31T11:00:00Z, UTC, INV-2027-00001",
            "Pacific/Auckland, 2026-12-31T10:59:59Z, UTC, INV-2026-00001"})
    void newYearsEve_countsWhereTheShopIs(String zone, Instant moment, ZoneId machine, String number)
            throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        Path file = shop.folder().resolve("shop.yaml");
        Files.writeString(file, Files.readString(file).replaceFirst("zone: .*", "zone: " + zone));
        shop.json("visit", "add", shop.folder().resolve("visits/late-call.yaml").toString());
        StringWriter out = new StringWriter();

        int status = Main.run(Clock.fixed(moment, machine), new BufferedReader(Reader.nullReader()),
                new PrintWriter(out, true), new PrintWriter(out, true), "invoice", "issue", "late-call", "--shop",
                shop.folder().toString());

        assertThat(status).as(out.toString()).isZero();
        assertThat(out.toString()).contains(number);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1900-01-01", "9999-12-31", "2150-01-01"})
    void dayFarOff_isWrongUsage(String day) throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);

        assertThat(shop.run("invoice", "draft", "visits/late-call.yaml", "--date", day).status()).isEqualTo(2);
    }

    @Test
    void paperOrVisitFarOff_isAProblem() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        shop.json("visit", "add", shop.folder().resolve("visits/late-call.yaml").toString());

        assertThat(shop.problems("invoice", "issue", "late-call", "--date", "1999-12-31").getFirst())
                .contains("1999-12-31");
        Path visit = shop.write("visits/old.yaml", Files.readString(shop.folder().resolve("visits/late-call.yaml"))
                .replace("2026-", "1926-"));
        assertThat(shop.problems("visit", "add", visit.toString()))
                .anySatisfy(problem -> assertThat(problem).contains("the day of the visit is 1926-05-13"));
        Path site = shop.folder().resolve("sites/pennon-wharf-taproom.yaml");
        Files.writeString(site, Files.readString(site).replaceFirst("installed: [0-9-]+", "installed: 9999-01-01"));
        assertThat(shop.problems("import", site.toString()))
                .anySatisfy(problem -> assertThat(problem).contains("the day is 9999-01-01"));
    }
}
