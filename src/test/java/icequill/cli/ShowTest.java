package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Whatever has a name in the book is shown by it. */
class ShowTest {

    @TempDir
    static Path common;

    private static BookShop shop = new BookShop(Path.of(""));

    @BeforeAll
    static void issue() throws IOException {
        shop = BookShop.in(common.resolve("shop"), Database.SQLITE);
        shop.issue("ten-minute-brushing", "2026-05-14");
        shop.issue("late-call", "2026-05-15");
        shop.json("credit", "issue", "INV-2026-00002", "--lines", "3", "--reason", "No evening work.", "--date",
                "2026-06-01");
        shop.json("quote", "issue", "crumb-lane-plan", "--date", "2026-05-14");
        shop.json("invoice", "issue", "crumb-lane-bakery", "--installment", "1", "--date", "2026-06-02");
    }

    /**
     * 52.00 + 65.33 + 159.25 = 276.58; of it state 4 % are 11.06, county 4.5 % 12.45 and district 0.375 % 1.04: 301.13 in all. The
     * evening's 159.25 go back with 6.37, 7.16 (not 7.17, so that the parts add up to 14.13) and 0.60.
     */
    @Test
    void invoiceAndItsCredit_linesTaxesAndWhatTheyAreFor() {
        assertThat(text("show", "INV-2026-00002")).contains("""
                #  line                                            outcome       net
                -  ----------------------------------------------  ---------  ------
                1  Service call within 30 miles, standard hours    Charged     52.00
                2  Labor, repair: lead technician, standard hours  Charged     65.33
                3  Labor, repair: lead technician, after hours     Charged    159.25
                   Total before tax                                           276.58
                   State 4%                                        on 276.58   11.06
                   County 4.5%                                     on 276.58   12.45
                   Transit district 0.375%                         on 276.58    1.04
                   Total                                                      301.13
                """).containsPattern("visit +late-call\n").containsPattern("purchaseOrder +CK-1188\n")
                .containsPattern("served +2026-05-13\n")
                .containsPattern("givenBackBy +credit note CN-2026-00001, USD -173.38\n");
        assertThat(text("show", "cn-2026-1")).contains("""
                3  Labor, repair: lead technician, after hours  Charged     -159.25
                   Total before tax                                         -159.25
                   State 4%                                     on -159.25    -6.37
                   County 4.5%                                  on -159.25    -7.16
                   Transit district 0.375%                      on -159.25    -0.60
                   Total                                                    -173.38
                """).containsPattern("corrects +INV-2026-00002\n").containsPattern("reason +No evening work.\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2 | INV-2026-00002", "inv 2026/2 | INV-2026-00002", "2026-3 | INV-2026-00003",
            "INV-2026-00003 | INV-2026-00003", "mq-2026-1 | MQ-2026-00001"})
    void number_asPeopleTypeIt_isThatPaper(String typed, String number) {
        assertThat(shop.json("show", typed).path("paper").path("issued").path("number").asString()).isEqualTo(number);
    }

    @Test
    void countThatSeveralPapersHave_namesThem() {
        assertThat(shop.problems("show", "1")).singleElement().asString()
                .contains("\"1\" may be several papers", "one of: INV-2026-00001, CN-2026-00001, MQ-2026-00001");
        assertThat(shop.json("find", "00002").path("papers")).hasSize(1);
        assertThat(shop.json("find", "2").path("papers").get(0).path("number").asString()).isEqualTo("INV-2026-00002");
    }

    @Test
    void paymentOfAnAgreement_saysWhich_andTheQuoteItsChoices() {
        assertThat(text("show", "INV-2026-00003")).containsPattern("installment +1 of 4\n")
                .containsPattern("agreement +A-2026-004\n");
        assertThat(text("show", "MQ-2026-00001")).contains("validUntil", "Way", "Paying per call", "Quarterly plan");
    }

    /** A customer, his only site, an agreement and a request are called the same. */
    @Test
    void nameOfSeveral_showsEach_andTheCommandThatTellsMore() {
        JsonNode shown = shop.json("show", "crumb-lane-bakery");
        assertThat(shown.propertyNames()).containsExactly("entries");
        assertThat(shown.path("entries")).extracting(entry -> entry.path("kind").asString())
                .containsExactly("customer", "site", "agreement", "brushing-request");
        assertThat(shown.path("entries").get(0).path("papers").get(0).asString()).isEqualTo("INV-2026-00001");
        assertThat(shown.path("entries").get(2).path("papers").get(0).asString()).isEqualTo("INV-2026-00003");
        assertThat(text("show", "crumb-lane-bakery")).contains("customer crumb-lane-bakery\n",
                "More: icequill site history crumb-lane-bakery\n");
        assertThat(shop.json("show", "hotel-fernhill/lobby-bar").path("entries").get(0).path("form").path("serial")
                .asString())
                .isEqualTo("QD-500-7710");
        assertThat(text("show", "lobby-bar")).contains("More: icequill machine history hotel-fernhill lobby-bar");
        assertThat(text("show", "A-2026-004")).containsPattern("tier +quarterly\n");
        assertThat(text("show", "plan-mercado")).containsPattern("form +maintenance-request\n");
    }

    @Test
    void visit_isToldWithItsPapers_inTheLanguageAskedFor() {
        assertThat(text("show", "late-call")).startsWith("May 13, 2026, 4:20 PM – 6:05 PM: visit late-call, billed\n")
                .contains("  Reported: No ice since noon.\n", "Invoice INV-2026-00002 of May 15, 2026: USD 301.13\n");
        assertThat(text("show", "late-call", "--lang", "es")).contains(": visita late-call, facturada\n");
        assertThat(shop.json("show", "late-call").path("visit").path("papers").get(0).path("gross").asString())
                .isEqualTo("301.13");
        assertThat(text("show", "summer-cleaning-bakery")).contains("visit summer-cleaning-bakery, planned\n");
    }

    @Test
    void nothingOfThatName_namesTheNearest() {
        assertThat(shop.problems("show", "late-cal")).singleElement().asString().contains(
                "no paper, customer, site, machine, visit, agreement or request called \"late-cal\"",
                "did you mean \"late-call\"?");
        assertThat(shop.problems("show", "INV-2026-00099")).singleElement().asString().contains("icequill find");
    }

    private static String text(String... args) {
        Run run = shop.run(args);
        assertThat(run.status()).as(run.err()).isZero();
        return run.out().replace('\u00a0', ' ').replace(System.lineSeparator(), "\n");
    }
}
