package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A group's rate sheet in pricing/, from the customer's account in the book to his invoice. */
class RateSheetCommandsTest {

    private static final String[] LANE = {"--street", "4 Mill Lane", "--city", "Alderton", "--region", "NY",
            "--postal-code", "10999", "--country", "US"};

    @TempDir
    Path folder;

    /** 60 minutes at 90.00 and the shop's service call of 52.00; the shop's filter at 87.25 is agreed at 80.00. */
    @Test
    void sheetOfTheAccount_holdsForTheSitesOfItsCustomers() throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
        shop.json(with("customer", "add", "group", "--name", "Mill Group"));
        shop.json(with("customer", "add", "mill", "--name", "Mill Bakeries", "--parent", "group"));
        shop.json(with("site", "add", "lane", "--customer", "mill", "--name", "Mill Lane", "--kind", "bakery",
                "--miles", "3", "--tax-place", "alder-county"));
        String visit = shop.write("own/may.yaml", """
                format: 1
                form: visit
                id: may
                site: lane
                people:
                  - {name: Rosa, grade: lead, arrived: 2026-05-13T10:00, left: 2026-05-13T10:10, on: repair}
                lines: [{material: water-filter, amount: 1}]
                """).toString();
        shop.json("import", visit);
        String before = shop.json("price", "may").path("net").asString();
        Files.writeString(shop.folder().resolve("pricing/rate-sheet-group.yaml"), """
                format: 1
                kind: rate-sheet
                effective: {from: 2026-05-01}
                id: group
                name: {en: rates of the Mill Group, es: tarifas del Grupo Mill}
                for: {customers: [group]}
                labor:
                  - {grade: lead, hourly: {standard: 90.00}}
                materials:
                  - {material: water-filter, price: 80.00}
                """);

        assertThat(before).isEqualTo("237.25");
        assertThat(shop.json("price", "may").path("net").asString()).isEqualTo("222.00");
        assertThat(shop.run("price", "may", "--how").out()).contains("price agreed: rates of the Mill Group");
        assertThat(shop.run("price", "may", "--how", "--lang", "es").out())
                .contains("precio acordado: tarifas del Grupo Mill");
    }

    @Test
    void sheetForAnUnknownCustomer_isFoundByCheck() throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
        Files.writeString(shop.folder().resolve("pricing/rate-sheet-group.yaml"), """
                format: 1
                kind: rate-sheet
                effective: {from: 2026-05-01}
                id: group
                name: {en: rates of the group, es: tarifas del grupo}
                for: {customers: [fernhill-hotel], sites: [hotel-fernhill]}
                """);

        assertThat(shop.run("check").err()).contains(
                "pricing/rate-sheet-group.yaml:4: id: there is no customer \"fernhill-hotel\" (did you mean \"fernhill-hotels\"?")
                .doesNotContain("there is no site");
    }

    private static String[] with(String... args) {
        String[] all = Arrays.copyOf(args, args.length + LANE.length);
        System.arraycopy(LANE, 0, all, args.length, LANE.length);
        return all;
    }
}
