package icequill.einvoice;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.agreement.Invoiced;
import icequill.document.Bill;
import icequill.document.CombinedInvoice;
import icequill.explain.Phrase;
import icequill.papers.CombinedInvoiceAssembly;
import icequill.papers.InstallmentAssembly;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.SalesTaxEncoding;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.party.TaxBasis;
import icequill.plans.WholeAgreement;
import icequill.pricer.PricedVisit;
import icequill.pricer.Pricer;
import icequill.problem.Place;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.render.words.Sentences;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.AgreementLoader;
import icequill.shop.FormName;
import icequill.shop.ShopFolder;
import icequill.tax.TaxCalculator;
import icequill.tax.TaxPlace;
import icequill.visits.VisitContext;
import icequill.visits.VisitTerms;
import icequill.work.Visit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

/** Every visit of the demo, priced with the shipped rates and taxed in every shipped place, in every encoding. */
@Tag("wide")
class PricedBillsTest {

    private static final Function<Phrase, String> WORDING = Sentences.of(Language.SPANISH, "US")::say;
    private static Path folder = Path.of("");

    @BeforeAll
    static void createShop() throws Exception {
        folder = DemoShop.in(Files.createTempDirectory("icequill-einvoice").resolve("shop"));
    }

    @AfterAll
    static void deleteShop() throws Exception {
        try (Stream<Path> files = Files.walk(folder.getParent())) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private static final List<String> PLACES = List.of("alder-county", "ceniza-county", "palma-county", "fir-county",
            "hafenland");

    /** Each visit in two places, each basis in every place. */
    @Test
    void everyDemoVisit_inTwoPlaces_isValidAndWorksOut() throws Exception {
        ShopFolder shop = DemoShop.read(folder);
        List<Path> visits = DemoShop.files(folder, "visits");

        assertThat(visits).hasSizeGreaterThan(10);
        for (int i = 0; i < visits.size(); i++) {
            assertRight(bill(shop, visits.get(i), PLACES.get(i % PLACES.size()), TaxBasis.INVOICE));
            assertRight(bill(shop, visits.get(i), PLACES.get((i + 1) % PLACES.size()), TaxBasis.ITEM));
        }
    }

    @Tag("long")
    @ParameterizedTest
    @FieldSource("PLACES")
    void everyDemoVisit_inThePlace_isValidAndWorksOut(String place) throws Exception {
        ShopFolder shop = DemoShop.read(folder);

        for (Path visit : DemoShop.files(folder, "visits")) {
            for (TaxBasis basis : TaxBasis.values()) {
                assertRight(bill(shop, visit, place, basis));
            }
        }
    }

    /** Every two visits to a site that may be billed together, each in a place of its own where the tax is a sales tax. */
    @Test
    void twoVisitsOnOneInvoice_areValidAndWorkOut() throws Exception {
        ShopFolder shop = DemoShop.read(folder);
        List<Path> visits = DemoShop.files(folder, "visits");
        List<List<String>> places = List.of(List.of("alder-county", "palma-county"), List.of("hafenland", "hafenland"),
                List.of("fir-county", "ceniza-county"));
        List<String> billed = new ArrayList<>();

        for (int i = 0; i < visits.size(); i++) {
            for (int j = i + 1; j < visits.size(); j++) {
                List<String> two = places.get((i + j) % places.size());
                TaxBasis basis = j % 2 == 0 ? TaxBasis.INVOICE : TaxBasis.ITEM;
                Validated<CombinedInvoice> together = CombinedInvoiceAssembly.of(
                        List.of(context(shop, visits.get(i), two.getFirst(), basis),
                                context(shop, visits.get(j), two.getLast(), basis)),
                        new PaperOptions(Optional.of("1"), LocalDate.of(2026, 12, 30), Optional.of(Language.SPANISH),
                                Extras.NONE));
                if (together.problems().isEmpty()) {
                    assertRight(together.orElseThrow(), SchematronRules.UBL_INVOICE);
                    billed.add(two + " " + basis);
                }
            }
        }
        assertThat(billed).contains("[hafenland, hafenland] INVOICE", "[alder-county, palma-county] INVOICE",
                "[fir-county, ceniza-county] ITEM");
    }

    /** Each payment of an agreement over three sites of two tax places, and of one for a season. */
    @ParameterizedTest
    @CsvSource({"lantern-coffee, 4", "tamarack-camp, 4"})
    void installments_areValidAndWorkOut(String agreement, int payments) throws Exception {
        ShopFolder shop = DemoShop.read(folder);
        WholeAgreement whole = new AgreementLoader(shop, (request, site) -> Validated.valid(Invoiced.NOTHING))
                .of(FormName.file(folder.resolve("agreements/" + agreement + ".yaml")), LocalDate.of(2026, 6, 1))
                .orElseThrow();
        BillTo billTo = whole.billTo(LocalDate.of(2026, 6, 1)).orElseThrow();

        assertThat(whole.termPayments()).hasSize(payments);
        for (int payment = 1; payment <= payments; payment++) {
            assertRight(new InstallmentAssembly(whole, billTo).invoice(payment, new PaperOptions(Optional.of("1"),
                    LocalDate.of(2026, 12, 30), Optional.of(Language.SPANISH), Extras.NONE)).orElseThrow(),
                    SchematronRules.UBL_INVOICE);
        }
    }

    /** 52.00 + 65.33 + 159.25 = 276.58 as the README has it, and 19 % of that, 52.5502. */
    @Test
    void aVisitWithVat_totalsAsWorkedOutByHand() throws Exception {
        ShopFolder shop = DemoShop.read(folder);
        Path late = DemoShop.files(folder, "visits").stream().filter(visit -> visit.endsWith("late-call.yaml"))
                .findFirst().orElseThrow();
        Bill bill = bill(shop, late, "hafenland", TaxBasis.INVOICE).invoice();

        XmlReader xml = XmlReader.of(EInvoice.ubl(bill, SalesTaxEncoding.PLAIN, WORDING).orElseThrow());

        assertThat(xml.texts("InvoiceLine/LineExtensionAmount")).containsExactly("52.00", "65.33", "159.25");
        assertThat(xml.text("LegalMonetaryTotal/TaxExclusiveAmount")).isEqualTo("276.58");
        assertThat(xml.text("TaxTotal/TaxAmount")).isEqualTo("52.55");
        assertThat(xml.text("LegalMonetaryTotal/PayableAmount")).isEqualTo("329.13");
    }

    private static void assertRight(PricedBill bill) throws Exception {
        assertRight(bill.invoice(), SchematronRules.UBL_INVOICE);
        assertRight(bill.creditNote(), SchematronRules.UBL_CREDIT_NOTE);
    }

    static void assertRight(Bill bill, SchematronRules judge) throws Exception {
        byte[] ubl = EInvoice.ubl(bill, SalesTaxEncoding.EN16931, WORDING).orElseThrow();
        byte[] plain = EInvoice.ubl(bill, SalesTaxEncoding.PLAIN, WORDING).orElseThrow();
        byte[] cii = EInvoice.cii(bill, WORDING).orElseThrow();

        assertThat(judge.faults(ubl)).isEmpty();
        assertThat(SchematronRules.CII.faults(cii)).isEmpty();
        for (byte[] xml : List.of(ubl, plain, cii)) {
            assertThat(StatedBill.read(new String(xml, UTF_8)).orElseThrow())
                    .isEqualTo(new StatedBill(bill.number().orElseThrow(), bill.date(), bill.totals().gross(),
                            bill.totals().gross()));
        }
        for (byte[] xml : List.of(ubl, plain)) {
            assertThat(LineArithmeticTest.readUbl(xml)).isNotEmpty()
                    .allSatisfy(line -> assertThat(line.worked()).isEqualByComparingTo(line.net()));
            assertThat(new String(xml, UTF_8)).doesNotContain("wage", "markup");
        }
    }

    private static PricedBill bill(ShopFolder folder, Path file, String placeId, TaxBasis basis) {
        VisitContext hand = context(folder, file, placeId, basis);
        return new PricedBill(hand.shop(), hand.site(), hand.visit(), hand.taxed());
    }

    static VisitContext context(ShopFolder folder, Path file, String placeId, TaxBasis basis) {
        Visit visit = DemoShop.visit(folder, file).orElseThrow();
        Site site = folder.site(visit.site(), visit.place()).orElseThrow();
        Rates rates = folder.schedule().orElseThrow().asOf(visit.day()).orElseThrow();
        PricedVisit priced = Pricer.price(visit, site, rates).orElseThrow();
        TaxPlace place = folder.taxes().orElseThrow().at(visit.day(), Optional.of(placeId), Place.NOWHERE)
                .orElseThrow();
        return new VisitContext(withVatId(folder.shop().orElseThrow(), basis), site, visit, rates,
                TaxCalculator.tax(priced, place, basis, site.customer(), visit.day()),
                new VisitTerms(visit, site, List.of()), folder.timetables());
    }

    private static Shop withVatId(Shop shop, TaxBasis basis) {
        return new Shop(shop.name(), shop.address(), shop.phone(), shop.email(), shop.registrations(),
                Optional.of("DE123456789"), shop.remittance(), shop.zone(), shop.currency(), shop.language(),
                shop.paper(), shop.accent(), shop.logo(), basis, shop.sourcing(), shop.taxPlace(),
                shop.paymentDays(), SalesTaxEncoding.PLAIN);
    }
}
