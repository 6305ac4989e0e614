package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** Papers of the simulated year as the office told them. */
final class SimulatedPapers {

    /** What each came to, by number; what is given back is negative. */
    private final Map<String, BigDecimal> gross = new LinkedHashMap<>();
    /** What is left of each invoice. */
    private final Map<String, BigDecimal> left = new HashMap<>();
    private final Map<String, String> customers = new HashMap<>();
    private final Set<String> goodwill = new HashSet<>();

    /** Notes one, whose number is new; no credit note gives back more than its invoice has left. */
    void note(JsonNode paper) {
        String number = number(paper);
        BigDecimal sum = new BigDecimal(paper.path("gross").asString());
        assertThat(gross.put(number, sum)).as(number + " twice").isNull();
        customers.put(number, paper.path("where").asString());
        String invoice = paper.path("corrects").asString("");
        if (invoice.isEmpty()) {
            left.put(number, sum);
        } else {
            assertThat(left.merge(invoice, sum, BigDecimal::add)).as(number + " of " + invoice).isNotNegative();
        }
    }

    /** The same of one that is nobody's due. */
    void noteGoodwill(JsonNode paper) {
        note(paper);
        goodwill.add(number(paper));
    }

    static String number(JsonNode paper) {
        return paper.path("number").asString();
    }

    boolean isWhole(String number) {
        BigDecimal whole = gross.get(number);
        return whole != null && left.getOrDefault(number, BigDecimal.ZERO).compareTo(whole) == 0;
    }

    Map<String, BigDecimal> all() {
        return gross;
    }

    List<String> invoices() {
        return gross.keySet().stream().filter(number -> number.startsWith("INV")).toList();
    }

    /** What papers of a customer come to. */
    BigDecimal of(SimulatedSite site) {
        return gross.entrySet().stream().filter(paper -> isFor(site, paper.getKey())).map(Map.Entry::getValue)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    boolean isFor(SimulatedSite site, String number) {
        return customers.getOrDefault(number, "").contains(site.name());
    }

    /** Those of an agreement but goodwill. */
    BigDecimal due(List<String> numbers) {
        return numbers.stream().filter(number -> !goodwill.contains(number))
                .map(number -> gross.getOrDefault(number, BigDecimal.ZERO)).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
