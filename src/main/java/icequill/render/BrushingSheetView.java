package icequill.render;

import icequill.document.BrushingSheet;
import icequill.document.BrushingSheet.Comparison;
import icequill.document.BrushingSheet.Left;
import icequill.document.BrushingSheet.Sum;
import icequill.party.Machine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/** A brushing sheet as texts, ready for {@code brushing-sheet.ftlh}. */
record BrushingSheetView(BrushingSheet sheet, Sentences sentences) {

    static Map<String, Object> of(BrushingSheet sheet) {
        String country = sheet.shop().address().country();
        return new BrushingSheetView(sheet, Sentences.of(sheet.language(), country)).model();
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
        model.put("left", sheet.left().stream().map(this::left).toList());
        model.put("rows", rows(sheet.comparison()));
        model.put("cautions",
                sheet.cautions().stream().map(caution -> WorkSheetView.caution(caution, sentences)).toList());
        return model;
    }

    private String name(Machine machine) {
        return new MachineName(machine, sentences).text();
    }

    private Map<String, String> left(Left left) {
        return Map.of("name", name(left.machine()), "why",
                Sentences.capitalized(left.reasons().stream()
                        .map(reason -> sentences.word("brushing.reason." + WorkSheetView.key(reason)))
                        .collect(Collectors.joining("; "))) + ".");
    }

    private List<Map<String, Object>> rows(Comparison comparison) {
        List<Map<String, Object>> rows = new ArrayList<>();
        comparison.ours().forEach(charge -> rows.add(row(Sentences.capitalized(sentences.say(charge.text())),
                sentences.how(charge.how(), charge.net()), charge.net(), false)));
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
