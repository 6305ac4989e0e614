package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** What a diagnosis charged is taken off its repair: an hour of 98.00, beside 52.00 for coming out. */
@Tag("wide")
class DiagnosisCreditTest {

    @TempDir
    Path folder;
    private BookShop shop;

    @BeforeEach
    void bakery() throws IOException {
        shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
        shop.json("customer", "add", "mill", "--name", "Mill Bakeries", "--payment-days", "30", "--street",
                "4 Mill Lane", "--city", "Alderton", "--region", "NY", "--postal-code", "10999", "--country", "US");
        for (String site : new String[]{"lane", "quay"}) {
            shop.json("site", "add", site, "--customer", "mill", "--name", "Mill " + site, "--kind", "bakery",
                    "--miles", "3", "--tax-place", "alder-county", "--street", "4 Mill Lane", "--city", "Alderton",
                    "--region", "NY", "--postal-code", "10999", "--country", "US");
        }
        shop.json("import", visit("look", "lane", "2026-05-13", "diagnosis", ""));
    }

    /**
     * Two hours and coming out are 248.00. Less 98.00, and less 150.00 where coming out is taken off too; 5 % off what is charged,
     * 12.40, is figured without what is taken off. 8.875 % of 150.00 is 13.3125, of 98.00 8.6975, of 137.60 12.2120.
     */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', value = {"{days: 30} | '' | 150.00 | 163.31 | -98.00",
            "{days: 26, serviceCall: true} | '' | 98.00 | 106.70 | -150.00",
            "{days: 30} | documentDiscount: group | 137.60 | 149.81 | -98.00"})
    void repair_isLessWhatItsDiagnosisCharged(String terms, String more, String net, String gross, String off)
            throws IOException {
        terms(terms);
        shop.json("import", visit("mend", "lane", "2026-06-08", "repair", more + "\ndiagnosis: look\n"));

        JsonNode price = shop.json("price", "mend");
        JsonNode issued = shop.json("invoice", "issue", "mend", "--date", "2026-06-10").path("papers").get(0);

        assertThat(price.path("lines").get(2).path("net").asString()).isEqualTo(off);
        assertThat(price.path("net").asString()).isEqualTo(net);
        assertThat(issued.path("gross").asString()).isEqualTo(gross);
        shop.json("paper", "reprint", "INV-2026-00001", "--html", "--xml");
        assertThat(Files.readString(shop.folder().resolve("papers/INV-2026-00001.html"))).contains(
                "Diagnosis of May 13, 2026 (visit look), taken off",
                "what the diagnosis of May 13, 2026 charged is taken off its repair");
        assertThat(shop.json("credit", "issue", "INV-2026-00001", "--reason", "All.", "--date", "2026-06-11")
                .path("papers").get(0).path("gross").asString()).isEqualTo("-" + gross);
    }

    /** The repair begins 26 days after the diagnosis. */
    @ParameterizedTest(name = "{3}")
    @CsvSource(delimiter = '|', value = {"{days: 25} | lane | diagnosis: look | 26 days before (at most 25)",
            "{days: 30} | quay | diagnosis: look | visit \"look\" was at \"lane\"",
            "{days: 30} | lane | diagnosis: lok | there is no visit \"lok\"",
            "{days: 30} | lane | diagnosis: plain | charged 0.00 for diagnosis",
            "{days: 30} | lane | diagnosis: later | was on 2026-06-20, after this one"})
    void whatIsNoDiagnosisOfIt_isAProblem(String terms, String site, String names, String problem) throws IOException {
        terms(terms);
        shop.json("import", visit("plain", "lane", "2026-05-14", "repair", ""),
                visit("later", "lane", "2026-06-20", "diagnosis", ""));

        assertThat(shop.problems("import", visit("mend", site, "2026-06-08", "repair", names + "\n"))).singleElement()
                .asString().contains(problem, "mend.yaml");
    }

    @Test
    void withoutTerms_nothingIsTakenOff() throws IOException {
        assertThat(shop.problems("import", visit("mend", "lane", "2026-06-08", "repair", "diagnosis: look\n")))
                .singleElement().asString().contains("take no diagnosis off its repair");
    }

    @Test
    void eachDiagnosis_isTakenOffOnce() throws IOException {
        terms("{days: 30}");
        String again = visit("again", "lane", "2026-06-09", "repair", "diagnosis: look\n");
        shop.json("import", visit("mend", "lane", "2026-06-08", "repair", "diagnosis: look\n"));

        assertThat(shop.problems("import", again)).singleElement().asString()
                .contains("the diagnosis \"look\" is taken off visit \"mend\" already");
        shop.json("visit", "withdraw", "mend", "--reason", "Never was.");
        shop.json("import", again);
        assertThat(shop.json("price", "again").path("net").asString()).isEqualTo("150.00");
    }

    /** What was given back in whole was never charged; what is issued anew is. */
    @Test
    void aDiagnosisThatWasGivenBack_isNotTakenOff() throws IOException {
        terms("{days: 30}");
        shop.json("import", visit("mend", "lane", "2026-06-08", "repair", "diagnosis: look\n"));
        shop.json("invoice", "issue", "look", "--date", "2026-06-09");
        shop.json("credit", "issue", "INV-2026-00001", "--reason", "All.", "--date", "2026-06-10");
        String again = visit("again", "lane", "2026-06-09", "repair", "diagnosis: look\n");
        String back = "what the diagnosis \"look\" charged was given back: INV-2026-00001";

        assertThat(shop.problems("invoice", "issue", "mend", "--date", "2026-06-11")).singleElement().asString()
                .contains(back);
        shop.json("visit", "withdraw", "mend", "--reason", "Never was.");
        assertThat(shop.problems("import", again)).singleElement().asString().contains(back);
        shop.json("invoice", "issue", "look", "--date", "2026-06-12");
        shop.json("import", again);
        assertThat(shop.json("price", "again").path("net").asString()).isEqualTo("150.00");
    }

    private void terms(String terms) throws IOException {
        Path adjustments = shop.folder().resolve("pricing/adjustments.yaml");
        Files.writeString(adjustments, Files.readString(adjustments) + "\ndiagnosisCredit: " + terms + "\n");
    }

    /** An hour of diagnosis, or two of repair. */
    private String visit(String id, String site, String day, String on, String more) throws IOException {
        return shop.write("own/" + id + ".yaml", """
                format: 1
                form: visit
                id: %s
                site: %s
                people:
                  - {name: Rosa, grade: lead, arrived: %sT10:00, left: %sT%s:00, on: %s}
                %s""".formatted(id, site, day, day, on.equals("repair") ? "12" : "11", on, more)).toString();
    }
}
