package icequill.office.quoting;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.YamlReader;
import icequill.files.yaml.YamlWriter;
import icequill.problem.Problems;
import icequill.shop.FormName;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A maintenance quote that was typed, as the forms that somebody might have written. Each calls itself as it is named here until it is
 * stored, and problems are placed so.
 *
 * @param request its keys
 * @param site a new one with its customer in it, with its id; empty for one of the book
 * @param brushing what the customer says of brushing his own condensers; empty where he does not
 */
public record TypedQuote(Map<String, Object> request, Optional<Map<String, Object>> site,
        Optional<Map<String, Object>> brushing) {

    /** Of the request, and in the place of problems of the brushing. */
    public static final String REQUEST = "request";
    public static final String BRUSHING = "brushing";

    FormName request(String id) {
        return name(FormKind.MAINTENANCE_REQUEST, id, request);
    }

    Optional<FormName> brushing(String id) {
        return brushing.map(told -> name(FormKind.BRUSHING_REQUEST, id, told));
    }

    /** The new site as a form; empty where there is none, or where it cannot be read, which is a problem. */
    List<Form> sites(Problems problems) {
        return site.map(told -> form(name(FormKind.SITE, String.valueOf(told.get(Form.ID_KEY)), told), problems))
                .orElse(List.of());
    }

    /** The requests under the id by which the book is to know them. */
    List<Form> requests(String id, Problems problems) {
        return Stream
                .concat(form(request(id), problems).stream(),
                        brushing(id).stream().flatMap(name -> form(name, problems).stream()))
                .toList();
    }

    private static List<Form> form(FormName name, Problems problems) {
        return name instanceof FormName.InHand(String id, String yaml)
                ? YamlReader.parse(yaml, id, problems).map(tree -> List.of(Form.of(tree, id))).orElse(List.of())
                : List.of();
    }

    private static FormName name(FormKind kind, String id, Map<String, Object> told) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("format", 1);
        form.put(Form.KIND_KEY, kind.key());
        form.putAll(told);
        form.put(Form.ID_KEY, id);
        return new FormName.InHand(id, YamlWriter.text(List.of(form)));
    }
}
