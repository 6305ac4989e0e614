package icequill.pricer;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.VisitBuilder.NEW_YORK;
import static icequill.VisitBuilder.visit;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.VisitBuilder;
import icequill.explain.HowReader;
import icequill.money.Amounts;
import icequill.problem.Place;
import icequill.work.Attendance;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What must hold for every visit. Seeds are fixed, so that a run repeats. */
class PricingPropertiesTest {

    private static final Instant FIRST = ZonedDateTime.of(LocalDateTime.of(2026, 1, 1, 0, 0), NEW_YORK).toInstant();
    private static final int MINUTES_OF_TWO_YEARS = 2 * 365 * 24 * 60;

    @Property(tries = 500, seed = "20260513")
    void price_startsInTheCheapestBand_neverFallsWithMoreMinutes(@ForAll @IntRange(min = 1, max = 5) int weekday,
            @ForAll @IntRange(min = 0, max = 599) int startMinute, @ForAll @IntRange(min = 1, max = 900) int minutes,
            @ForAll @IntRange(min = 0, max = 300) int more) {
        // May 2026 begins on a Friday; the 3rd is a Sunday, so the 3rd plus one to five is Monday to Friday from 07:00
        ZonedDateTime start = ZonedDateTime.of(2026, 5, 3 + weekday, 7, 0, 0, 0, NEW_YORK).plusMinutes(startMinute);

        MonetaryAmount shorter = labor(start, minutes);
        MonetaryAmount longer = labor(start, minutes + more);

        assertThat(Amounts.number(longer)).isGreaterThanOrEqualTo(Amounts.number(shorter));
    }

    @Property(tries = 500, seed = "20260308")
    void billedTime_anyVisit_noMinuteLostOrCountedTwice(
            @ForAll @IntRange(min = 0, max = MINUTES_OF_TWO_YEARS) int start,
            @ForAll @IntRange(min = 1, max = 1440) int minutes) {
        Attendance attendance = attendance(ZonedDateTime.ofInstant(FIRST.plusSeconds(60L * start), NEW_YORK), minutes);

        BilledTime time = BilledTime.of(
                List.of(new ResolvedVisit.Worker(List.of(attendance),
                        RatesFixture.labor().grade("lead").orElseThrow())),
                RatesFixture.labor(), 0);

        assertThat(time.pieces().stream().mapToLong(BilledTime.Piece::worked).sum()).isEqualTo(minutes);
        assertThat(time.pieces().stream().mapToLong(BilledTime.Piece::billed).sum()).isEqualTo(time.billed());
        assertThat(time.billed()).isBetween((long) minutes, Math.max(60, minutes + 14L)).isGreaterThanOrEqualTo(60);
        assertThat(time.billed() % 15).isZero();
    }

    @Property(tries = 300, seed = "1616")
    void how_anyLineOfAnyVisit_worksOutToItsNet(@ForAll("visits") VisitBuilder builder) {
        PricedVisit priced = Pricer.price(builder.build(), site(), rates()).orElseThrow();

        for (PricedLine line : priced.lines()) {
            assertThat(HowReader.evaluate(line.how().text(USD))).isEqualByComparingTo(Amounts.number(line.net()));
            assertThat(HowReader.evaluate(line.cost().how().text(USD)))
                    .isEqualByComparingTo(Amounts.number(line.cost().amount()));
            assertThat(line.list().subtract(line.allowance()).isEqualTo(line.net())).isTrue();
        }
    }

    @Property(tries = 300, seed = "4242")
    void discount_anyVisit_sharesAddUpAndNoNetBelowZero(@ForAll("visits") VisitBuilder builder) {
        PricedVisit priced = Pricer.price(builder.documentDiscount("five-percent").build(), site(), rates())
                .orElseThrow();

        priced.discount().ifPresent(discount -> {
            assertThat(Amounts.sum(discount.shares(), USD).isEqualTo(discount.amount())).isTrue();
            for (int i = 0; i < priced.lines().size(); i++) {
                assertThat(priced.share(i).isLessThanOrEqualTo(priced.lines().get(i).net())).isTrue();
            }
        });
    }

    @Provide
    Arbitrary<VisitBuilder> visits() {
        Arbitrary<Integer> starts = Arbitraries.integers().between(0, MINUTES_OF_TWO_YEARS);
        Arbitrary<Integer> minutes = Arbitraries.integers().between(1, 900);
        Arbitrary<List<String>> materials = Arbitraries
                .of("descaler", "sanitizer", "filter", "valve", "bottled-descaler").list().ofMaxSize(6);
        Arbitrary<String> amounts = Arbitraries.bigDecimals().between(new BigDecimal("0.1"),
                new BigDecimal("40")).ofScale(2).map(BigDecimal::toPlainString);
        return Combinators.combine(starts, minutes, materials, amounts, Arbitraries.of(Outcome.values()))
                .as((start, length, used, amount, outcome) -> {
                    VisitBuilder builder = visit().classDiscount("labor-only").surcharge("handling");
                    ZonedDateTime arrived = ZonedDateTime.ofInstant(FIRST.plusSeconds(60L * start), NEW_YORK);
                    builder.person("lead", attendance(arrived, length).spells().toArray(Attendance.Spell[]::new));
                    used.forEach(material -> builder.material(material, amount, outcome, Optional.empty()));
                    return builder.modifier("waiting", "17");
                });
    }

    private static MonetaryAmount labor(ZonedDateTime start, int minutes) {
        VisitBuilder builder = visit().person("lead", attendance(start, minutes).spells().getFirst());
        return Pricer.price(builder.build(), site(), rates()).orElseThrow().net();
    }

    private static Attendance attendance(ZonedDateTime start, int minutes) {
        return new Attendance("Ada", "lead",
                List.of(new Attendance.Spell(start, start.plusMinutes(minutes), ChargeClass.REPAIR, Outcome.CHARGED)),
                Place.NOWHERE);
    }
}
