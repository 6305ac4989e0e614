package icequill.office.asking;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.YamlWriter;
import icequill.shop.FormName;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A visit that was typed, as the form that somebody might have written.
 *
 * @param id that the book is to call it by
 */
public record TypedVisit(String id, Draft draft) {

    /** The key of a visit that is only to be quoted, and so still to come. */
    static final String QUOTE = "quote";
    /** In the order in which forms have them. */
    private static final List<String> KEYS = List.of("site", "asked", "order", "serviceCall", "people", "machines",
            "lines", "flat", "fees", "surcharges", "classDiscount", "documentDiscount", "less", "route",
            "diagnosis", "safeFrom",
            "nextDue", QUOTE);

    public FormName name() {
        return new FormName.InHand(id, yaml());
    }

    String yaml() {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("format", 1);
        Map<String, Object> told = told().values();
        form.put(Form.KIND_KEY, (told.containsKey(QUOTE) ? FormKind.PLANNED_VISIT : FormKind.VISIT).key());
        form.put(Form.ID_KEY, id);
        KEYS.stream().filter(told::containsKey).forEach(key -> form.put(key, told.get(key)));
        return YamlWriter.text(List.of(form));
    }

    /** With what is said of all of it in each of its rows that says nothing else. */
    public Draft told() {
        Object outcome = draft.values().get(Draft.OUTCOME);
        return outcome == null
                ? draft
                : draft.without(Draft.OUTCOME).withDefault("serviceCall", outcome)
                        .inRows("people", Draft.OUTCOME, outcome)
                        .inRows("lines", Draft.OUTCOME, outcome)
                        .with("machines", draft.rows("machines").stream()
                                .map(row -> Draft.of((Map<?, ?>) row).inRows("tasks", Draft.OUTCOME, outcome).values())
                                .toList());
    }
}
