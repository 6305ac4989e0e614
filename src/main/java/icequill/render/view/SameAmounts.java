package icequill.render.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Amounts that are alike are counted: "4 × 171.25". */
final class SameAmounts {

    private SameAmounts() {
    }

    static String counted(List<String> amounts) {
        Map<String, Integer> counted = new LinkedHashMap<>();
        amounts.forEach(amount -> counted.merge(amount, 1, Integer::sum));
        return counted.entrySet().stream().map(entry -> entry.getValue() + "\u00a0×\u00a0" + entry.getKey())
                .collect(Collectors.joining(" + "));
    }
}
