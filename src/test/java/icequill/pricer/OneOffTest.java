package icequill.pricer;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.RatesFixture.usd;
import static icequill.VisitBuilder.visit;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.VisitBuilder;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.money.Reduction;
import icequill.work.ChargeClass;
import icequill.work.OwnPrice;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Discounts for this once, worked out by hand; beside them 52.00 for the service call and 98.00 for the least hour. */
class OneOffTest {

    /** Of a part at 412.37: 10 % are 41.237; an amount as it stands, but no more than the price; the larger of two. */
    @ParameterizedTest
    @CsvSource({"10 %, none, 371.13, reason.one-off", "15.00, none, 397.37, reason.one-off",
            "500.00, none, 0.00, reason.one-off-capped", "5 %, ten-off, 371.13, reason.class-discount",
            "45.00, ten-off, 367.37, reason.one-off", "41.24, ten-off, 371.13, reason.one-off"})
    void line_less(String off, String classDiscount, String net, String reason) {
        VisitBuilder builder = part().less(reduction(off));
        PricedLine line = priced(classDiscount.equals("none") ? builder : builder.classDiscount(classDiscount)).lines()
                .getLast();

        assertThat(Amounts.plain(line.net())).isEqualTo(net);
        assertThat(Amounts.plain(line.list())).isEqualTo("412.37");
        assertThat(line.how().reasons()).extracting(Phrase::key).containsExactly(reason);
        assertThat(HowReader.evaluate(line.how().text(USD))).isEqualByComparingTo(net);
    }

    /** Half of the service call and a tenth of the labor: 26.00 and 88.20; of 10 % and 50 % the larger. */
    @Test
    void classes_less_serviceCallAndLaborToo() {
        PricedVisit priced = priced(part().less(ChargeClass.TRAVEL, "50").less(ChargeClass.CLEANING, "10"));
        PricedVisit besides = priced(part().less(ChargeClass.TRAVEL, "50").classDiscount("ten-off"));

        assertThat(nets(priced)).containsExactly("26.00", "88.20", "412.37");
        assertThat(nets(besides)).containsExactly("26.00", "88.20", "371.13");
        assertThat(priced.lines().getFirst().how().reasons()).extracting(Phrase::key)
                .endsWith("reason.class-discount");
    }

    /** 3 % on what is left: 52.00 + 98.00 + 397.37 are 547.37, and 16.42 of it. */
    @Test
    void surcharge_isOnWhatIsLeft() {
        assertThat(nets(priced(part().less(reduction("15.00")).surcharge("handling"))))
                .containsExactly("52.00", "98.00", "397.37", "16.42");
    }

    private static Reduction reduction(String off) {
        return off.endsWith("%")
                ? new Reduction.Part(Percent.of(off.replace(" %", "")))
                : new Reduction.Fixed(usd(off));
    }

    private static VisitBuilder part() {
        return visit().lead("2026-05-13T10:00", "2026-05-13T10:10").own(ChargeClass.PARTS, "1",
                new OwnPrice.Given(usd("412.37"), Optional.empty()), Optional.empty());
    }

    private static PricedVisit priced(VisitBuilder builder) {
        return Pricer.price(builder.build(), site(), rates()).orElseThrow();
    }

    private static List<String> nets(PricedVisit priced) {
        return priced.lines().stream().map(line -> Amounts.plain(line.net())).toList();
    }
}
