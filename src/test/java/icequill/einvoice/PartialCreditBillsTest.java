package icequill.einvoice;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import icequill.DemoShop;
import icequill.answer.BookedPaper;
import icequill.document.Bill;
import icequill.document.CreditNote;
import icequill.document.Totals;
import icequill.files.paper.PaperJson;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.office.billing.Booking;
import icequill.office.billing.CreditOffice;
import icequill.office.billing.CreditOptions;
import icequill.office.billing.IssueOptions;
import icequill.office.billing.RecordOffice;
import icequill.office.billing.VisitBilling;
import icequill.party.SalesTaxEncoding;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.CreditPart;
import icequill.shop.FormName;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Credit notes as customers' programs get them: an invoice with several rates and a discount on the whole of it goes back by parts
 * of lines, single lines and the rest, through the book; each note is held against the official rules and against an importer that
 * works it out again, and all together against the invoice.
 */
@Tag("wide")
class PartialCreditBillsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-10T16:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate DATE = LocalDate.of(2026, 6, 10);
    private static final String VISIT = """
            format: 1
            site: pennon-wharf-taproom
            people:
              - {name: Ada Quill, grade: lead, arrived: 2026-06-09T09:00, left: 2026-06-09T10:05, on: repair}
            lines:
              - {material: water-filter, amount: 2}
              - {material: clip, amount: 3}
              - {material: waste-disposal, amount: 1}
              - {material: bin-gasket, amount: 1}
              - {material: ring, amount: 1}
            documentDiscount: group
            """;
    /** A part at 5.00 more than its core, one passed on at cost, and a trade-in taxed in another way; 5 % off what is charged. */
    private static final String TAKEN_BACK = """
            format: 1
            site: pennon-wharf-taproom
            people:
              - {name: Ada Quill, grade: lead, arrived: 2026-06-09T09:00, left: 2026-06-09T10:05, on: repair}
            lines:
              - {text: compressor, class: parts, price: 412.37, cost: 280}
              - {text: its core, class: parts, price: 65.00, back: core-return}
              - {text: rented lift, class: travel, unit: day, amount: 1.5, cost: 80, markup: 12.5}
              - {text: old filter head, class: filters, price: 20, back: trade-in}
            documentDiscount: group
            """;

    @TempDir
    Path temporary;

    /** A note as it went out. */
    record Sent(Bill bill, String ubl) {

        /** Base and tax by category and rate, as the UBL has them. */
        Map<String, BigDecimal> shares() throws Exception {
            Map<String, BigDecimal> shares = new TreeMap<>();
            for (XmlReader share : XmlReader.of(ubl.getBytes(UTF_8)).all("TaxTotal/TaxSubtotal")) {
                String name = Stream.of("ID", "Percent", "TaxScheme/ID", "TaxScheme/Name", "TaxExemptionReason")
                        .map(part -> share.text("TaxCategory/" + part)).toList().toString();
                shares.merge(name + " base", share.number("TaxableAmount", ""), BigDecimal::add);
                shares.merge(name + " tax", share.number("TaxAmount", ""), BigDecimal::add);
            }
            shares.put("gross", XmlReader.of(ubl.getBytes(UTF_8)).number("LegalMonetaryTotal/PayableAmount", ""));
            return shares;
        }
    }

    /**
     * Lines by their numbers; a part of them as an amount "2:1.13", a percentage "2:10%" or a quantity "4:x2"; "rest" is all that is
     * left, or all lines before a colon.
     */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', value = {
            "hafenland    | plain   | invoice | 2:40.01; 4:0.07; 4:0.07; 1; 4; 5,6; 2:0.05; rest",
            "alder-county | plain   | item    | 4:x1; rest:50; 2:x40; 4:x1; 1,2,3:7.77; rest:0.02; rest",
            "palma-county | en16931 | invoice | 1; 2; 3; 4; 5; 6; 7",
            "ceniza-county| plain   | item    | 3:80; 3; 4:0.01; 1,2; rest"})
    void parts_ofSeveralRatesAndADiscount_areGoodBillsAndEndAtTheInvoice(String place, String encoding, String basis,
            String parts) throws Exception {
        assertEndsAtTheInvoice(shop(place, encoding, basis, VISIT), parts);
    }

    @Tag("long")
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', value = {"hafenland    | plain   | invoice | 1; 2; 3; 4; 5; 6; 7",
            "alder-county | plain   | invoice | 1:0.05; 2:40.01; 4; 5,7; rest",
            "alder-county | plain   | item    | 1:0.05; 2:40.01; 4; 5,7; rest",
            "alder-county | en16931 | item    | 7:0.37; 7; 2:99.99; 4:0.1; rest",
            "hafenland    | plain   | invoice | 2:x25; 4:x1; 4:x0.5; 4:x1.5; rest:10%; 2:33.3%; rest",
            "palma-county | en16931 | invoice | rest:50%; rest:50%"})
    void morePartsOfSeveralRates_areGoodBillsAndEndAtTheInvoice(String place, String encoding, String basis,
            String parts) throws Exception {
        assertEndsAtTheInvoice(shop(place, encoding, basis, VISIT), parts);
    }

    /** Lines: service call, labor, compressor, core, lift, filter head. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', value = {"hafenland    | plain   | invoice | 3:100.01; 6,5; 1; 3,4; rest",
            "palma-county | en16931 | invoice | 3:17.29; 4,3; rest",
            "ceniza-county| plain   | item    | rest:33.3%; rest:50; rest"})
    void parts_withSomethingTakenBack_areGoodBillsAndEndAtTheInvoice(String place, String encoding, String basis,
            String parts) throws Exception {
        assertEndsAtTheInvoice(shop(place, encoding, basis, TAKEN_BACK), parts);
    }

    @Tag("long")
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', value = {"hafenland    | plain   | invoice | rest",
            "palma-county | plain   | item    | 3,4; 1; 5,6; rest",
            "ceniza-county| plain   | item    | 3,4,6; 1; 5; rest",
            "hafenland    | plain   | invoice | rest:50%; rest",
            "palma-county | plain   | item    | rest:50%; rest:50%"})
    void morePartsWithSomethingTakenBack_areGoodBillsAndEndAtTheInvoice(String place, String encoding, String basis,
            String parts) throws Exception {
        assertEndsAtTheInvoice(shop(place, encoding, basis, TAKEN_BACK), parts);
    }

    /** The county taxes the first 100.00 of a line: the e-bill says of what part of the base its tax is. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', value = {"palma-county | plain   | invoice | 3:100.01; rest",
            "palma-county | en16931 | item    | rest:25%; rest"})
    void cappedTax_isAGoodBillAndSoAreItsCredits(String place, String encoding, String basis, String parts)
            throws Exception {
        Path shop = shop(place, encoding, basis, TAKEN_BACK.replace("65.00, back: core-return", "65.00"));
        change(shop.resolve("pricing/taxes.yaml"), "percent: 1, levy: local}", "percent: 1, levy: local, cap: 100}");
        assertEndsAtTheInvoice(shop, parts);
    }

    /** A certificate frees filters by 60 % and nothing else: what is taxed of them stands apart. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', value = {"alder-county | plain   | invoice | 2:10; 3; rest",
            "alder-county | en16931 | item    | rest:25%; rest"})
    void partlyExempt_isAGoodBillAndSoAreItsCredits(String place, String encoding, String basis, String parts)
            throws Exception {
        Path shop = shop(place, encoding, basis, VISIT, "2026-06-01");
        change(shop.resolve("pricing/taxes.yaml"), "    state: NY\n",
                "    state: NY\n    exemptions: {resale: {classes: [filters], percent: 60}}\n");
        assertThat(assertEndsAtTheInvoice(shop, parts).bill().totals().taxes()).extracting(tax -> tax.rate().id())
                .containsExactly("sales", "sales/40");
    }

    /** What comes to 600.78 before tax comes to it with tax where prices are shown so; credits end there, too. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', value = {"hafenland    | plain   | invoice | 3:100.01; 6,5; 1; 3,4; rest",
            "alder-county | en16931 | invoice | rest:50%; rest",
            "palma-county | plain   | item    | 3,4; 1; 5,6; rest",
            "ceniza-county| plain   | item    | rest:33.3%; rest:50; rest"})
    void shownWithTax_isAGoodBillAndSoAreItsCredits(String place, String encoding, String basis, String parts)
            throws Exception {
        Path shop = shop(place, encoding, basis, TAKEN_BACK);
        Path taxes = shop.resolve("pricing/taxes.yaml");
        change(taxes, "    system: sales-tax\n", "    system: sales-tax\n    pricesIncludeTax: true\n");
        change(taxes, "    system: vat\n", "    system: vat\n    pricesIncludeTax: true\n");

        assertThat(assertEndsAtTheInvoice(shop, parts).shares().get("gross")).isEqualByComparingTo("600.78");
    }

    /** Lines: filters, part, shipping. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', value = {"hafenland    | plain   | invoice | 1:x1; 3; rest",
            "alder-county | plain   | item    | rest:10%; rest", "palma-county | en16931 | invoice | 2; rest"})
    void sale_shipped_isAGoodBillAndSoAreItsCredits(String place, String encoding, String basis, String parts)
            throws Exception {
        assertEndsAtTheInvoice(shop(place, encoding, basis, """
                format: 1
                site: pennon-wharf-taproom
                sold: {on: 2026-06-09, way: shipped, shipping: {price: 14.50, class: filters}}
                lines:
                  - {material: water-filter, amount: 2, less: {amount: 7.77, reason: bought two}}
                  - {text: bracket, class: parts, price: 21.40}
                documentDiscount: group
                """), parts);
    }

    /** 52.00 + 122.50 + 412.37 + 135.00 less 5 % (36.09), less 65.00 and 20.00: 600.78, and 7 % of that: 42.05. */
    @Test
    void part_thatIsMoreThanWhatIsLeft_isAProblem() throws Exception {
        Path shop = shop("palma-county", "plain", "invoice", TAKEN_BACK);
        Sent invoice = sent(VisitBilling.of(shop, CLOCK)
                .issue(new FormName.InBook("many-rates"), new IssueOptions(DATE, Optional.empty())).orElseThrow());
        credited(shop, "1,2,3");

        Validated<BookedPaper> core = credit(shop, "4");
        Validated<BookedPaper> lift = credit(shop, "5");

        assertThat(invoice.shares().get("gross")).isEqualByComparingTo("642.83");
        assertThat(core.problems()).extracting(Problem::text).singleElement(STRING)
                .contains("lines [4] come to -65.00", "the lines of what was taken back, [4, 6]");
        assertThat(lift.problems()).extracting(Problem::text).singleElement(STRING)
                .contains("lines [5] come to 128.25, more than what is left");
    }

    /**
     * Half of 52.00, 122.50, 412.37 and 135.00 is 26.00 + 61.25 + 206.19 + 67.50 = 360.94; half of what was taken back, 32.50 and 10.00,
     * goes back with it: 318.44, less half of what the discount took off, 1.30 + 3.06 + 10.31 + 3.38.
     */
    @Test
    void percent_ofAnInvoiceWithSomethingTakenBack_givesBackThatPartOfIt() throws Exception {
        Path shop = shop("palma-county", "plain", "invoice", TAKEN_BACK);
        VisitBilling.of(shop, CLOCK).issue(new FormName.InBook("many-rates"), new IssueOptions(DATE, Optional.empty()))
                .orElseThrow();

        Totals half = sent(credited(shop, "rest:50%")).bill().totals();

        assertThat(Amounts.plain(half.lines())).isEqualTo("318.44");
        assertThat(Amounts.plain(half.net())).isEqualTo("300.39");
        assertThat(credit(shop, "rest:350").problems()).extracting(Problem::text).singleElement(STRING)
                .contains("350 of the lines [1, 2, 3, 4, 5, 6] cannot be given back");
    }

    private Sent assertEndsAtTheInvoice(Path shop, String parts) throws Exception {
        Sent invoice = sent(VisitBilling.of(shop, CLOCK)
                .issue(new FormName.InBook("many-rates"), new IssueOptions(DATE, Optional.empty())).orElseThrow());
        List<Sent> notes = new ArrayList<>();
        CreditOffice office = CreditOffice.of(shop, CLOCK);
        for (String part : parts.split(";", -1)) {
            notes.add(sent(credit(office, part.strip()).orElseThrow()));
        }

        Map<String, BigDecimal> left = new TreeMap<>(invoice.shares());
        for (Sent note : notes) {
            assertThat(note.bill()).isInstanceOf(CreditNote.class);
            byte[] cii = OfficialRulesTest.cii(note.bill());
            assertThat(SchematronRules.CII.faults(cii)).isEmpty();
            assertThat(SchematronRules.UBL_CREDIT_NOTE.faults(OfficialRulesTest.ubl(note.bill()))).isEmpty();
            assertThat(LineArithmeticTest.readUbl(note.ubl().getBytes(UTF_8))).isNotEmpty()
                    .allSatisfy(line -> assertThat(line.worked()).isEqualByComparingTo(line.net()));
            assertImported(note.bill().totals(), cii);
            note.shares().forEach((share, amount) -> left.merge(share, amount.negate(), BigDecimal::add));
        }
        assertThat(left).allSatisfy((share, amount) -> assertThat(amount).as(share).isEqualByComparingTo("0"));
        assertThat(invoice.bill().totals().tax().isPositive()).isTrue();
        return invoice;
    }

    /** The official rules are asked of what a customer gets, which is the CII within the PDF. */
    @Test
    void partOfALine_inThePdf_isTheSameCii() throws Exception {
        Path shop = shop("hafenland", "plain", "invoice", VISIT);
        VisitBilling.of(shop, CLOCK).issue(new FormName.InBook("many-rates"), new IssueOptions(DATE, Optional.empty()))
                .orElseThrow();

        BookedPaper note = credited(shop, "2:40.01");

        byte[] within = enclosed(note.file(), "factur-x.xml");
        XmlReader xml = XmlReader.of(within);
        String settlement = "SupplyChainTradeTransaction/ApplicableHeaderTradeSettlement/";
        String sums = settlement + "SpecifiedTradeSettlementHeaderMonetarySummation/";
        assertThat(SchematronRules.CII.faults(within)).isEmpty();
        // The line bears 6.12 of 122.50; of 40.01 that is 6.12 x 40.01 / 116.38 = 2.1040; 19 % of 40.01 is 7.6019.
        assertThat(xml.text(sums + "LineTotalAmount")).isEqualTo("42.11");
        assertThat(xml.text(sums + "AllowanceTotalAmount")).isEqualTo("2.10");
        assertThat(xml.text(sums + "TaxTotalAmount")).isEqualTo("7.60");
        assertThat(xml.text(sums + "GrandTotalAmount")).isEqualTo("47.61");
        assertThat(xml.text(settlement + "InvoiceReferencedDocument/IssuerAssignedID")).isEqualTo("INV-2026-00001");
        assertThat(xml.text("ExchangedDocument/TypeCode")).isEqualTo("381");
    }

    /** Where the tax is what its rate makes of its base the importer agrees; else it agrees on all but that tax. */
    private static void assertImported(Totals totals, byte[] cii) throws Exception {
        if (isTaxByRate(cii)) {
            assertThat(ImporterTest.total(cii)).isEqualByComparingTo(Amounts.number(totals.gross()));
        } else {
            assertThatThrownBy(() -> ImporterTest.total(cii)).hasMessageContaining(
                    "tax basis " + Amounts.plain(totals.net()) + " and with positions "
                            + Amounts.plain(totals.lines()));
        }
    }

    private static boolean isTaxByRate(byte[] cii) throws Exception {
        return XmlReader.of(cii)
                .all("SupplyChainTradeTransaction/ApplicableHeaderTradeSettlement/ApplicableTradeTax").stream()
                .allMatch(tax -> tax.number("BasisAmount", "").multiply(tax.number("RateApplicablePercent", "0"))
                        .movePointLeft(2).setScale(2, RoundingMode.HALF_UP)
                        .compareTo(tax.number("CalculatedAmount", "")) == 0);
    }

    private Path shop(String place, String encoding, String basis, String text) throws Exception {
        return shop(place, encoding, basis, text, "2026-07-01");
    }

    /** @param signed when the customer signed his certificate for New York, which frees him of all tax from then on */
    private Path shop(String place, String encoding, String basis, String text, String signed) throws Exception {
        Path shop = DemoShop.in(temporary.resolve("shop"));
        change(shop.resolve("shop.yaml"), "taxBasis: invoice", "taxBasis: " + basis);
        change(shop.resolve("shop.yaml"), "paymentDays: 30",
                "paymentDays: 30\nvatId: DE123456789\nsalesTaxEncoding: " + encoding);
        change(shop.resolve("sites/pennon-wharf-taproom.yaml"), "taxPlace: alder-county", "taxPlace: " + place);
        change(shop.resolve("sites/pennon-wharf-taproom.yaml"), "claimsExemption: true", "claimsExemption: false");
        change(shop.resolve("sites/pennon-wharf-taproom.yaml"), "signed: 2026-06-01", "signed: " + signed);
        change(shop.resolve("pricing/materials.yaml"), "\nitems:\n",
                """

                        items:
                          - {id: clip, name: {en: clip, es: clip}, class: parts, unit: ea, cost: 0.10, price: 0.07}
                          - {id: ring, name: {en: ring, es: aro}, class: parts, unit: ea, cost: 0.50, price: 1.10}
                        """);
        Path visit = Files.writeString(shop.resolve("visits/many-rates.yaml"), text);
        DemoShop.changed(shop);
        RecordOffice.of(shop, CLOCK).record(FormName.file(visit)).orElseThrow();
        return shop;
    }

    private static void change(Path file, String from, String to) throws Exception {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    private static BookedPaper credited(Path shop, String part) {
        return credit(shop, part).orElseThrow();
    }

    private static Validated<BookedPaper> credit(Path shop, String part) {
        return credit(CreditOffice.of(shop, CLOCK), part);
    }

    private static Validated<BookedPaper> credit(CreditOffice office, String part) {
        String[] lineAndPart = part.split(":", -1);
        List<Integer> lines = lineAndPart[0].equals("rest")
                ? List.of()
                : Arrays.stream(lineAndPart[0].split(",")).map(Integer::valueOf).toList();
        CreditPart wish = lineAndPart.length == 1 ? CreditPart.Rest.REST : part(lineAndPart[1]);
        return office.credit("INV-2026-00001",
                new CreditOptions(lines, wish, "Not used.", DATE, Optional.empty(), Booking.USUAL))
                .map(List::getFirst);
    }

    private static CreditPart part(String text) {
        return text.endsWith("%")
                ? new CreditPart.OfPercent(Percent.of(text.replace("%", "")))
                : text.startsWith("x")
                        ? new CreditPart.OfQuantity(new BigDecimal(text.substring(1)))
                        : new CreditPart.OfAmount(new BigDecimal(text));
    }

    private static Sent sent(BookedPaper paper) throws Exception {
        Bill bill = (Bill) PaperJson.read(new String(enclosed(paper.file(), "paper.json"), UTF_8), "paper.json")
                .orElseThrow();
        SalesTaxEncoding encoding = bill.shop().salesTaxEncoding();
        return new Sent(bill,
                new String(EInvoice.ubl(bill, encoding, OfficialRulesTest.WORDING).orElseThrow(), UTF_8));
    }

    static byte[] enclosed(Path pdf, String name) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            Map<String, PDComplexFileSpecification> files = document.getDocumentCatalog().getNames()
                    .getEmbeddedFiles().getNames();
            for (PDComplexFileSpecification file : files.values()) {
                if (file.getFilename().equals(name)) {
                    return file.getEmbeddedFile().toByteArray();
                }
            }
            throw new AssertionError(name + " is not among " + files.keySet());
        }
    }
}
