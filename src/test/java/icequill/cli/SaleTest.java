package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/**
 * Two filters of 87.25 each sold without a visit. Shipped for 14.50 to a place of 8.875 %: 189.00 and 16.77. Fetched at the shop,
 * where 7 % are due: 174.50 and 12.22.
 */
class SaleTest {

    @TempDir
    private Path temporary;

    private BookShop shop = new BookShop(Path.of(""));

    @BeforeEach
    void make() throws IOException {
        shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
    }

    @Test
    void shipped_taxedAtTheSite_billedLikeAVisit() throws IOException {
        JsonNode sale = shop.json("sale", "add", "pennon-wharf-taproom", "water-filter=2", "--shipping", "14.50",
                "--date", "2026-05-20", "--purchase-order", "PO-7");

        assertThat(sale.path("visit").asString()).isEqualTo("pennon-wharf-taproom-sale-2026-05-20");
        assertThat(sale.path("gross").asString()).isEqualTo("205.77");
        JsonNode paper = shop.json("invoice", "issue", sale.path("visit").asString(), "--date", "2026-05-21")
                .path("papers").get(0);
        assertThat(paper.path("gross").asString()).isEqualTo("205.77");
        assertThat(text(paper)).contains("Date of delivery May 20, 2026", "Delivery",
                "Shipped to Pennon Wharf Taproom, 90 Wharf Street", "Purchase order PO-7", "Shipping", "14.50",
                "Our sale pennon-wharf-taproom-sale-2026- 05-20",
                "174.50", "16.77", "205.77").doesNotContain("Arrived", "12:00 AM", "Service call");
        assertThat(shop.run("visit", "show", sale.path("visit").asString()).out())
                .startsWith("May 20, 2026: sale pennon-wharf-taproom-sale-2026-05-20");
        assertThat(shop.json("sale", "add", "pennon-wharf-taproom", "water-filter=1", "--date", "2026-05-20")
                .path("visit").asString()).as("another of the day").endsWith("-2026-05-20-2");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @Test
    void fetched_taxedAtTheShop_inSpanish() throws IOException {
        assertThat(
                problem("sale", "add", "pennon-wharf-taproom", "water-filter=2", "--fetched", "--date", "2026-05-20"))
                .contains("shop.yaml", "no tax place is named");
        Path settings = shop.folder().resolve("shop.yaml");
        Files.writeString(settings, Files.readString(settings) + "\ntaxPlace: palma-county\n");
        shop.json("rates", "adopt", "--yes");

        JsonNode sale = shop.json("sale", "add", "mercado-del-mar", "water-filter=2", "--fetched", "--date",
                "2026-05-20");
        JsonNode paper = shop.json("invoice", "issue", sale.path("visit").asString(), "--date", "2026-05-21")
                .path("papers").get(0);

        assertThat(paper.path("gross").asString()).isEqualTo("186.72");
        assertThat(text(paper)).contains("Entrega", "Recogido en", "418 Tanner Row", "12.22");
    }

    /** A fee of every visit, and one that is named; a discount by the line; what is sent is of two classes. */
    @Test
    void form_withAllThatASaleMayHold() throws IOException {
        Path form = temporary.resolve("filters.yaml");
        Files.writeString(form, """
                format: 1
                form: sale
                site: pennon-wharf-taproom
                sold: {on: 2026-05-20, way: shipped, shipping: {cost: 10.00, markup: 20, class: filters}}
                lines:
                  - {material: water-filter, amount: 2, less: {percent: 10, reason: bought two}}
                  - {text: bracket, class: parts, price: 21.40}
                documentDiscount: welcome
                """);
        Files.writeString(shop.folder().resolve("pricing/adjustments.yaml"),
                Files.readString(shop.folder().resolve("pricing/adjustments.yaml")).replace("classDiscounts:",
                        "fees:\n  - {id: truck, name: {en: truck, es: truck}, class: travel, amount: 7.35, always: true}\n"
                                + "classDiscounts:"));
        shop.json("rates", "adopt", "--yes");

        // 157.05 + 21.40 + 12.00 - 10.00 = 180.45, and no service call, labor or fee of visits
        Run priced = shop.run("price", form.toString());
        assertThat(priced.out()).contains("157.05", "21.40", "12.00", "180.45").doesNotContain("truck", "Labor");
        assertThat(shop.problems("visit", "record", form.toString())).singleElement().asString()
                .contains("is a sale, of which there is no record");
        shop.json("import", form.toString());
        assertThat(shop.run("export", "-", "filters").out()).contains("form: sale", "sold:", "way: shipped");
        Path handedOver = temporary.resolve("handed-over.yaml");
        shop.json("export", handedOver.toString(), "filters");
        assertThat(shop.json("import", handedOver.toString()).at("/forms/0/state").asString()).isEqualTo("same");
        assertThat(shop.run("price", "filters").out()).contains("157.05", "21.40", "12.00", "180.45");
        assertThat(shop.json("invoice", "issue", "--all", "--date", "2026-06-30").path("papers")).isNotEmpty();
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** 20 % off filters are off the 174.50, not off the 12.00 that sending them costs. */
    @Test
    void classDiscount_isOnWhatWasSoldAndNotOnShipping() throws IOException {
        Path form = Files.writeString(temporary.resolve("fifth.yaml"), """
                format: 1
                form: sale
                site: pennon-wharf-taproom
                sold: {on: 2026-05-20, way: shipped, shipping: {price: 12.00}}
                lines: [{material: water-filter, amount: 2}]
                less: [{class: filters, percent: 20, reason: bought before}]
                """);

        assertThat(shop.json("price", form.toString()).path("net").asString()).isEqualTo("151.60");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"sold: {on: 2026-05-20, way: sent} | way",
            "sold: {on: 2026-05-20, way: fetched, shipping: {price: 5}} | fetched, and yet shipping is charged",
            "sold: {on: 2026-05-20, way: shipped, shipping: {}} | neither a price nor a cost",
            "sold: {on: 2026-05-20, way: shipped, shipping: {price: 5}} | things of the classes filters, parts are sent together",
            "people: [] | \"people\" is missing (who was there; or sold: for what was shipped or fetched without a visit)",
            "sold: {on: 2026-05-20, way: shipped}; serviceCall: charged | serviceCall belongs to a visit"})
    void form_wrong_saysWhy(String keys, String message) throws IOException {
        Path form = Files.writeString(temporary.resolve("wrong.yaml"), """
                format: 1
                form: sale
                site: pennon-wharf-taproom
                lines: [{material: water-filter, amount: 2}, {material: nylon-brush, amount: 1}]
                %s
                """.formatted(keys.replace("; ", "\n")));

        assertThat(problem("import", form.toString())).contains(message);
    }

    @Test
    void command_thingsThatAreNotThere_areProblems() {
        assertThat(problem("sale", "add", "pennon-wharf-taproom", "water-filtr=2", "--date", "2026-05-20"))
                .contains("there is no material \"water-filtr\"");
        assertThat(problem("sale", "add", "nowhere", "water-filter=2")).contains("there is no site \"nowhere\"");
        assertThat(problem("sale", "add", "pennon-wharf-taproom", "water-filter=0")).contains("amount");
        assertThat(problem("sale", "add", "pennon-wharf-taproom", "water-filter=2", "water-filter=1"))
                .contains("water-filter is given twice, as 2 and as 1 (each once)");
        assertThat(problem("sale", "add", "pennon-wharf-taproom", "water-filter=two", "bin-gasket=-1"))
                .contains("water-filter=two is no amount", "bin-gasket=-1 is no amount");
        assertThat(shop.run("sale", "add", "pennon-wharf-taproom").err()).contains("MATERIAL=N");
    }

    private String problem(String... line) {
        return shop.problems(line).toString();
    }

    private static String text(JsonNode paper) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(Path.of(paper.path("file").asString()).toFile())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }
}
