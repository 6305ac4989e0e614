package icequill.render.view;

import icequill.document.BrushingSheet;
import icequill.document.BrushingSheet.Comparison;
import icequill.document.BrushingSheet.Left;
import icequill.document.BrushingSheet.Sum;
import icequill.document.BrushingSheetPair;
import icequill.explain.ConstantKey;
import icequill.money.Amounts;
import icequill.party.Machine;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/** A brushing sheet as texts, ready for {@code brushing-sheet.ftlh}. */
public record BrushingSheetView(BrushingSheet sheet, Sentences sentences) {

    private static final int FEW = 2;
    /** So many logs stand on the front; with more machines one log is for all. */
    private static final int MOST_LOGS = 3;

    public static Map<String, Object> of(BrushingSheet sheet) {
        String country = sheet.shop().address().country();
        return new BrushingSheetView(sheet, Sentences.of(sheet.language(), country)).model();
    }

    /** Both sides; what the page itself needs comes from the front. */
    public static Map<String, Object> of(BrushingSheetPair pair) {
        Map<String, Object> model = new LinkedHashMap<>(of(pair.front()));
        model.put("sides", List.of(of(pair.front()), of(pair.back())));
        return model;
    }

    private Map<String, Object> model() {
        List<Map<String, String>> facts = new Details(sentences)
                .add("brushing.date", sentences.formats().day(sheet.date())).add("fact.store", sheet.storeNumber())
                .rows();
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(sheet, sentences.word("brushing.title"), sentences).model(sheet.customer(),
                        sheet.site(), sheet.address(), facts));
        model.put("currency", sheet.comparison().brush().getCurrency().getCurrencyCode());
        model.put("yours", sheet.yours().stream().map(this::name).toList());
        List<String> places = places();
        model.put("places", places);
        model.put("byPlace", places.size() > 1 && places.size() <= MOST_LOGS);
        model.put("left", sheet.left().stream().map(this::left).toList());
        model.put("rows", rows(sheet.comparison()));
        model.put("cautions",
                sheet.cautions().stream().map(new CautionWords(sentences)::full).toList());
        model.put("savings", sheet.savings().map(this::savings).orElse(List.of()));
        model.put("electricity", sheet.savings().flatMap(BrushingSheet.Savings::electricity)
                .map(range -> sentences.word("brushing.electricity", round(range.low()), round(range.high()),
                        round(range.middle())))
                .orElse(""));
        return model;
    }

    private List<Map<String, Object>> savings(BrushingSheet.Savings savings) {
        String calls = sentences.formats().number(savings.calls(), 1);
        return List.of(
                Map.of("what", sentences.word("brushing.spared", calls), "amount",
                        sentences.formats().amount(savings.spared()), "sum",
                        false),
                Map.of("what", sentences.word("brushing.bought"), "amount",
                        sentences.formats().amount(savings.bought()), "sum", false),
                Map.of("what", sentences.word("brushing.year-less"), "amount",
                        sentences.formats().amount(sheet.comparison().year().amount().negate()), "sum", false),
                Map.of("what", sentences.word("brushing.kept"), "amount", round(savings.kept()), "sum", true));
    }

    private String round(MonetaryAmount amount) {
        return sentences.formats().number(Amounts.number(amount));
    }

    /** By the serial number too, where there are few; by the place alone, where there are many and each has its own. */
    private String name(Machine machine) {
        if (sheet.yours().size() > MOST_LOGS && places().size() == sheet.yours().size()) {
            return Sentences.capitalized(machine.where());
        }
        return sheet.yours().size() > FEW ? called(machine) : new MachineName(machine, sentences).text();
    }

    private List<String> places() {
        return sheet.yours().stream().map(Machine::where).distinct().toList();
    }

    private static String called(Machine machine) {
        return Sentences.capitalized(machine.where()) + " · " + machine.model();
    }

    private Map<String, String> left(Left left) {
        return Map.of("name", called(left.machine()), "why",
                left.reasons().stream()
                        .map(reason -> sentences.word("brushing.reason." + ConstantKey.of(reason)))
                        .collect(Collectors.joining("; ")) + ".");
    }

    private List<Map<String, Object>> rows(Comparison comparison) {
        List<Map<String, Object>> rows = new ArrayList<>();
        rows.add(row("brushing.visit", comparison.visit(), true));
        rows.add(row("brushing.own", comparison.own(), false));
        rows.add(row(sentences.word("brushing.brush"), "", comparison.brush(), false));
        rows.add(row("brushing.difference", comparison.difference(), true));
        rows.add(row("brushing.year", comparison.year(), true));
        return rows;
    }

    private Map<String, Object> row(String key, Sum sum, boolean isSum) {
        return row(sentences.word(key), sentences.how(sum.how(), sum.amount()), sum.amount(), isSum);
    }

    private Map<String, Object> row(String what, String how, MonetaryAmount amount, boolean isSum) {
        return Map.of("what", what, "how", how, "amount", sentences.formats().amount(amount), "sum", isSum);
    }
}
