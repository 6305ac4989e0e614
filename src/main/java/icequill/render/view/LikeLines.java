package icequill.render.view;

import icequill.document.InvoiceLine;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lines of a price as rows of a table; those that would print the same but for their machine stand together. */
record LikeLines(List<InvoiceLine> lines, Sentences sentences) {

    private static final String ONE = "1";

    List<LineView.Row> rows() {
        Map<LineView.Row, List<InvoiceLine>> alike = new LinkedHashMap<>();
        lines.forEach(line -> alike.computeIfAbsent(anywhere(line), key -> new ArrayList<>()).add(line));
        return alike.entrySet().stream().map(entry -> row(entry.getKey(), entry.getValue())).toList();
    }

    private LineView.Row anywhere(InvoiceLine line) {
        return new LineView(new InvoiceLine(line.chargeClass(), line.outcome(), line.text(), Optional.empty(),
                line.quantity(), line.unitPrice(), line.list(), line.allowance(), line.net(), line.how(), line.tax()),
                sentences).row(false);
    }

    private LineView.Row row(LineView.Row each, List<InvoiceLine> all) {
        if (all.size() == 1) {
            return new LineView(all.getFirst(), sentences).row(false);
        }
        String times = all.size() + "\u00a0×\u00a0";
        String quantity = each.quantity().equals(ONE) ? String.valueOf(all.size()) : times + each.quantity();
        List<String> machines = all.stream().flatMap(line -> line.machine().stream()).map(Sentences::capitalized)
                .toList();
        return new LineView.Row("", each.text(), each.outcome(), quantity, each.price(), each.list(),
                sentences.formats().amount(all.getFirst().net().multiply(all.size())),
                sentences.word("plan.alike", times + each.amount(), String.join(", ", machines), each.how()),
                each.marked());
    }
}
