package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A kind of site of the shop's own, with yeast and heat in its air, wherever kinds bear on something. */
class OwnSiteKindTest {

    private static final String TRUCK = "  - {id: tap-truck, name: {en: tap truck, es: camión cervecero}, air: [yeast, heat]}\n";

    @TempDir
    private Path folder;

    private BookShop shop = new BookShop(Path.of(""));
    private String quote = "";

    @BeforeEach
    void truck() throws IOException {
        shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
        append("pricing/site-kinds.yaml", TRUCK);
        replace("sites/crumb-lane-bakery.yaml", "kind: bakery", "kind: tap-truck");
        quote = shop.folder().resolve("quotes/crumb-lane-plan.yaml").toString();
    }

    @Test
    void ownKind_shortensTheIntervalAndIsNamedInBothLanguages() throws IOException {
        assertThat(html("quote", "draft", quote, "--html")).contains("ap truck: much yeast in the air")
                .contains("hot room, so");
        assertThat(html("quote", "draft", quote, "--html", "--lang", "es"))
                .contains("amión cervecero: mucha levadura en el");
    }

    @Test
    void ownKind_speedsDirtUpByItsAir_orByItsOwnRecords() throws IOException {
        replace("pricing/forecast.yaml", "{usual: 30, low: 15, high: 50}", "{usual: 0, low: 0, high: 0}");
        JsonNode before = shop.json("compare", quote);
        assertThat(before.findValue("siteFactors").propertyNames()).contains("yeast", "heat");

        append("pricing/forecast.yaml", """
                byKind:
                  tap-truck:
                    water:
                      usual: {by6: 12, by12: 19}
                      low: {by6: 11, by12: 18}
                      high: {by6: 13, by12: 19.5}
                """);
        assertThat(calls(shop.json("compare", quote))).isGreaterThan(calls(before));
    }

    @Test
    void ownKind_inATableOfRuns_isFittedByItself() throws IOException {
        replace("records/runs.csv", ",bakery,", ",tap-truck,");

        JsonNode fit = shop.json("fit", shop.folder().resolve("records/runs.csv").toString());

        assertThat(fit.path("settings").valueStream().map(JsonNode::asString)).contains(" tap-truck: {");
        assertThat(fit.path("fits").valueStream().map(one -> one.path("kind").asString(""))).contains("tap-truck");
    }

    @Test
    void unknownKind_isReportedWithTheNearest_inEveryWayIn() throws IOException {
        String nearest = "there is no kind of site \"tap-truk\" (did you mean \"tap-truck\"?";
        shop.json("customer", "add", "mill", "--name", "Mill Lane", "--street", "4 Mill Lane", "--city", "Alderton",
                "--region", "NY", "--postal-code", "10999", "--country", "US");

        assertThat(shop.problems("site", "add", "mill-lane", "--customer", "mill", "--name", "Mill Lane", "--street",
                "4 Mill Lane", "--city", "Alderton", "--region", "NY", "--postal-code", "10999", "--country", "US",
                "--kind", "tap-truk", "--miles", "3")).singleElement().asString().contains("--kind", nearest);
        assertThat(shop.problems("import", shop.write("sites.csv",
                "site,customer,name,street,city,postalCode,country,kind,miles\nmill,mill,Mill,4 Lane,Alderton,1,US,tap-truk,3\n")
                .toString())).singleElement().asString().contains("sites.csv:2: kind", nearest);
        replace("sites/crumb-lane-bakery.yaml", "kind: tap-truck", "kind: tap-truk");
        replace("records/runs.csv", ",bakery,", ",tap-truk,");
        append("pricing/forecast.yaml", "byKind:\n  tap-truk: {}\n");
        assertThat(shop.problems("import", shop.folder().resolve("sites/crumb-lane-bakery.yaml").toString()))
                .anySatisfy(text -> assertThat(text).contains("sites/crumb-lane-bakery.yaml:26: kind", nearest))
                .anySatisfy(text -> assertThat(text).contains("pricing/forecast.yaml", "byKind.tap-truk", nearest));
        replace("pricing/forecast.yaml", "tap-truk", "tap-truck");
        assertThat(shop.problems("fit", shop.folder().resolve("records/runs.csv").toString())).first().asString()
                .contains("runs.csv:2: kind", nearest);
    }

    @Test
    void kindsWithFaults_areReported_andAnOlderShopHasTheUsualOnes() throws IOException {
        append("pricing/site-kinds.yaml", TRUCK + "  - {id: barge, name: {en: barge}, air: [salt]}\n");

        assertThat(shop.problems("check"))
                .anySatisfy(text -> assertThat(text).contains("site-kinds.yaml", "\"tap-truck\" is used a second time"))
                .anySatisfy(text -> assertThat(text).contains("\"es\" is missing"))
                .anySatisfy(text -> assertThat(text).contains("\"salt\"", "grease, heat, yeast"));
        Files.delete(shop.folder().resolve("pricing/site-kinds.yaml"));
        replace("sites/crumb-lane-bakery.yaml", "kind: tap-truck", "kind: bakery");
        assertThat(shop.run("check").status()).isZero();
    }

    private static double calls(JsonNode comparison) {
        return comparison.path("forecast").path("options").path("payPerCall").path("expectedCalls").asDouble();
    }

    private String html(String... args) throws IOException {
        return Files.readString(Path.of(shop.json(args).path("files").get(1).asString()));
    }

    private void append(String name, String text) throws IOException {
        Path file = shop.folder().resolve(name);
        Files.writeString(file, Files.readString(file) + text);
    }

    private void replace(String name, String from, String to) throws IOException {
        Path file = shop.folder().resolve(name);
        Files.writeString(file, Files.readString(file).replace(from, to));
    }
}
