package icequill.render.view;

import icequill.document.InvoiceLine;
import icequill.explain.ConstantKey;
import icequill.money.Amounts;
import icequill.render.words.Sentences;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * The lines that an agreement includes, told in one row: nothing is charged for any of them.
 *
 * @param lines by their numbers; none or several
 */
record IncludedLines(Map<Integer, InvoiceLine> lines) {

    /** Those among the lines of a bill; a single one stays a line like any other. */
    static IncludedLines of(List<InvoiceLine> all, List<Integer> numbers) {
        Map<Integer, InvoiceLine> found = new TreeMap<>();
        IntStream.range(0, all.size()).filter(i -> all.get(i).outcome() == Outcome.INCLUDED)
                .forEach(i -> found.put(numbers.get(i), all.get(i)));
        return new IncludedLines(found.size() > 1 ? found : Map.of());
    }

    boolean holds(int number) {
        return lines.containsKey(number);
    }

    boolean begins(int number) {
        return numbers().getFirst() == number;
    }

    /** Their numbers, as in {@code 1–4, 6}. */
    String range() {
        List<String> runs = new ArrayList<>();
        int first = numbers().getFirst();
        for (int number : numbers()) {
            if (!lines.containsKey(number + 1)) {
                runs.add(first == number ? String.valueOf(number) : first + "–" + number);
                first = numbers().stream().filter(next -> next > number).findFirst().orElse(number);
            }
        }
        return String.join(", ", runs);
    }

    LineView.Row row(Sentences sentences) {
        CurrencyUnit currency = List.copyOf(lines.values()).getFirst().net().getCurrency();
        String list = sentences.formats().amount(sum(List.copyOf(lines.values()), currency));
        return new LineView.Row("", sentences.word("outcome.included"), "", "", "", list,
                sentences.formats().amount(Amounts.zero(currency)),
                Sentences.capitalized(sentences.word("line.included-at", byClass(sentences, currency), list))
                        + call(sentences),
                false);
    }

    /** Which call of an agreement it is; nothing where it is none. */
    private String call(Sentences sentences) {
        return lines.values().stream().flatMap(line -> line.how().reasons().stream())
                .filter(reason -> reason.key().equals("reason.included-call")).findFirst()
                .map(reason -> "; " + sentences.say(reason)).orElse("");
    }

    private String byClass(Sentences sentences, CurrencyUnit currency) {
        Map<ChargeClass, List<InvoiceLine>> classes = lines.values().stream().collect(Collectors.groupingBy(
                InvoiceLine::chargeClass, () -> new EnumMap<>(ChargeClass.class), Collectors.toList()));
        return classes.entrySet().stream()
                .map(each -> sentences.word("class." + ConstantKey.of(each.getKey())) + " "
                        + sentences.formats().amount(sum(each.getValue(), currency)))
                .collect(Collectors.joining(" + "));
    }

    private static MonetaryAmount sum(List<InvoiceLine> lines, CurrencyUnit currency) {
        return Amounts.sum(lines.stream().map(InvoiceLine::list).toList(), currency);
    }

    private List<Integer> numbers() {
        return lines.keySet().stream().sorted().toList();
    }
}
