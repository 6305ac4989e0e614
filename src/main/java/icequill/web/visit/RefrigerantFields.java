package icequill.web.visit;

import icequill.web.page.Typing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was added to a machine of refrigerant and recovered from it. Names of fields begin with gas, and end in the machine's id. */
record RefrigerantFields(Typing typing, String machine) {

    private static final String KEY = "refrigerant";
    private static final String TEST = "test";
    private static final String WHEN = "when";
    private static final List<String> NUMBERS = List.of("charge", "added", "recovered");
    private static final List<String> TEXTS = List.of("kind", "from", "into", "technician", "leak", "repair");
    /** What is chosen, which says nothing by itself. */
    private static final List<String> CHOSEN = List.of("unit", "purpose");

    /** Empty where nothing is said of it. */
    Map<String, Object> read(String path) {
        Map<String, Object> said = new LinkedHashMap<>();
        String place = path + "." + KEY;
        NUMBERS.forEach(key -> typing.number(field(key)).ifPresent(number -> said.put(key, number)));
        TEXTS.forEach(key -> typing.text(field(key)).ifPresent(text -> said.put(key, text)));
        typing.text(field(WHEN)).ifPresent(when -> said.put(TEST, test(when)));
        if (!said.isEmpty()) {
            CHOSEN.forEach(key -> typing.text(field(key)).ifPresent(text -> said.put(key, text)));
        }
        typing.place(place, field("added"));
        NUMBERS.forEach(key -> typing.place(place + "." + key, field(key)));
        TEXTS.forEach(key -> typing.place(place + "." + key, field(key)));
        return said;
    }

    private Map<String, Object> test(String when) {
        Map<String, Object> test = new LinkedHashMap<>(Map.of(WHEN, when));
        test.put("tight", typing.text(field("tight")).filter("yes"::equals).isPresent());
        typing.text(field("how")).ifPresent(how -> test.put("how", how));
        return test;
    }

    private String field(String part) {
        return field(part, machine);
    }

    private static String field(String part, String machine) {
        return "gas" + part + "-" + machine;
    }

    static void fill(Told row, String machine, Filling filling) {
        Told said = row.part(KEY);
        NUMBERS.forEach(key -> filling.put(field(key, machine), said.text(key)));
        TEXTS.forEach(key -> filling.put(field(key, machine), said.text(key)));
        CHOSEN.forEach(key -> filling.put(field(key, machine), said.text(key)));
        Told test = said.part(TEST);
        filling.put(field(WHEN, machine), test.text(WHEN));
        filling.put(field("tight", machine), test.text("tight").map(tight -> tight.equals("true") ? "yes" : "no"));
        filling.put(field("how", machine), test.text("how"));
    }
}
