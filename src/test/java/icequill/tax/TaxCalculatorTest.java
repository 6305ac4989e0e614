package icequill.tax;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.VisitBuilder.spell;
import static icequill.VisitBuilder.visit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;

import icequill.RatesFixture;
import icequill.VisitBuilder;
import icequill.explain.Fact;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Certificate;
import icequill.party.Customer;
import icequill.party.TaxBasis;
import icequill.party.Timeline;
import icequill.party.Wording;
import icequill.pricer.PricedVisit;
import icequill.pricer.Pricer;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.tax.TaxPlace.Regime;
import icequill.tax.TaxPlace.Rule;
import icequill.tax.TaxRate.Category;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.OwnPrice;
import icequill.work.TakenBack;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TaxCalculatorTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 13);
    private static final TaxRate SALES = new TaxRate("sales", Category.S,
            List.of(new TaxRate.Component(Wording.same("state"), Percent.of("4"), TaxRate.Levy.STATE, Optional.empty(),
                    Optional.empty()),
                    new TaxRate.Component(Wording.same("county"), Percent.of("4.5"), TaxRate.Levy.LOCAL,
                            Optional.empty(), Optional.empty()),
                    new TaxRate.Component(Wording.same("district"), Percent.of("0.375"), TaxRate.Levy.LOCAL,
                            Optional.empty(), Optional.empty())),
            Optional.empty());
    private static final TaxRate UNTAXED = new TaxRate("untaxed", Category.O, List.of(), Optional.empty());

    /**
     * The same labor and part under four styles of rules: N.Y. Tax Law 1105(c)(3) taxes all, 18 CCR 1546(b) the part only,
     * F.A.C. 12A-1.006 all because a part was furnished, and a place without sales tax nothing.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"TAXABLE, TAXABLE, 323.50", "EXEMPT, TAXABLE, 125.50", "TAXABLE_IF_PARTS_ON_VISIT, TAXABLE, 323.50",
            "SELLER_CONSUMES, EXEMPT, 0.00"})
    void tax_styleOfRules_decidesTheBase(Taxability others, Taxability parts, String base) {
        PricedVisit priced = price(visit().lead("2026-05-13T10:00", "2026-05-13T11:00").material("valve", "1")
                .modifier("stairs", "1.92"));

        TaxedVisit taxed = tax(priced, place(others, parts, Regime.SALES_TAX), RatesFixture.customer());

        assertThat(Amounts.plain(Amounts.sum(taxed.totals().stream().map(TaxTotal::base).toList(), USD)))
                .isEqualTo(base);
        assertThat(taxed.gross().isEqualTo(priced.net().add(taxed.tax()))).isTrue();
    }

    @Test
    void tax_noPartOnTheVisit_laborUntaxedAndSaysWhy() {
        PricedVisit priced = price(visit().lead("2026-05-13T10:00", "2026-05-13T11:00"));

        TaxedVisit taxed = tax(priced,
                place(Taxability.TAXABLE_IF_PARTS_ON_VISIT, Taxability.TAXABLE, Regime.SALES_TAX),
                RatesFixture.customer());

        assertThat(taxed.tax().isZero()).isTrue();
        assertThat(taxed.lines()).extracting(line -> line.why().key()).containsOnly("tax.no-parts-on-visit");
        assertThat(taxed.lines()).noneMatch(LineTax::isTaxed);
    }

    @Test
    void tax_declinedPart_isNotFurnished() {
        PricedVisit priced = price(visit().lead("2026-05-13T10:00", "2026-05-13T11:00").material("valve", "1",
                Outcome.DECLINED, Optional.empty()));

        TaxedVisit taxed = tax(priced,
                place(Taxability.TAXABLE_IF_PARTS_ON_VISIT, Taxability.TAXABLE, Regime.SALES_TAX),
                RatesFixture.customer());

        assertThat(taxed.tax().isZero()).isTrue();
    }

    /** 65.00 at 8.875 % goes back, 5.76875; the hour of labor stays untaxed. */
    @Test
    void tax_partTakenBack_isNotFurnishedAndItsTaxGoesBack() {
        PricedVisit priced = price(visit().lead("2026-05-13T10:00", "2026-05-13T11:00").own(ChargeClass.PARTS, "1",
                new OwnPrice.Given(RatesFixture.usd("65"), Optional.empty()), Optional.of(TakenBack.RETURNED_PART)));

        TaxedVisit taxed = tax(priced,
                place(Taxability.TAXABLE_IF_PARTS_ON_VISIT, Taxability.TAXABLE, Regime.SALES_TAX),
                RatesFixture.customer());

        assertThat(Amounts.plain(taxed.tax())).isEqualTo("-5.77");
        assertThat(Amounts.plain(taxed.gross())).isEqualTo("79.23");
    }

    @Test
    void tax_documentDiscount_baseIsNetLessItsShare() {
        // 10.00 off 125.50, 87.25 and 40.00; only the filter is taxed, at 8.875 %
        PricedVisit priced = price(visit().serviceCall(Outcome.INCLUDED)
                .person("lead", spell("2026-05-13T10:00", "2026-05-13T10:10", ChargeClass.REPAIR, Outcome.GOODWILL))
                .material("valve", "1").material("filter", "1").modifier("stairs", "1.6")
                .documentDiscount("ten-dollars"));

        Map<ChargeClass, Rule> rules = rules(Taxability.EXEMPT, Taxability.EXEMPT);
        rules.put(ChargeClass.FILTERS, new Rule(Taxability.TAXABLE, SALES));
        TaxPlace place = new TaxPlace("alder", Wording.same("Alder"), Regime.SALES_TAX, "NY", rules, Optional.empty(),
                Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Place.NOWHERE);
        TaxedVisit taxed = tax(priced, place, RatesFixture.customer());

        assertThat(Amounts.plain(taxed.totals().getFirst().base())).isEqualTo("83.80");
        assertThat(Amounts.plain(taxed.tax())).isEqualTo("7.44");
        assertThat(taxed.totals().getFirst().components()).extracting(part -> Amounts.plain(part.amount()))
                .containsExactly("3.35", "3.77", "0.32");
        assertThat(HowReader.evaluate(taxed.lines().get(3).how().text(USD))).isEqualByComparingTo("83.80");
    }

    @Test
    void tax_valueAddedTax_basisIsTheInvoiceAndExemptLinesAreListed() {
        Map<ChargeClass, Rule> rules = rules(Taxability.TAXABLE, Taxability.TAXABLE);
        rules.put(ChargeClass.PARTS, new Rule(Taxability.EXEMPT,
                new TaxRate("exempt", Category.E, List.of(), Optional.of(Wording.same("exempt by law")))));
        TaxPlace place = new TaxPlace("hafen", Wording.same("Hafen"), Regime.VAT, "DE", rules, Optional.empty(),
                Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Place.NOWHERE);
        Customer withCertificate = customer(true, certificate("2025-01-01", null));

        TaxedVisit taxed = TaxCalculator.tax(
                price(visit().lead("2026-05-13T10:00", "2026-05-13T10:10").material("valve", "1")), place,
                TaxBasis.ITEM,
                withCertificate, DAY);

        assertThat(taxed.totals()).extracting(total -> total.rate().category()).containsExactly(Category.S, Category.E);
        assertThat(taxed.totals().getFirst().how().reasons()).extracting(Phrase::key)
                .containsExactly("reason.tax-basis.invoice");
        assertThat(taxed.lines().getLast().why().key()).isEqualTo("tax.reason");
        assertThat(taxed.remarks()).isEmpty();
    }

    /** A certificate that does not hold means that tax is due, and the customer is told. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"blanket, 2025-01-01, , 0.00, remark.certificate-used",
            "holds to this very day, 2025-01-01, 2026-05-13, 0.00, remark.certificate-used",
            "expired the day before, 2025-01-01, 2026-05-12, 13.31, remark.certificate-expired",
            "signed the day after, 2026-05-14, , 13.31, remark.certificate-not-yet"})
    void tax_certificate_holdsOrIsDue(String name, String signed, String expires, String tax, String remark) {
        Customer customer = customer(true, certificate(signed, expires));

        TaxedVisit taxed = tax(price(visit().lead("2026-05-13T10:00", "2026-05-13T10:10")),
                place(Taxability.TAXABLE, Taxability.TAXABLE, Regime.SALES_TAX), customer);

        assertThat(Amounts.plain(taxed.tax())).isEqualTo(tax);
        assertThat(taxed.remarks()).extracting(Phrase::key).containsExactly(remark);
    }

    /**
     * 52.00, 98.00 and a valve of 125.50 at 8.875 %. A certificate for parts leaves the tax on 150.00, 13.3125; one that frees 60 % of each
     * line that on 20.80, 39.20 and 50.20, together 110.20: 9.78025. Of parts alone freed by 60 % it is on 150.00 and 50.20, at two rates: 13.31 and 4.46.
     */
    @ParameterizedTest
    @CsvSource(value = {"PARTS, 100, 13.31, tax.exempt-certificate", "none, 60, 9.78, tax.share-of-certificate",
            "PARTS, 60, 17.77, tax.share-of-certificate", "PARTS, 0, 24.45, tax.share-of-certificate"})
    void tax_certificateThatIsLimited_freesAsFarAsItReaches(String classes, String percent, String tax, String why) {
        Reliefs reliefs = new Reliefs(Map.of(certificate("2025-01-01", null).kind(), new Reliefs.Relief(
                classes.equals("none") ? Set.of() : Set.of(ChargeClass.valueOf(classes)), Percent.of(percent))));
        TaxPlace place = new TaxPlace("alder", Wording.same("Alder"), Regime.SALES_TAX, "NY",
                rules(Taxability.TAXABLE, Taxability.TAXABLE), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(reliefs), Optional.empty(),
                Place.NOWHERE);

        TaxedVisit taxed = tax(
                price(visit().lead("2026-05-13T10:00", "2026-05-13T11:00").material("valve", "1")), place,
                customer(true, certificate("2025-01-01", null)));

        assertThat(Amounts.plain(taxed.tax())).isEqualTo(tax);
        assertThat(taxed.lines().getLast().why().key()).isEqualTo(why);
        assertThat(taxed.totals()).allSatisfy(total -> {
            assertThat(HowReader.evaluate(total.how().text(USD))).isEqualByComparingTo(Amounts.number(total.tax()));
            assertThat(Amounts.sum(total.components().stream().map(TaxTotal.ComponentTax::amount).toList(), USD)
                    .isEqualTo(total.tax())).isTrue();
        });
    }

    /** Labor of 98.00 and a call of 52.00, 40 % of them taxed at 8.875 %: 20.80 and 39.20, 5.325; a valve is free by the other one. */
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void tax_severalCertificates_theOneThatFreesMostOfALineWhateverTheirOrder(boolean resaleFirst) {
        Certificate exempt = certificate("2025-01-01", null);
        Certificate resale = new Certificate(Certificate.Kind.RESALE, "R-1", "NY", "parts", exempt.signed(),
                Optional.empty(), Place.NOWHERE);
        TaxPlace place = relieving(Taxability.TAXABLE, Map.of(Certificate.Kind.RESALE,
                new Reliefs.Relief(Set.of(ChargeClass.PARTS), Percent.of("100")), Certificate.Kind.EXEMPT,
                new Reliefs.Relief(Set.of(), Percent.of("60"))));

        TaxedVisit taxed = tax(
                price(visit().lead("2026-05-13T10:00", "2026-05-13T11:00").material("valve", "1")), place,
                resaleFirst ? customer(true, resale, exempt) : customer(true, exempt, resale));

        assertThat(Amounts.plain(taxed.tax())).isEqualTo("5.33");
        assertThat(taxed.lines()).extracting(line -> line.why().key()).containsExactly("tax.share-of-certificate",
                "tax.share-of-certificate", "tax.exempt-certificate");
        assertThat(taxed.remarks()).extracting(Phrase::key).containsExactly("remark.certificate-used",
                "remark.certificate-used");
    }

    /** What the place does not tax is told by the place's rule, where the certificate is for parts only. */
    @Test
    void tax_lineThatIsUntaxedAnyway_isNotFreedByACertificateThatDoesNotReachIt() {
        TaxPlace place = relieving(Taxability.EXEMPT, Map.of(certificate("2025-01-01", null).kind(),
                new Reliefs.Relief(Set.of(ChargeClass.PARTS), Percent.of("100"))));

        TaxedVisit taxed = tax(
                price(visit().lead("2026-05-13T10:00", "2026-05-13T11:00").material("valve", "1")), place,
                customer(true, certificate("2025-01-01", null)));

        assertThat(taxed.lines()).extracting(line -> line.why().key()).containsExactly("tax.exempt-class",
                "tax.exempt-class", "tax.exempt-certificate");
    }

    @Test
    void tax_oneExpiredOneNotYetSigned_theExpiredIsNamed() {
        Customer customer = customer(true, certificate("2026-06-01", null), certificate("2023-01-01", "2026-03-31"),
                certificate("2020-01-01", "2022-12-31"));

        TaxedVisit taxed = tax(price(visit().lead("2026-05-13T10:00", "2026-05-13T10:10")),
                place(Taxability.TAXABLE, Taxability.TAXABLE, Regime.SALES_TAX), customer);

        assertThat(taxed.remarks()).containsExactly(Phrase.of("remark.certificate-expired", new Fact.Text("E-1"),
                new Fact.Day(LocalDate.of(2026, 3, 31))));
    }

    @Test
    void tax_claimWithoutCertificate_dueAndSaidSo() {
        TaxedVisit claimed = tax(price(visit().lead("2026-05-13T10:00", "2026-05-13T10:10")),
                place(Taxability.TAXABLE, Taxability.TAXABLE, Regime.SALES_TAX), customer(true));
        TaxedVisit silent = tax(price(visit().lead("2026-05-13T10:00", "2026-05-13T10:10")),
                place(Taxability.TAXABLE, Taxability.TAXABLE, Regime.SALES_TAX), customer(false));

        assertThat(Amounts.plain(claimed.tax())).isEqualTo("13.31");
        assertThat(claimed.remarks()).extracting(Phrase::key).containsExactly("remark.certificate-missing");
        assertThat(silent.remarks()).isEmpty();
    }

    @Test
    void rulesAt_placeWithoutRules_isAProblemAndNeverZero() {
        TaxRules rules = new TaxRules(
                Timeline.always(List.of(place(Taxability.TAXABLE, Taxability.TAXABLE, Regime.SALES_TAX))));

        assertThat(rules.at(DAY, Optional.of("alder"), Place.NOWHERE).problems()).isEmpty();
        assertThat(rules.at(DAY, Optional.of("elder"), Place.NOWHERE).problems())
                .extracting(Problem::code, Problem::allowed)
                .containsExactly(tuple(Code.NO_TAX_RULE,
                        "did you mean \"alder\"? allowed: alder"));
        assertThat(rules.at(DAY, Optional.empty(), Place.NOWHERE).problems()).extracting(Problem::code)
                .containsExactly(Code.NO_TAX_RULE);
    }

    @Test
    void place_classWithoutARule_refused() {
        Map<ChargeClass, Rule> rules = rules(Taxability.TAXABLE, Taxability.TAXABLE);
        rules.remove(ChargeClass.DISPOSAL);

        assertThatIllegalArgumentException().isThrownBy(
                () -> new TaxPlace("alder", Wording.same("Alder"), Regime.SALES_TAX, "NY", rules, Optional.empty(),
                        Optional.empty(), Optional.empty(),
                        Optional.empty(), Optional.empty(), Place.NOWHERE));
    }

    private static PricedVisit price(VisitBuilder builder) {
        return Pricer.price(builder.build(), site(), rates()).orElseThrow();
    }

    private static TaxedVisit tax(PricedVisit priced, TaxPlace place, Customer customer) {
        return TaxCalculator.tax(priced, place, TaxBasis.INVOICE, customer, DAY);
    }

    private static TaxPlace place(Taxability others, Taxability parts, Regime regime) {
        return new TaxPlace("alder", Wording.same("Alder"), regime, "NY", rules(others, parts), Optional.empty(),
                Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Place.NOWHERE);
    }

    private static TaxPlace relieving(Taxability others, Map<Certificate.Kind, Reliefs.Relief> reliefs) {
        return new TaxPlace("alder", Wording.same("Alder"), Regime.SALES_TAX, "NY",
                rules(others, Taxability.TAXABLE), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(new Reliefs(reliefs)), Optional.empty(), Place.NOWHERE);
    }

    private static Map<ChargeClass, Rule> rules(Taxability others, Taxability parts) {
        Map<ChargeClass, Rule> rules = new EnumMap<>(ChargeClass.class);
        for (ChargeClass chargeClass : ChargeClass.values()) {
            Taxability taxability = chargeClass == ChargeClass.PARTS ? parts : others;
            boolean taxed = taxability == Taxability.TAXABLE || taxability == Taxability.TAXABLE_IF_PARTS_ON_VISIT;
            rules.put(chargeClass, new Rule(taxability, taxed ? SALES : UNTAXED));
        }
        return rules;
    }

    private static Customer customer(boolean claims, Certificate... certificates) {
        Customer plain = RatesFixture.customer();
        return new Customer(plain.name(), plain.language(), plain.billTo(), plain.vendorNumber(), plain.paymentDays(),
                claims, List.of(certificates), plain.accepted(), plain.contacts(), plain.notes(), plain.mail());
    }

    private static Certificate certificate(String signed, @Nullable String expires) {
        return new Certificate(Certificate.Kind.EXEMPT, "E-1", "NY", "charity", LocalDate.parse(signed),
                Optional.ofNullable(expires).map(LocalDate::parse), Place.NOWHERE);
    }
}
