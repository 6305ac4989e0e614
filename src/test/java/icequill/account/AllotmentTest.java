package icequill.account;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.money.Amounts;
import icequill.money.Currencies;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a payment is taken to be for. */
class AllotmentTest {

    private static final CurrencyUnit USD = Currencies.find("USD").orElseThrow();
    private static final LocalDate DAY = LocalDate.of(2026, 7, 2);

    /**
     * Each bill as its number, what is open, and the day of July on which it is due (0 is the last of June). The first rows are two
     * bills, of 301.13 and 94.72: 350.00 leaves 45.85 of the second open, and 400.00 leaves 4.15.
     */
    @ParameterizedTest(name = "{0} {1} for {2}")
    @CsvSource(delimiter = '|', nullValues = "-", value = {
            "350.00 | - | A 301.13 -18; B 94.72 1 | LONGEST_DUE | A 301.13; B 48.87",
            "400.00 | - | A 301.13 -18; B 94.72 1 | LONGEST_DUE | A 301.13; B 94.72",
            "395.85 | - | A 301.13 -18; B 94.72 1 | EXACT_SUM | A 301.13; B 94.72",
            "94.72 | - | A 301.13 -18; B 94.72 1 | EXACT_SUM | B 94.72",
            "94.72 | for a, thanks | A 301.13 -18; B 94.72 1 | NAMED | A 94.72",
            "400.00 | B/A | A 301.13 -18; B 94.72 1 | NAMED | A 301.13; B 94.72",
            "350.00 | invoice B | A 301.13 -18; B 94.72 1 | NAMED | B 94.72",
            "10.00 | AB 7 | A 301.13 -18; B 94.72 1 | LONGEST_DUE | A 10.00",
            // One bill rather than two; of two pairs the older one.
            "30.00 | - | A 10.00 1; B 20.00 2; C 30.00 3 | EXACT_SUM | C 30.00",
            "30.00 | - | A 14.00 1; B 16.00 2; C 10.00 3; D 20.00 4 | EXACT_SUM | A 14.00; B 16.00",
            "60.00 | - | C 30.00 3; A 10.00 1; B 20.00 2 | EXACT_SUM | A 10.00; B 20.00; C 30.00",
            "5.00 | - | - | NOTHING_OPEN | -"})
    void payment_isTakenFor(String amount, String reference, String bills, Allotment.Reason reason, String shares) {
        Allotment allotment = Allotment.of(usd(amount), DAY, Optional.ofNullable(reference), bills(bills));

        assertThat(allotment.reason()).isEqualTo(reason);
        assertThat(text(allotment)).isEqualTo(shares == null ? "" : shares);
    }

    /** 1,068.75 is enough for B until the fifth of July, though A is longer due; a day late it is for A first. */
    @ParameterizedTest
    @CsvSource({"2026-07-05, EXACT_SUM, B 1068.75", "2026-07-06, LONGEST_DUE, A 301.13; B 767.62"})
    void sumThatIsEnoughEarly_isForItsBill(LocalDate day, Allotment.Reason reason, String shares) {
        Owed plain = owed("B", "1088.75", 20, DAY.minusDays(30), Optional.empty());
        Owed early = new Owed(plain.number(), plain.date(), plain.due(), plain.purchaseOrder(), plain.store(),
                plain.total(), plain.paid(), plain.credited(), plain.open(), plain.daysLate(), plain.disputed(),
                Optional.of(new Owed.Offer(LocalDate.of(2026, 7, 5), usd("1068.75"))));

        Allotment allotment = Allotment.of(usd("1068.75"), day, Optional.empty(),
                List.of(owed("A", "301.13", 1, DAY.minusDays(30), Optional.empty()), early));

        assertThat(allotment.reason()).isEqualTo(reason);
        assertThat(text(allotment)).isEqualTo(shares);
    }

    /** Of 542.11, 196.00 are disputed: the payer who holds them back pays 346.11, and more than that is on account. */
    @ParameterizedTest
    @CsvSource({"346.11, EXACT_SUM, A 346.11", "400.00, LONGEST_DUE, A 346.11", "40.00, LONGEST_DUE, A 40.00"})
    void disputedPart_isNotTakenToBePaid(String amount, Allotment.Reason reason, String shares) {
        Allotment allotment = Allotment.of(usd(amount), DAY, Optional.empty(),
                List.of(owed("A", "542.11", 1, DAY.minusDays(30), Optional.of("196.00"))));

        assertThat(allotment.reason()).isEqualTo(reason);
        assertThat(text(allotment)).isEqualTo(shares);
    }

    @Test
    void namedBill_isPaidThoughItIsDisputed() {
        assertThat(text(Allotment.of(usd("542.11"), DAY, Optional.of("A"),
                List.of(owed("A", "542.11", 1, DAY.minusDays(30), Optional.of("196.00")))))).isEqualTo("A 542.11");
    }

    /** A bill that is dated after the payment is paid where it is named, from its own day on. */
    @Test
    void laterBill_onlyWhenItIsNamed() {
        List<Owed> later = List.of(owed("A", "50.00", 31, DAY.plusDays(9), Optional.empty()));

        assertThat(Allotment.of(usd("50.00"), DAY, Optional.empty(), later).shares()).isEmpty();
        assertThat(Allotment.of(usd("50.00"), DAY, Optional.of("A"), later).shares())
                .containsExactly(new Payment.Share("A", DAY.plusDays(9), usd("50.00")));
    }

    /** Three hundred bills of which no few come to the sum: the search ends, and what is longest due is paid. */
    @Test
    void manyBills_theSearchEnds() {
        List<Owed> many = IntStream.range(0, 300)
                .mapToObj(i -> owed("N" + i, 1000 + i + ".00", i - 300, DAY.minusDays(400), Optional.empty())).toList();

        Allotment allotment = Allotment.of(usd("33333.33"), DAY, Optional.empty(), many);

        assertThat(allotment.reason()).isEqualTo(Allotment.Reason.LONGEST_DUE);
        assertThat(Amounts.plain(Amounts.sum(allotment.shares().stream().map(Payment.Share::amount).toList(), USD)))
                .isEqualTo("33333.33");
    }

    private static String text(Allotment allotment) {
        return String.join("; ", allotment.shares().stream()
                .map(share -> share.number() + " " + Amounts.plain(share.amount())).toList());
    }

    private static List<Owed> bills(String text) {
        List<Owed> owed = new ArrayList<>();
        for (String bill : text == null ? new String[0] : text.split("; ", -1)) {
            String[] parts = bill.split(" ", -1);
            owed.add(owed(parts[0], parts[1], Integer.parseInt(parts[2]), LocalDate.of(2026, 5, 1), Optional.empty()));
        }
        return owed;
    }

    private static Owed owed(String number, String open, int due, LocalDate date, Optional<String> disputed) {
        LocalDate day = LocalDate.of(2026, 6, 30).plusDays(due);
        return new Owed(number, date, day, Optional.empty(), Optional.empty(), usd(open), usd("0"), usd("0"),
                usd(open), DAY.toEpochDay() - day.toEpochDay(),
                disputed.map(part -> new Owed.Disputed(usd(part), "too much")), Optional.empty());
    }

    private static MonetaryAmount usd(String number) {
        return Amounts.of(new BigDecimal(number), USD);
    }
}
