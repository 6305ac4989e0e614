package icequill.render.words;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Currencies;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.money.Stepping;
import icequill.party.Language;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a customer reads beside an amount; every formula here was worked with pencil and paper. */
class SentencesTest {

    private static final CurrencyUnit DOLLAR = Currencies.find("USD").orElseThrow();

    static Stream<Arguments> figures() {
        Figure hourly = Figure.price(Amounts.of(new BigDecimal("98"), DOLLAR), "h");
        Figure labor = Figure.term(40, "min").times(hourly).over(Figure.term(60, "min/h"))
                .rounded(Rounding.LINE, DOLLAR);
        Figure ten = Figure.percent(Percent.of("10"));
        Figure list = Figure.price(Amounts.of(new BigDecimal("55"), DOLLAR), "");
        return Stream.of(
                Arguments.of("labor", labor, "40 min × 98.00/h ÷ 60", "40 min × 98,00/h ÷ 60"),
                Arguments.of("less a percentage", list.minus(ten.times(list)), "55.00 − 10% × 55.00",
                        "55,00 − 10 % × 55,00"),
                Arguments.of("a sum within a product", ten.times(list.plus(list)), "10% × (55.00 + 55.00)",
                        "10 % × (55,00 + 55,00)"),
                Arguments.of("a difference taken off", list.minus(list.minus(list)), "55.00 − (55.00 − 55.00)",
                        "55,00 − (55,00 − 55,00)"),
                Arguments.of("raised to full packs",
                        new Figure.RaisedTo(Figure.term(40, "floz"), new BigDecimal("32")), "64 fl oz", "64 oz fl"),
                Arguments.of("to a price step",
                        list.plus(list).stepped(Stepping.NEAREST, Amounts.of(new BigDecimal("5"), DOLLAR)),
                        "55.00 + 55.00",
                        "55,00 + 55,00"),
                Arguments.of("share",
                        new Figure.Share(new BigDecimal("10.00"), List.of(BigDecimal.ONE, BigDecimal.TWO), 1, 2),
                        "share of 10.00", "parte de 10,00"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void formula_eachKindOfFigure_readableInBothLanguages(String name, Figure figure, String english, String spanish) {
        assertThat(said(Sentences.of(Language.ENGLISH, "US").formula(figure))).isEqualTo(english);
        assertThat(said(Sentences.of(Language.SPANISH, "ES").formula(figure))).isEqualTo(spanish);
    }

    @Test
    void say_minimumAccepted_namesMinutesDayAndPaper() {
        Phrase phrase = Phrase.of("reason.minimum-accepted", Fact.number(10, "min"), Fact.number(60, "min"),
                new Fact.Day(LocalDate.of(2026, 1, 19)), new Fact.Text("quote Q-7"));

        assertThat(said(Sentences.of(Language.ENGLISH, "US").say(phrase))).isEqualTo(
                "10 min worked, 60 min billed: the minimum you accepted on January 19, 2026, quote Q-7");
        assertThat(said(Sentences.of(Language.SPANISH, "US").say(phrase))).isEqualTo(
                "10 min trabajados, 60 min facturados: el mínimo que usted aceptó el 19 de enero de 2026, quote Q-7");
    }

    /** A place in one fact is text, not a place of the sentence. */
    @Test
    void say_factThatLooksLikeAPlace_staysAsItIs() {
        Phrase phrase = Phrase.of("reason.packs", new Fact.Text("{1}"), new Fact.Text("two"), new Fact.Text("32"));

        assertThat(Sentences.of(Language.ENGLISH, "US").say(phrase)).isEqualTo("{1} used, two full packs of 32");
    }

    @Test
    void capitalized_firstLetterOnly_emptyStaysEmpty() {
        assertThat(Sentences.capitalized("ácido for the Bar")).isEqualTo("Ácido for the Bar");
        assertThat(Sentences.capitalized("")).isEmpty();
    }

    private static String said(String text) {
        return text.replace('\u00a0', ' ');
    }
}
