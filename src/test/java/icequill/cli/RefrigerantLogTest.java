package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** What technicians add and recover: recorded on visits, held against who may do it, told as a log with leak rates. */
@Tag("wide")
class RefrigerantLogTest {

    private static final String SITE = "pennon-wharf-taproom";

    @TempDir
    private Path folder;

    /**
     * The machine holds 24 oz. 3 oz added on 3 March, 2 oz on 2 April after 30 days: 2 / 24 x 365 / 30 = 101.39 % by the one method,
     * (3 + 2) / 24 = 20.83 % by the other. The law asks from 15 lb on, which is 240 oz.
     */
    @ParameterizedTest
    @EnumSource
    void visits_areALog(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        add(shop, "one", "2026-03-03", "{added: 3, from: V-17, technician: Ada Quill, leak: Flare nut}");
        add(shop, "two", "2026-04-02", "{added: 0.125, unit: lb, from: V-17, technician: ada  QUILL}");

        JsonNode log = shop.json("refrigerant", "log", "--site", SITE);

        JsonNode machine = log.path("machines").get(0);
        assertThat(machine.path("outcome").asString()).isEqualTo("too-small");
        assertThat(machine.path("says").asString().replace('\u00a0', ' ')).contains("from a full charge of 15 lb on",
                "holds 24 oz",
                "not asked for here");
        assertThat(machine.path("rates")).extracting(rate -> rate.path("percent").asString())
                .containsExactly("101.39", "20.83");
        assertThat(machine.path("rates").get(0).path("how").asString().replace('\u00a0', ' '))
                .isEqualTo("By the last addition: 2 oz lost ÷ 24 oz full charge × 365 ÷ 30 days = 101.39% a year");
        JsonNode cylinder = log.path("cylinders").get(0);
        assertThat(cylinder.path("taken").asString()).isEqualTo("5");
        assertThat(cylinder.has("balance")).isFalse();
        assertThat(shop.json("refrigerant", "log", "--from", "2026-04-01").path("visits")).hasSize(1);
        assertThat(shop.json("refrigerant", "log", "--from", "2026-04-01").path("machines").get(0).path("rates")
                .get(1).path("percent").asString()).isEqualTo("20.83");
        assertThat(shop.json("refrigerant", "log", "--month", "2026-05").path("visits")).isEmpty();
        shop.json("visit", "withdraw", "one", "--reason", "Twice.");
        assertThat(shop.json("refrigerant", "log").path("visits")).hasSize(1);
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** What the visit did stands on its record and on its page, and is a paper of the site's own. */
    @Test
    void papers_tellItInTheCustomersLanguage() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        add(shop, "one", "2026-03-03", "{added: 12, recovered: 4, into: R-3, technician: Ada Quill, charge: 38,"
                + " repair: Made anew, test: {when: follow-up, tight: true, how: nitrogen}}");
        shop.json("visit", "record", "one", "--html");
        shop.json("refrigerant", "record", SITE, "--lang", "es", "--html", "--from", "2026-01-01");

        assertThat(text(shop, "record-one")).contains(
                "12 oz added; 4 oz (cylinder R-3) recovered; Ada Quill, certified Universal (DEMO-0001); Made anew;"
                        + " follow-up test: no leak found (nitrogen)");
        assertThat(text(shop, "refrigerant-" + SITE)).contains(
                "Registro de refrigerante", "12 oz cargadas − 4 oz recuperadas antes = 8 oz perdidas",
                "8 oz perdidas ÷ 38 oz de carga completa = 21.05");
        assertThat(shop.run("visit", "show", "one").out().replace('\u00a0', ' '))
                .contains("Refrigerant: R-404A, full charge 38 oz");
    }

    /** Teo's grade has no certificate and neither has he; Sol's is for small machines, and this one is remote. */
    @Test
    void whatMayNotBe_isOneReport() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);

        assertThat(refused(shop, "{added: 3, kind: R-404B}")).anyMatch(text -> text.contains(
                "there is no refrigerant in pricing/refrigerants.yaml \"R-404B\" (did you mean \"R-404A\"?"))
                .anyMatch(text -> text.contains("who added or recovered refrigerant is missing"));
        assertThat(refused(shop, "{added: 3, technician: Teo Lindqvist}"))
                .anyMatch(text -> text.contains("there is no person on the visit \"Teo Lindqvist\""))
                .anyMatch(text -> text.contains("has no certificate for refrigerant on record (somebody who has;"));
        assertThat(refused(shop, "{added: -3}")).anyMatch(text -> text.contains("found the number -3"));
        assertThat(refused(shop, "{purpose: disposal, added: 3, technician: Ada Quill}"))
                .anyMatch(text -> text.contains("added to a machine that is disposed of"));
        assertThat(refused(shop, "{kind: R-404A}")).anyMatch(text -> text.contains("nothing is said of what was done"));
        assertThat(refused(shop, "{recovered: 3, charge: 81, technician: Sol Marrero}"))
                .anyMatch(text -> text.contains("does not hold for this machine (Type II or Universal"));
    }

    /** More than a machine can hold is said, not refused: the weights may be right, and the record of the charge wrong. */
    @Test
    void moreThanTheCharge_isSaid() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);

        CommandsTest.Run added = shop.run("visit", "add",
                form(shop, "one", "2026-03-03", "{recovered: 25, technician: Ada Quill}"));

        assertThat(added.err()).contains("25 oz recovered is more than the full charge of 24 oz");
        assertThat(added.status()).isZero();
    }

    private static String text(BookShop shop, String paper) throws IOException {
        String html = Files.readString(shop.folder().resolve("papers/" + paper + ".html"));
        return html.substring(html.indexOf("<body")).replace('\u00a0', ' ');
    }

    private List<String> refused(BookShop shop, String refrigerant) throws IOException {
        return shop.problems("visit", "add", form(shop, "wrong", "2026-03-03", refrigerant));
    }

    private static void add(BookShop shop, String id, String day, String refrigerant) throws IOException {
        shop.json("visit", "add", form(shop, id, day, refrigerant));
    }

    private static String form(BookShop shop, String id, String day, String refrigerant) throws IOException {
        return Files.writeString(shop.folder().resolve(id + ".yaml"), """
                format: 1
                form: visit
                id: %s
                site: pennon-wharf-taproom
                people:
                  - {name: Ada Quill, grade: lead, arrived: %sT10:00, left: %sT11:00, on: repair}
                  - {name: Sol Marrero, grade: lead, arrived: %sT10:00, left: %sT11:00, on: repair}
                machines:
                  - machine: back-bar
                    refrigerant: %s
                """.formatted(id, day, day, day, day, refrigerant)).toString();
    }
}
