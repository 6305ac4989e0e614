package icequill.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.DemoShop;
import icequill.document.Outlook;
import icequill.forecast.ChanceInTen;
import icequill.forecast.charges.MixedDistribution;
import icequill.money.MinorUnits;
import icequill.shop.FormName;
import icequill.shop.PlanLoader;
import icequill.shop.ShopFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a customer's sheet says of ranges is true: the law is added up inside each. */
@Tag("wide")
class RangesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 20);
    private static final List<String> FILES = List.of("crumb-lane-plan", "plan-mercado", "fernhill-plan");
    private static final double ROUNDING = 1e-9;
    private static final long STEP = 5000;

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    /** The quarterly plan with catching up costs 1,228.79 and nothing more in 57 of 100 first years. */
    @Test
    void quarterly_bakery_isThePlannedPriceInSixOfTen() {
        SiteForecast forecast = forecast(FILES.getFirst());

        Outlook.Span first = new OutlookAssembly(forecast).outlook().ways().get(3).first();

        assertThat(first.planned()).contains(new ChanceInTen(ChanceInTen.Than.ABOUT, 6));
        assertThat(MinorUnits.of(first.low())).isEqualTo(122879);
        assertThat(MinorUnits.of(first.high()) % STEP).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void ranges_generatedRequests_holdWhatTheySay(int number) throws IOException {
        assertHold(number);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("many")
    void ranges_manyGeneratedRequests_holdWhatTheySay(int number) throws IOException {
        assertHold(number);
    }

    static IntStream many() {
        return IntStream.range(3, 60);
    }

    private void assertHold(int number) throws IOException {
        Random random = new Random(20260520L + number);
        String name = FILES.get(number % FILES.size());
        int high = 6 + random.nextInt(12);
        int usual = 2 + random.nextInt(high - 2);
        Path request = folder.resolve("quotes/" + name + ".yaml");
        String asked = Files.readString(request);
        String forecastKey = "forecast:\n";
        String assumed = String.format(Locale.ROOT,
                forecastKey + "  assume:%n    randomFaults: {usual: %.2f, low: %.2f, high: %.2f}%n"
                        + "    water: {usual: {by6: %s, by12: %d}, low: {by6: 0.1, by12: 1}, high: {by6: %s, by12: %d}}%n",
                0.1 + random.nextDouble(), 0.05, 1.2 + random.nextDouble(), usual * 0.3, usual, high * 0.3, high);
        Files.writeString(request, asked.contains("\n" + forecastKey)
                ? asked.replace("\n" + forecastKey, "\n" + assumed)
                : asked + assumed);
        SiteForecast forecast = forecast(name);
        List<Outlook.Way> printed = new OutlookAssembly(forecast).outlook().ways();
        List<EstimateWeights.Likely> weights = new EstimateWeights(forecast).weights();
        assertThat(weights.stream().mapToDouble(EstimateWeights.Likely::weight).sum()).isCloseTo(1, within(ROUNDING));

        for (int i = 0; i < printed.size(); i++) {
            CareOption way = forecast.ways().get(i);
            check(printed.get(i).first(), forecast, way, 1, weights);
            check(printed.get(i).later(), forecast, way, forecast.years(), weights);
        }
    }

    private static void check(Outlook.Span span, SiteForecast forecast, CareOption way, int years,
            List<EstimateWeights.Likely> weights) {
        MixedDistribution usual = forecast.forecast(way, years).total();
        MixedDistribution doubted = new EstimateWeights(forecast).total(way, years, weights);
        long planned = forecast.forecast(way, years).planned();
        long low = MinorUnits.of(span.low());
        long high = MinorUnits.of(span.high());
        assertThat(low).isGreaterThanOrEqualTo(planned).isLessThanOrEqualTo(MinorUnits.of(span.mean()));
        assertThat(usual.chanceOfAtMost(high) - usual.chanceOfAtMost(low - 1)).isGreaterThanOrEqualTo(0.8 - ROUNDING);
        assertThat(doubted.chanceOfAtMost(high) - doubted.chanceOfAtMost(low - 1))
                .isGreaterThanOrEqualTo(0.8 - ROUNDING);
        assertThat(usual.chanceOfAtMost(high)).isGreaterThanOrEqualTo(0.9 - ROUNDING);
        assertThat(doubted.chanceOfAtMost(high)).isGreaterThanOrEqualTo(0.9 - ROUNDING);
        // No wider than it must be.
        assertThat(Math.min(usual.chanceOfAtMost(high - STEP), doubted.chanceOfAtMost(high - STEP))).isLessThan(0.9);
        double nothingMore = usual.chanceOfAtMost(planned);
        assertThat(span.planned().isPresent()).isEqualTo(nothingMore > 0.1);
        span.planned().ifPresent(tenths -> {
            assertThat(low).isEqualTo(planned);
            assertThat(nothingMore).isBetween(tenths.tenths() / 10.0 - 0.0501,
                    tenths.than() == ChanceInTen.Than.MORE ? 1 : tenths.tenths() / 10.0 + 0.0501);
        });
    }

    private SiteForecast forecast(String name) {
        ShopFolder read = DemoShop.read(folder);
        return new PlanLoader(read).of(FormName.file(folder.resolve("quotes/" + name + ".yaml")), DAY)
                .then(hand -> SiteForecast.of(hand, read.forecast(DAY).orElseThrow(), read.energy(), DAY,
                        new LookAhead(Optional.empty(), Optional.of(5))))
                .orElseThrow();
    }
}
