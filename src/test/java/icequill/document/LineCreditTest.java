package icequill.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.pricer.UnitPrice;
import icequill.tax.LineTax;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.Monetary;
import javax.money.MonetaryAmount;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Parts of a line, given back one after another. */
class LineCreditTest {

    private static final CurrencyUnit USD = Monetary.getCurrency("USD");

    /**
     * Worked by hand: 87.25 bear 3.45 of a discount, so 83.80 are left. Of 50.00 that go back it took off 3.45 x 50.00 / 83.80 = 2.058,
     * hence 2.06; the other 33.80 bear the rest, 1.39.
     */
    @Test
    void parts_ofALineUnderADiscount_bearItsShare() {
        LineCredit line = new LineCredit(line(8725, 345), List.of());

        InvoiceLine part = line.part(usd(5000));
        LineCredit after = new LineCredit(line.billed(), List.of(part));
        InvoiceLine rest = after.rest();

        assertThat(plain(part)).containsExactly("52.06", "50.00");
        assertThat(Amounts.plain(after.left())).isEqualTo("35.19");
        assertThat(plain(rest)).containsExactly("35.19", "33.80");
        assertThat(rest.how().text(USD)).isEqualTo("87.25 USD - 52.06 USD = 35.19");
        assertThat(rest.how().reasons()).containsExactly(Phrase.of("reason.line-rest"));
        assertThat(HowReader.evaluate(part.tax().how().text(USD))).isEqualByComparingTo("50.00");
        assertThat(HowReader.evaluate(rest.tax().how().text(USD))).isEqualByComparingTo("33.80");
        assertThat(HowReader.evaluate(part.how().text(USD))).isEqualByComparingTo("52.06");
        assertThat(new LineCredit(line.billed(), List.of(part, rest)).isSpent()).isTrue();
        assertThat(after.isSpent()).isFalse();
    }

    @Test
    void rest_nothingGivenYet_isTheLineItself() {
        InvoiceLine billed = line(8725, 345);

        assertThat(new LineCredit(billed, List.of()).rest()).isSameAs(billed);
        assertThat(new LineCredit(line(0, 0), List.of()).isSpent()).isFalse();
        assertThat(new LineCredit(line(0, 0), List.of(line(0, 0))).isSpent()).isTrue();
    }

    @Test
    void part_moreThanIsLeftOrNothing_isAMistake() {
        LineCredit line = new LineCredit(line(8725, 0), List.of(line(8000, 0)));

        assertThat(plain(line.part(usd(725)))).containsExactly("7.25", "7.25");
        for (int cents : List.of(726, 0, -1)) {
            assertThatThrownBy(() -> line.part(usd(cents))).isInstanceOf(IllegalArgumentException.class);
        }
    }

    /** Worked by hand: 10.00 for three are 3.33, 6.67 - 3.33 and 10.00 - 6.67; a part by amount counts none of them. */
    @Test
    void count_oneByOne_completesTheLine() {
        InvoiceLine three = counted(3, 1000);
        List<InvoiceLine> given = new ArrayList<>(List.of(new LineCredit(three, List.of()).count(BigDecimal.ONE)));
        given.add(new LineCredit(three, given).count(BigDecimal.ONE));
        given.add(new LineCredit(three, given).count(BigDecimal.ONE));

        assertThat(given).extracting(line -> Amounts.plain(line.net())).containsExactly("3.33", "3.34", "3.33");
        assertThat(given).allSatisfy(line -> {
            assertThat(line.quantity()).isEqualTo(Quantity.of(1, Unit.EACH));
            assertThat(HowReader.evaluate(line.how().text(USD))).isEqualByComparingTo(Amounts.number(line.net()));
        });
        assertThat(given.get(1).how().text(USD))
                .isEqualTo("round(10.00 USD x 2 ea / 3 ea; line; 2) - 3.33 USD = 3.34");
        assertThat(new LineCredit(three, given).isSpent()).isTrue();
        LineCredit byAmount = new LineCredit(three, List.of(new LineCredit(three, List.of()).part(usd(500))));
        assertThat(byAmount.countLeft()).contains(Quantity.of(3, Unit.EACH));
        assertThat(new LineCredit(line(1000, 0), List.of()).countLeft()).isEmpty();
    }

    /** 50.00 off 52.00, 65.33 and 159.25: 9.4005, 11.8103 and 28.7892, so the cent left over goes to the last. */
    @Test
    void share_ofGoodwillOnTheWhole_byWhatIsLeft() {
        List<MonetaryAmount> left = List.of(usd(5200), usd(6533), usd(15925));

        List<InvoiceLine> shares = IntStream.range(0, 3).mapToObj(
                i -> new LineCredit(line(List.of(5200, 6533, 15925).get(i), 0), List.of()).share(usd(5000), left, i))
                .toList();

        assertThat(shares).extracting(line -> Amounts.plain(line.net())).containsExactly("9.40", "11.81", "28.79");
        assertThat(shares).allSatisfy(line -> assertThat(HowReader.evaluate(line.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(line.net())));
    }

    /** 10 % of 159.25 are 15.925. */
    @Test
    void part_byPercent_isRoundedHalfUp() {
        InvoiceLine part = new LineCredit(line(15925, 0), List.of()).part(Percent.of("10"));

        assertThat(part.how().text(USD)).isEqualTo("round(10 % x 159.25 USD; allowance; 2) = 15.93");
    }

    @Property(tries = 500, seed = "8725")
    void parts_any_addUpToTheLine(@ForAll @IntRange(min = 1, max = 100_000) int net,
            @ForAll @IntRange(min = 0, max = 100) int percentOff,
            @ForAll @Size(max = 6) List<@IntRange(min = 1, max = 50_000) Integer> parts) {
        int share = net * percentOff / 100;
        List<InvoiceLine> given = new ArrayList<>();
        LineCredit line = new LineCredit(line(net, share), given);
        for (int part : parts) {
            if (line.baseLeft().isGreaterThan(usd(part))) {
                given.add(line.part(usd(part)));
                line = new LineCredit(line.billed(), given);
            }
        }
        given.add(line.rest());

        assertThat(sum(given.stream().map(InvoiceLine::net).toList())).isEqualTo(Amounts.plain(usd(net)));
        assertThat(sum(given.stream().map(part -> part.tax().base()).toList()))
                .isEqualTo(Amounts.plain(usd(net - share)));
        assertThat(given).allMatch(part -> part.tax().base().isPositiveOrZero()
                && part.tax().base().isLessThanOrEqualTo(part.net()));
    }

    private static List<String> plain(InvoiceLine line) {
        return List.of(Amounts.plain(line.net()), Amounts.plain(line.tax().base()));
    }

    private static String sum(List<MonetaryAmount> amounts) {
        return Amounts.plain(Amounts.sum(amounts, USD));
    }

    private static InvoiceLine line(int net, int share) {
        MonetaryAmount amount = usd(net);
        Explanation how = Explanation.of(Figure.price(amount, ""));
        Explanation base = Explanation.of(Figure.price(amount, "").minus(Figure.price(usd(share), "")));
        return new InvoiceLine(ChargeClass.REPAIR, Outcome.CHARGED, Phrase.of("line.agreement"), Optional.empty(),
                Quantity.of(1, Unit.EACH), Optional.empty(), amount, usd(0), amount, how,
                new LineTax(usd(net - share), base, Optional.empty(), Phrase.of("reason.tax-rule")));
    }

    private static InvoiceLine counted(int number, int net) {
        InvoiceLine line = line(net, 0);
        return new InvoiceLine(line.chargeClass(), line.outcome(), line.text(), line.machine(),
                Quantity.of(number, Unit.EACH), Optional.of(new UnitPrice(usd(333), Unit.EACH)), line.list(),
                line.allowance(), line.net(), line.how(), line.tax());
    }

    private static MonetaryAmount usd(int cents) {
        return Amounts.of(BigDecimal.valueOf(cents, 2), USD);
    }
}
