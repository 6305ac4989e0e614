package icequill.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.explain.HowReader;
import icequill.money.Amounts;
import icequill.party.Site;
import icequill.party.TaxBasis;
import icequill.pricer.PricedVisit;
import icequill.pricer.Pricer;
import icequill.problem.Place;
import icequill.problem.Validated;
import icequill.shop.ShopFolder;
import icequill.tax.TaxCalculator;
import icequill.tax.TaxPlace;
import icequill.work.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The program and a second implementation price the same visits by the same files, in nine shops, and tax them. */
@Tag("wide")
class PriceOracleTest {

    private static final String BANDS = "{standard: %s, after-hours: %s, sundays-and-holidays: %s}";
    private static final String FEES = """
            fees:
              - {id: extra, name: {en: extra, es: extra}, class: travel, percent: 2.5, on: [cleaning, repair, parts], floor: 4.00, cap: 22.50}
              - {id: small, name: {en: small, es: small}, class: parts, amount: 20.00, under: 150.00, always: true}
              - {id: truck, name: {en: truck, es: truck}, class: travel, amount: 7.35, always: true, regions: [US-NY]}
              - {id: never, name: {en: never, es: never}, class: travel, amount: 99.00, always: true, regions: [US-CT]}
            """;
    private static final String FLAT = """
            flat:
              further: 15
              machines:
                - {scope: full-clean, make: batch, upTo: 400, price: 215.05}
                - {scope: full-clean, make: batch, upTo: 500, price: 265.00}
                - {scope: full-clean, make: batch, upTo: 3000, price: 345.55}
            """;

    private static final String SHEET = """
            format: 1
            kind: rate-sheet
            effective: {from: 2025-01-01}
            id: hotel
            name: {en: hotel, es: hotel}
            for: {sites: [hotel-fernhill]}
            labor:
              - {grade: lead, hourly: {standard: 91.50}, firstHour: {after-hours: 155.00}, minimum: {after-hours: 75}}
              - {grade: helper, hourly: {standard: 55.00, after-hours: 80.00}}
            serviceCall: {zones: [{zone: area, prices: {standard: 44.00}}], includes: 20}
            materials: [{material: water-filter, price: 80.15}]
            discount: {parts: 7.5, cleaning: 3}
            without: [%s]
            """;

    /** What a shop has besides what is shipped: text to add to a file, or to put in place of another. */
    record Change(String file, String from, String to) {}

    record Own(String name, List<Change> changes) {

        boolean has(String file) {
            return changes.stream().anyMatch(change -> change.file().equals(file));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Own> shops() {
        Change byBand = labor("increment: 15 ", "increment: " + BANDS.formatted(15, 30, 20) + " ");
        Change minimum = labor("minimum: 60 ", "minimum: " + BANDS.formatted(60, 120, 90) + " ");
        Change together = labor("increment: 15 ", "counted: visit\nincrement: 15 ");
        Change overtime = labor("otherwise: after-hours",
                "overtime: {after: 3, band: after-hours}\notherwise: after-hours");
        Change firstHour = labor("    qualified: [acid", "    firstHour: "
                + BANDS.formatted("130.00", "170.00", "196.00") + "\n    qualified: [acid");
        Change travel = labor("    minimum: 0 ", "    travel: " + BANDS.formatted("41.00", "50.00", "60.00")
                + "\n    minimum: 0 ");
        Change includes = new Change("service-call", "mileCost:", "includes: 45\nmileCost:");
        Change miles = new Change("service-call", "beyond: 2.40", "perMile: 1.85\neachDay: true\nbeyond: 0");
        Change fees = new Change("adjustments", "classDiscounts:", FEES + "classDiscounts:");
        Change flat = new Change("tiers", "exclusions: ", FLAT + "exclusions: ");
        Change agreed = new Change("sheet", "", SHEET);
        Change limits = new Change("taxes", "    state: NY\n",
                "    state: NY\n    exemptions: {exempt: {classes: [parts, filters, repair], percent: 62.5}}\n");
        Change cap = new Change("taxes", "percent: 4.5, levy: local}", "percent: 4.5, levy: local, cap: 90}");
        return Stream.of(new Own("as shipped", List.of()), new Own("by band", List.of(byBand, minimum)),
                new Own("together", List.of(together, minimum, includes, firstHour)),
                new Own("overtime", List.of(overtime, firstHour, travel)),
                new Own("miles and minutes", List.of(includes, miles, travel)),
                new Own("fees and flat prices", List.of(fees, flat, miles)),
                new Own("all of it", List.of(minimum, together, overtime, firstHour, travel, includes, miles, fees,
                        flat)),
                new Own("a sheet and limits of tax", List.of(agreed, firstHour, limits, cap)),
                new Own("a sheet over all of it", List.of(agreed, minimum, together, overtime, firstHour, includes,
                        miles, fees, flat, cap)));
    }

    private static Change labor(String from, String to) {
        return new Change("labor", from, to);
    }

    @TempDir
    Path temporary;

    @ParameterizedTest(name = "{0}")
    @MethodSource("shops")
    void randomVisits_pricedTwice_sameNets(Own own) throws IOException {
        assertSame(own, 30);
    }

    /** 1,350 of them. */
    @Tag("long")
    @ParameterizedTest(name = "{0}")
    @MethodSource("shops")
    void manyRandomVisits_pricedTwice_sameNets(Own own) throws IOException {
        assertSame(own, 150);
    }

    private void assertSame(Own own, int count) throws IOException {
        Path folder = DemoShop.files(temporary.resolve("shop"));
        for (Change change : own.changes()) {
            Path file = folder.resolve("pricing/" + change.file() + ".yaml");
            if (change.file().equals("sheet")) {
                Files.writeString(file, change.to().formatted(own.has("adjustments") ? "truck" : "fuel"));
                continue;
            }
            String text = Files.readString(file);
            assertThat(text).contains(change.from());
            Files.writeString(file, text.replaceFirst(Pattern.quote(change.from()),
                    Matcher.quoteReplacement(change.to())));
        }
        Path form = folder.resolve("sites/hotel-fernhill.yaml");
        Files.writeString(form, Files.readString(form).replaceFirst("customer:\n",
                "customer:\n  claimsExemption: true\n  certificates:\n    - {kind: exempt, number: E-1, state: NY,"
                        + " reason: charity, signed: 2025-01-01, expires: 2026-07-31}\n"));
        ShopFolder shop = DemoShop.read(folder);
        assertThat(shop.problems()).isEmpty();
        PriceOracle oracle = new PriceOracle(folder.resolve("pricing"), ZoneId.of("America/New_York"),
                own.has("sheet") ? Yaml.of(folder.resolve("pricing/sheet.yaml")) : new Yaml(Map.of()));
        Yaml place = Yaml.of(folder.resolve("pricing/taxes.yaml")).named("places", "alder-county");
        Yaml site = Yaml.of(folder.resolve("sites/hotel-fernhill.yaml"));
        boolean hasExtras = own.has("tiers");
        RandomVisits visits = new RandomVisits(own.name().hashCode(), hasExtras);
        int negative = 0;
        for (int i = 0; i < count; i++) {
            Path file = Files.writeString(folder.resolve("visits/random.yaml"), visits.next());
            Visit visit = DemoShop.visit(shop, file).orElseThrow(() -> new AssertionError(shop.problems()));
            Site hotel = shop.site("hotel-fernhill", visit.place()).orElseThrow();
            Validated<PricedVisit> priced = Pricer.price(visit, hotel,
                    shop.schedule().orElseThrow().asOf(visit.day(), Optional.of(hotel)).orElseThrow());
            List<String> expected = oracle.price(Yaml.of(file), site);
            if (expected.getLast().startsWith("-")) {
                negative++;
                assertThat(priced.problems()).as(Files.readString(file)).isNotEmpty();
            } else {
                assertThat(nets(priced.orElseThrow())).as(Files.readString(file)).isEqualTo(expected);
                boolean isFree = !visit.day().isAfter(LocalDate.of(2026, 7, 31));
                for (TaxBasis basis : TaxBasis.values()) {
                    TaxPlace known = shop.taxes().orElseThrow()
                            .at(visit.day(), Optional.of("alder-county"), Place.NOWHERE).orElseThrow();
                    MonetaryAmount tax = TaxCalculator
                            .tax(priced.orElseThrow(), known, basis, hotel.customer(), visit.day()).tax();
                    assertThat(Amounts.number(tax)).as(basis + Files.readString(file))
                            .isEqualByComparingTo(oracle.tax(Yaml.of(file), site,
                                    new TaxOracle(place, basis == TaxBasis.ITEM, isFree ? "exempt" : "")));
                }
            }
        }
        assertThat(negative).isLessThan(count / 10);
    }

    private static List<String> nets(PricedVisit priced) {
        List<String> nets = new ArrayList<>();
        priced.lines().forEach(line -> {
            nets.add(Amounts.plain(line.net()));
            assertThat(HowReader.evaluate(line.how().text(priced.currency())))
                    .isEqualByComparingTo(Amounts.number(line.net()));
        });
        nets.add(Amounts.plain(priced.net()));
        return nets;
    }
}
