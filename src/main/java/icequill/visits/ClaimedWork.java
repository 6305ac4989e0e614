package icequill.visits;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.party.Machine;
import icequill.pricer.PricedLine;
import icequill.rates.WarrantyPayer;
import icequill.work.Outcome;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What a visit did under the warranty that one payer settles.
 *
 * @param payer as the machine names him; empty where nobody recorded one
 * @param rule that he pays by; empty where none is known
 */
public record ClaimedWork(String payer, List<PricedLine> lines, Optional<WarrantyPayer> rule, CurrencyUnit currency) {

    public ClaimedWork {
        lines = List.copyOf(lines);
    }

    /** What a visit did under a warranty, by payer. */
    public static List<ClaimedWork> of(VisitContext hand) {
        List<PricedLine> claimed = hand.taxed().priced().lines().stream()
                .filter(line -> line.outcome() == Outcome.WARRANTY).toList();
        String usual = claimed.stream().flatMap(line -> payer(hand, line).stream()).findFirst()
                .or(() -> hand.site().machines().stream().flatMap(machine -> machine.warranty().stream())
                        .map(Machine.Warranty::payer).findFirst())
                .orElse("");
        Map<String, List<PricedLine>> byPayer = claimed.stream().collect(Collectors.groupingBy(
                line -> payer(hand, line).orElse(usual), LinkedHashMap::new, Collectors.toList()));
        return byPayer.entrySet().stream().map(entry -> new ClaimedWork(entry.getKey(), entry.getValue(),
                hand.rates().adjustments().warrantyPayers().stream()
                        .filter(rule -> rule.name().equals(entry.getKey())).findFirst(),
                hand.taxed().priced().currency())).toList();
    }

    private static Optional<String> payer(VisitContext hand, PricedLine line) {
        return line.machine().flatMap(hand.site()::machine).flatMap(Machine::warranty).map(Machine.Warranty::payer)
                .filter(name -> !name.isEmpty());
    }

    /** What it would have cost the customer, before tax. */
    public MonetaryAmount listed() {
        return Amounts.sum(lines.stream().map(PricedLine::list).toList(), currency);
    }

    /** What the payer's rule pays of it: labor by his hour and his most minutes, all else at its list price. */
    public Explanation allowed() {
        Optional<MonetaryAmount> hourly = rule.flatMap(WarrantyPayer::hourly);
        if (hourly.isEmpty()) {
            return Explanation.of(Figure.price(listed(), ""), Phrase.of("reason.claim-listed"));
        }
        Figure others = Figure.price(Amounts.sum(lines.stream().filter(line -> !isLabor(line)).map(PricedLine::list)
                .toList(), currency), "");
        BigDecimal minutes = minutes();
        BigDecimal paid = rule.flatMap(WarrantyPayer::mostMinutes).map(BigDecimal::valueOf).map(minutes::min)
                .orElse(minutes);
        return Explanation.of(others.plus(Figure.term(paid, "min").times(Figure.price(hourly.get(), "h"))
                .over(Figure.term(BigDecimal.valueOf(60), "min/h")).rounded(Rounding.LINE, currency)),
                Phrase.of("reason.claim-ruled"));
    }

    private BigDecimal minutes() {
        return lines.stream().filter(ClaimedWork::isLabor).map(line -> line.quantity().number())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static boolean isLabor(PricedLine line) {
        return line.chargeClass().isLabor() && line.quantity().unit() == Unit.MINUTE;
    }
}
