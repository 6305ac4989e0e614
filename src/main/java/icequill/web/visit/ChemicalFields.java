package icequill.web.visit;

import icequill.web.page.Typing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** How much of each cleaner and sanitizer went into a machine, how long it worked, and what was measured after it. */
record ChemicalFields(Typing typing, String machine, Kept.Rows kept) {

    private static final List<String> PARTS = List.of("dose", "minutes", "ph", "strip");
    private static final Set<String> SHOWN = Set.of("material", "dose", "minutes", "ph", "strip");
    private static final Pattern FIELD = Pattern.compile("(?:dose|minutes|ph|strip)_([^_]+)_([^_]+)");

    List<Map<String, Object>> read(String path) {
        List<Map<String, Object>> chemicals = new ArrayList<>();
        typing.names().stream().map(FIELD::matcher).filter(field -> field.matches() && field.group(1).equals(machine))
                .map(field -> field.group(2)).sorted().distinct().forEach(material -> {
                    Map<String, Object> values = new LinkedHashMap<>();
                    for (String part : PARTS) {
                        String field = field(part, machine, material);
                        Optional<BigDecimal> number = typing.number(field);
                        number.ifPresent(found -> values.put(part, found));
                        typing.place(path + ".chemicals[" + chemicals.size() + "]." + part, field);
                    }
                    if (!values.isEmpty()) {
                        typing.place(path + ".chemicals[" + chemicals.size() + "]", dose(machine, material));
                        Map<String, Object> chemical = new LinkedHashMap<>(Map.of("material", material));
                        chemical.putAll(values);
                        chemical.putAll(kept.next("material", material).but(SHOWN));
                        chemicals.add(chemical);
                    }
                });
        kept.left().stream().filter(row -> PARTS.stream().allMatch(part -> row.text(part).isEmpty()))
                .forEach(row -> chemicals.add(new Kept(row).but(Set.of())));
        return chemicals;
    }

    /** The field of a dose. */
    static String dose(String machine, String material) {
        return field("dose", machine, material);
    }

    private static String field(String part, String machine, String material) {
        return part + "_" + machine + "_" + material;
    }

    static void fill(Told row, String machine, Filling filling) {
        for (Told chemical : row.rows("chemicals")) {
            String material = chemical.text("material").orElse("");
            PARTS.forEach(part -> filling.put(field(part, machine, material), chemical.text(part)));
        }
    }
}
