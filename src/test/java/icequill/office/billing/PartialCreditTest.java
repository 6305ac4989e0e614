package icequill.office.billing;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.BookedPaper;
import icequill.document.CreditNote;
import icequill.document.PricedPaper;
import icequill.files.paper.PaperJson;
import icequill.money.Amounts;
import icequill.office.care.BookMaintenance;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.tax.TaxTotal.ComponentTax;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Three parts of 1.10 in a place that taxes 6 % for the state and 1 % for the county, given back through the book. */
class PartialCreditTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-10T16:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate DATE = LocalDate.of(2026, 6, 10);

    @TempDir
    Path temporary;

    /** 3.30 at 7 % is 0.231, hence 3.53; 0.077 is 0.08 twice, and then what is left. */
    @Test
    void credit_lineByLine_comesToTheInvoice() throws Exception {
        Path shop = shop("invoice");

        assertThat(issued(shop)).containsExactly("3.30", "0.23", "3.53", "0.20", "0.03");
        assertThat(credited(shop, 3)).containsExactly("1.10", "0.08", "1.18", "0.07", "0.01");
        assertThat(credited(shop, 4)).containsExactly("1.10", "0.08", "1.18", "0.07", "0.01");
        assertThat(credited(shop, 5)).containsExactly("1.10", "0.07", "1.17", "0.06", "0.01");
        assertThat(BookMaintenance.of(shop, CLOCK).audit(List.of(), count -> {
        }).orElseThrow().findings()).isEmpty();
        assertThat(RecordOffice.of(shop, CLOCK).unbilled().orElseThrow()).as("given back in whole")
                .containsExactly("three-parts");
    }

    /** Taxed line by line, 0.08 each: 3.54. */
    @Test
    void credit_taxedByItem_givesTheLinesOwnTaxBack() throws Exception {
        Path shop = shop("item");

        assertThat(issued(shop)).containsExactly("3.30", "0.24", "3.54", "0.21", "0.03");
        assertThat(credited(shop, 3, 4)).containsExactly("2.20", "0.16", "2.36", "0.14", "0.02");
        assertThat(credited(shop, 5)).containsExactly("1.10", "0.08", "1.18", "0.07", "0.01");
    }

    private Path shop(String basis) throws Exception {
        Path shop = temporary.resolve("shop");
        DemoShop.in(shop);
        change(shop.resolve("shop.yaml"), "taxBasis: invoice", "taxBasis: " + basis);
        change(shop.resolve("sites/pennon-wharf-taproom.yaml"), "taxPlace: alder-county", "taxPlace: palma-county");
        StringBuilder parts = new StringBuilder();
        for (String name : List.of("clip", "pin", "ring")) {
            parts.append("  - {id: ").append(name).append(", name: {en: ").append(name).append(", es: ").append(name)
                    .append("}, class: parts, unit: ea, cost: 0.50, price: 1.10}\n");
        }
        change(shop.resolve("pricing/materials.yaml"), "\nitems:\n", "\nitems:\n" + parts);
        Path visit = shop.resolve("visits/three-parts.yaml");
        Files.writeString(visit,
                """
                        format: 1
                        site: pennon-wharf-taproom
                        serviceCall: goodwill
                        people:
                          - {name: Ada Quill, grade: lead, arrived: 2026-06-09T09:00, left: 2026-06-09T09:20, on: repair, outcome: goodwill}
                        lines: [{material: clip, amount: 1}, {material: pin, amount: 1}, {material: ring, amount: 1}]
                        """);
        DemoShop.changed(shop);
        RecordOffice.of(shop, CLOCK).record(FormName.file(visit)).orElseThrow();
        return shop;
    }

    private static void change(Path file, String from, String to) throws Exception {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    private static List<String> issued(Path shop) {
        return sums(shop,
                VisitBilling.of(shop, CLOCK)
                        .issue(new FormName.InBook("three-parts"), new IssueOptions(DATE, Optional.empty()))
                        .orElseThrow());
    }

    private static List<String> credited(Path shop, Integer... lines) {
        return sums(shop, CreditOffice.of(shop, CLOCK).credit("INV-2026-00001",
                new CreditOptions(List.of(lines), "Not used.", DATE, Optional.empty())).orElseThrow().getFirst());
    }

    /** Net, tax and total, then the tax by authority. */
    private static List<String> sums(Path shop, BookedPaper booked) {
        PricedPaper paper = ShopBook.of(shop, CLOCK).read(open -> open.papers().data(booked.number())
                .then(data -> PaperJson.read(data, "book"))).map(PricedPaper.class::cast).orElseThrow();
        assertThat(paper instanceof CreditNote).isEqualTo(booked.corrects().isPresent());
        return Stream.concat(Stream.of(paper.totals().net(), paper.totals().tax(), paper.totals().gross()),
                paper.totals().taxes().getFirst().components().stream().map(ComponentTax::amount))
                .map(Amounts::plain).toList();
    }
}
