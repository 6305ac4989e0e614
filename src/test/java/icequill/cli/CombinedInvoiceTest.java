package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** Several visits of a customer, at several sites, on one invoice. */
@Tag("wide")
class CombinedInvoiceTest {

    private static final String[] LANE = {"--street", "4 Mill Lane", "--city", "Alderton", "--region", "NY",
            "--postal-code", "10999", "--country", "US"};
    private static final String NUMBER = "INV-2026-00001";

    @TempDir
    Path folder;

    /** A bakery with two sites, in Alder County (8.875 %) and in Palma County (7 %, labor only with parts). */
    private BookShop shop(Database database, String name) throws IOException {
        BookShop shop = BookShop.in(folder.resolve(name), database);
        shop.json(with(LANE, "customer", "add", "mill", "--name", "Mill Bakeries", "--payment-days", "30"));
        site(shop, "lane", "alder-county", "0412");
        site(shop, "quay", "palma-county", "0388");
        shop.json("import", visit(shop, "may", "lane", "2026-05-13", ""), visit(shop, "june", "lane", "2026-06-10", ""),
                visit(shop, "july", "quay", "2026-07-08", "lines: [{material: water-inlet-valve, amount: 1}]\n"));
        return shop;
    }

    private static void site(BookShop shop, String id, String place, String store) {
        shop.json(with(LANE, "site", "add", id, "--customer", "mill", "--name", "Mill " + id, "--kind", "bakery",
                "--miles", "3", "--tax-place", place, "--store-number", store));
        shop.json("machine", "add", id, "cuber", "--model", "Cuber 300", "--where", "back", "--make", "batch", "--form",
                "head", "--cooling", "air", "--harvest-rate", "300", "--connection", "hard-wired", "--serial",
                "S-" + store);
    }

    /** Ten minutes, which are 52.00 and 98.00. */
    private static String visit(BookShop shop, String id, String site, String day, String more) throws IOException {
        return shop.write("own/" + id + ".yaml", """
                format: 1
                form: visit
                id: %s
                site: %s
                people:
                  - {name: Rosa, grade: lead, arrived: %sT10:00, left: %sT10:10, on: cleaning}
                machines:
                  - {machine: cuber, complaint: Too warm., cause: Dust., correction: Brushed the condenser.}
                %s""".formatted(id, site, day, day, more)).toString();
    }

    /**
     * 150.00 and 150.00 at 8.875 % are 26.625, so 26.63 and not twice 13.31; 150.00 and 125.50 at 7 % are 19.285, so 19.29. In all
     * 575.50 + 45.92.
     */
    @ParameterizedTest
    @EnumSource(Database.class)
    void twoPlaces_taxedOncePerRate_toTheCent(Database database) throws IOException {
        BookShop shop = shop(database, "shop");

        JsonNode issued = shop.json("invoice", "issue", "july", "may", "june", "--together", "--date", "2026-07-10")
                .path("papers").get(0);
        JsonNode shown = shop.json("show", NUMBER).path("paper");

        assertThat(issued.path("gross").asString()).isEqualTo("621.42");
        assertThat(shown.path("amounts").path("net").asString()).isEqualTo("575.50");
        assertThat(shown.path("amounts").path("taxes")).extracting(tax -> tax.path("base").asString() + " "
                + tax.path("amount").asString()).containsExactly("300.00 26.63", "275.50 19.29");
        assertThat(shown.path("origin").path("visits")).extracting(JsonNode::asString)
                .containsExactly("may", "june", "july");
        assertThat(texts(shop.json("find", "0388").path("papers"))).containsExactly(NUMBER);
        assertThat(texts(shop.json("find", "--store", "0388").path("papers"))).containsExactly(NUMBER);
        assertThat(texts(shop.json("find", "--store", "0412").path("papers"))).containsExactly(NUMBER);
        assertThat(texts(shop.json("find", "S-0412").path("papers"))).containsExactly(NUMBER);
        assertThat(shop.json("audit").path("findings")).isEmpty();

        // Each of them is billed, and changes no more.
        for (String visit : List.of("may", "june", "july")) {
            assertThat(shop.run("invoice", "issue", visit).err()).contains("was billed as " + NUMBER);
        }
        assertThat(shop.json("invoice", "issue", "--all", "--dry-run").path("wouldIssue")).isEmpty();
        assertThat(shop.problems("import", visit(shop, "july", "quay", "2026-07-08", "")).getFirst())
                .contains("was billed as " + NUMBER);
    }

    /** Two counties that charge alike are two counties: 150.00 at 8.875 % is 13.31 in each, and not 26.63 in both. */
    @Test
    void twoPlaces_thatChargeAlike_areTaxedEachByItself() throws IOException {
        BookShop shop = shop(Database.SQLITE, "shop");
        Path taxes = shop.folder().resolve("pricing/taxes.yaml");
        String rules = Files.readString(taxes);
        int alder = rules.indexOf("  - id: alder-county");
        Files.writeString(taxes, rules.stripTrailing() + "\n"
                + rules.substring(alder, rules.indexOf("\n\n", alder)).replace("alder-county", "birch-county")
                        .replace("Alder County", "Birch County").replace("Condado de Alder", "Condado de Birch")
                + "\n");
        site(shop, "hill", "birch-county", "0500");
        shop.json("import", visit(shop, "hill-visit", "hill", "2026-05-14", ""));

        shop.json("invoice", "issue", "may", "hill-visit", "--together", "--date", "2026-07-10");

        JsonNode amounts = shop.json("show", NUMBER).path("paper").path("amounts");
        assertThat(amounts.path("taxes")).extracting(tax -> tax.path("amount").asString()).containsExactly("13.31",
                "13.31");
        assertThat(amounts.path("gross").asString()).isEqualTo("326.62");
        shop.json("paper", "reprint", NUMBER, "--html");
        assertThat(Files.readString(shop.folder().resolve("papers/" + NUMBER + ".html")))
                .contains("Alder County (demo): county tax", "Birch County (demo): county tax");
        assertThat(shop.json("credit", "issue", NUMBER, "--reason", "All of it.", "--date", "2026-07-12").path("papers")
                .get(0)
                .path("gross").asString()).isEqualTo("-326.62");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /**
     * Prices that are shown with tax: 150.00 comes to 137.77 at 8.875 %, so that 300.00 hold 24.46; 275.50 to 257.48 at 7 %. In all
     * 575.50, as it was shown.
     */
    @Test
    void pricesShownWithTax_comeToWhatWasShown() throws IOException {
        BookShop shop = shop(Database.SQLITE, "shop");
        withTax(shop);

        shop.json("invoice", "issue", "may", "june", "july", "--together", "--date", "2026-07-10");

        JsonNode amounts = shop.json("show", NUMBER).path("paper").path("amounts");
        assertThat(amounts.path("net").asString()).isEqualTo("533.02");
        assertThat(amounts.path("taxes")).extracting(tax -> tax.path("base").asString() + " "
                + tax.path("amount").asString()).containsExactly("275.54 24.46", "257.48 18.02");
        assertThat(amounts.path("gross").asString()).isEqualTo("575.50");
        shop.json("paper", "reprint", NUMBER, "--html");
        assertThat(Files.readString(shop.folder().resolve("papers/" + NUMBER + ".html")))
                .containsOnlyOnce("Our prices are shown with tax.")
                .contains("what was shown with the tax, less what it comes to without it");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** 1.10 three times at 7 %: 0.231 of tax on one invoice, where each by itself would bear 0.08. */
    @Test
    void threeOfOneTenEach_bearTheTaxOfTheirSum() throws IOException {
        BookShop shop = shop(Database.SQLITE, "shop");
        for (String id : List.of("first", "second", "third")) {
            shop.json("import", shop.write("own/" + id + ".yaml", """
                    format: 1
                    form: sale
                    id: %s
                    site: quay
                    sold: {on: 2026-07-09, way: shipped}
                    lines:
                      - {text: Clip, class: parts, price: 1.10}
                    """.formatted(id)).toString());
        }

        shop.json("invoice", "issue", "first", "second", "third", "--together", "--date", "2026-07-10");

        JsonNode amounts = shop.json("show", NUMBER).path("paper").path("amounts");
        assertThat(amounts.path("net").asString()).isEqualTo("3.30");
        assertThat(amounts.path("tax").asString()).isEqualTo("0.23");
        assertThat(amounts.path("gross").asString()).isEqualTo("3.53");
    }

    /**
     * 150.00 as shown are 137.77 and 12.23. Of the line of 98.00, 90.01 without its tax, 45.00 go back, and 3.99 (8.875 % are 3.99375);
     * then all the rest, 92.77 and 8.24: to the cent what was shown.
     */
    @Test
    void creditByAmount_ofPricesShownWithTax_comesToWhatWasShown() throws IOException {
        BookShop shop = shop(Database.SQLITE, "shop");
        withTax(shop);
        shop.json("invoice", "issue", "may", "--date", "2026-07-10");

        JsonNode part = credit(shop, "--lines", "2", "--amount", "45.00");
        assertThat(shop.problems("credit", "issue", NUMBER, "--lines", "2", "--amount", "45.02", "--reason", "Late.",
                "--date", "2026-07-12")).singleElement().asString().contains("up to the 45.01 that are left of it");
        JsonNode rest = credit(shop);

        assertThat(part.path("gross").asString()).isEqualTo("-48.99");
        assertThat(rest.path("gross").asString()).isEqualTo("-101.01");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    private static JsonNode credit(BookShop shop, String... part) {
        return shop.json(with(part, "credit", "issue", NUMBER, "--reason", "Late.", "--date", "2026-07-12"))
                .path("papers").get(0);
    }

    private static void withTax(BookShop shop) throws IOException {
        Path taxes = shop.folder().resolve("pricing/taxes.yaml");
        Files.writeString(taxes, Files.readString(taxes).replace("    system: sales-tax\n",
                "    system: sales-tax\n    pricesIncludeTax: true\n"));
    }

    /**
     * One service call of 52.00 for three sites of a route: 17.34, 17.33 and 17.33 in the order of arrival, before 98.00 each; of what
     * is recorded later it is charged again. 115.34 and 115.33 in Alder County are 230.67, of which 8.875 % are 20.4720; labor without
     * parts is not taxed in the other.
     */
    @Test
    void route_sharesOneServiceCall_inTheOrderOfArrival() throws IOException {
        BookShop shop = shop(Database.SQLITE, "shop");
        site(shop, "hill", "alder-county", "0500");
        shop.json("import", stop(shop, "third", "quay", "13:00"), stop(shop, "first", "lane", "09:00"),
                stop(shop, "second", "hill", "11:00"));

        shop.json("invoice", "issue", "third", "second", "first", "--together", "--date", "2026-07-21");
        shop.json("import", stop(shop, "late", "lane", "15:00"));
        JsonNode alone = shop.json("invoice", "issue", "late", "--date", "2026-07-22").path("papers").get(0);

        JsonNode amounts = shop.json("show", NUMBER).path("paper").path("amounts");
        assertThat(amounts.path("net").asString()).isEqualTo("346.00");
        assertThat(amounts.path("taxes")).extracting(tax -> tax.path("base").asString() + " "
                + tax.path("amount").asString()).containsExactly("230.67 20.47");
        shop.json("paper", "reprint", NUMBER, "--html");
        assertThat(Files.readString(shop.folder().resolve("papers/" + NUMBER + ".html")))
                .contains("one service call for route oak-run, that of the first arrival, shared by 3 visits")
                .containsOnlyOnce(">17.34<");
        // 150.00 and 13.31
        assertThat(alone.path("gross").asString()).isEqualTo("163.31");
        assertThat(shop.json("paper", "rework", NUMBER).path("differences")).isEmpty();
        assertThat(
                shop.json("credit", "issue", NUMBER, "--reason", "All.", "--date", "2026-07-23").path("papers").get(0)
                        .path("gross").asString())
                .isEqualTo("-366.47");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    private static String stop(BookShop shop, String id, String site, String at) throws IOException {
        return shop.write("own/" + id + ".yaml", """
                format: 1
                form: visit
                id: %s
                site: %s
                route: oak-run
                people:
                  - {name: Rosa, grade: lead, arrived: 2026-07-20T%s, left: 2026-07-20T%s, on: cleaning}
                """.formatted(id, site, at, at.replace(":00", ":10"))).toString();
    }

    @Test
    void paper_tellsVisitByVisit_andAddsUp() throws IOException {
        BookShop shop = shop(Database.SQLITE, "shop");
        shop.json("invoice", "issue", "may", "july", "--together", "--date", "2026-07-10");

        shop.json("paper", "reprint", NUMBER, "--html", "--xml");
        String html = Files.readString(shop.folder().resolve("papers/" + NUMBER + ".html"));
        String xml = Files.readString(shop.folder().resolve("papers/" + NUMBER + ".xml"));

        assertThat(html).contains("Visit of May 13, 2026: Mill lane, 0412", "Visit of July 8, 2026: Mill quay, 0388",
                "This visit together, before tax (USD)</th><td class=\"amount\">150.00</td>",
                "This visit together, before tax (USD)</th><td class=\"amount\">275.50</td>",
                "May 13, 2026; July 8, 2026",
                "<td class=\"line-number\">5</td>").doesNotContain("<td class=\"line-number\">6</td>");
        assertThat(xml).contains("458.10").doesNotContain("DeliveryLocation");
    }

    /** A line of the second visit is given back, at its own place's rate: 125.50 and 8.79 (7 % of 125.50 is 8.785). */
    @ParameterizedTest
    @EnumSource(Database.class)
    void credit_byLine_andReissue(Database database) throws IOException {
        BookShop shop = shop(database, "shop");
        shop.json("invoice", "issue", "may", "july", "--together", "--date", "2026-07-10");

        JsonNode credit = shop
                .json("credit", "issue", NUMBER, "--lines", "5", "--reason", "No valve.", "--date", "2026-07-11")
                .path("papers").get(0);

        assertThat(credit.path("gross").asString()).isEqualTo("-134.29");
        shop.json("credit", "issue", NUMBER, "--reason", "All of it.", "--date", "2026-07-12");
        assertThat(shop.json("audit").path("findings")).isEmpty();
        assertThat(texts(
                shop.json("invoice", "issue", "july", "may", "--together", "--date", "2026-07-13").path("papers")))
                .containsExactly("INV-2026-00002");

        JsonNode again = shop.json("invoice", "reissue", "INV-2026-00002", "--purchase-order", "PO-7", "--due", "keep",
                "--reason", "Wrong order.", "--date", "2026-07-14");
        assertThat(texts(again.path("papers"))).containsExactly("CN-2026-00003", "INV-2026-00003");
        assertThat(shop.run("invoice", "issue", "july").err()).contains("was billed as INV-2026-00003");
        for (String number : List.of(NUMBER, "INV-2026-00003")) {
            JsonNode rework = shop.json("paper", "rework", number);
            assertThat(rework.path("differences").isArray()).as(rework.toString()).isTrue();
            assertThat(rework.path("differences")).as(number + " worked out again").isEmpty();
        }
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** Billed together they are one paper in a backup, and in the paper itself, for whoever makes the book anew. */
    @Test
    void restoredAndTakenFromPapers_eachVisitIsBilled() throws IOException {
        BookShop shop = shop(Database.SQLITE, "shop");
        shop.json("invoice", "issue", "may", "june", "july", "--together", "--date", "2026-07-10");
        Path backup = folder.resolve("book.backup");
        shop.json("backup", backup.toString());
        BookShop restored = BookShop.empty(folder.resolve("restored"), Database.POSTGRESQL);
        restored.json("restore", backup.toString());
        BookShop anew = BookShop.empty(folder.resolve("anew"), Database.SQLITE);
        copy(shop.folder().resolve("papers/issued"), anew.folder().resolve("papers/issued"));
        anew.run("restore", "--from-papers");

        for (BookShop other : List.of(restored, anew)) {
            assertThat(other.json("show", NUMBER).path("paper").path("origin").path("visits")).hasSize(3);
            assertThat(other.json("audit").path("findings")).isEmpty();
        }
        assertThat(restored.run("invoice", "issue", "june").err()).contains("was billed as " + NUMBER);
        assertThat(shop.json("paper", "reprint", NUMBER).path("printedAgain").asBoolean()).isFalse();
    }

    /** Nothing of it is billed where one of them cannot be. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"may may | two visits or more, each once",
            "may late-call | have other payers", "may ordered | are under other purchase orders",
            "may nobody | the book has no visit \"nobody\"",
            "may june | dated 2026-06-09, but visit \"june\" ended on"})
    void visitsThatDoNotGoTogether_billNone(String visits, String problem) throws IOException {
        BookShop shop = shop(Database.SQLITE, "shop");
        shop.json("visit", "add", shop.folder().resolve("visits/late-call.yaml").toString());
        shop.json("import", visit(shop, "ordered", "lane", "2026-05-14", "order: {purchaseOrder: PO-9}\n"));
        List<String> line = new ArrayList<>(List.of("invoice", "issue"));
        line.addAll(List.of(visits.split(" ", -1)));
        line.addAll(List.of("--together", "--date", "2026-06-09"));

        assertThat(shop.problems(line.toArray(String[]::new))).anySatisfy(text -> assertThat(text).contains(problem));
        assertThat(shop.json("find", "Mill").path("papers")).isEmpty();
        assertThat(shop.json("invoice", "issue", "may", "--date", "2026-06-09").path("papers").get(0).path("number")
                .asString())
                .isEqualTo(NUMBER);
    }

    private static void copy(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                if (!Files.isDirectory(target)) {
                    Files.copy(file, target);
                }
            }
        }
    }

    private static List<String> texts(JsonNode papers) {
        List<String> numbers = new ArrayList<>();
        papers.forEach(paper -> numbers.add(paper.path("number").asString()));
        return numbers;
    }

    private static String[] with(String[] more, String... line) {
        List<String> all = new ArrayList<>(List.of(line));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }
}
