package icequill.web.offer;

import icequill.files.form.Form;
import icequill.problem.Problems;
import icequill.shop.EntryId;
import icequill.web.page.Asked;
import icequill.web.page.TypedFields;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** A customer whom the book does not have yet, with his site and its machines, as the fields of a page have them. */
final class NewSiteForm {

    private static final int FEWEST_ROWS = 4;

    private static final List<String> MACHINE_KEYS = List.of("model", "make", "form", "cooling", "connection");

    private final Asked asked;
    private final FilledForm form;

    NewSiteForm(Asked asked, Problems problems) {
        this.asked = asked;
        this.form = FilledForm.of(asked, problems);
        fill();
    }

    private void fill() {
        form.put(Form.ID_KEY, id(), "siteName");
        form.text("customer.name", "customerName").text("customer.language", "customerLanguage");
        form.text("customer.billTo[0].name", "customerName");
        address("customer.billTo[0].address.");
        form.put("name", name().orElse(""), asked.text("siteName").isPresent() ? "siteName" : "customerName");
        address("address.");
        form.text("kind", "kind").number("miles", "miles").text("taxPlace", "taxPlace").text("telephone", "telephone");
        form.text("contacts[0].name", "contact");
        form.number("conditions.hardness", "hardness");
        List<String> air = asked.texts("air");
        if (!air.isEmpty()) {
            form.put("conditions.air", air, "air");
        }
        int row = 0;
        for (Map.Entry<String, String> machine : machines().entrySet()) {
            machine("machines[" + row + "].", machine.getKey(), machine.getValue());
            row++;
        }
    }

    private void address(String path) {
        asked.text("street").ifPresent(street -> form.put(path + "street", List.of(street), "street"));
        form.put(path + "country", asked.text("country").orElse(""), "country");
        form.text(path + "city", "city").text(path + "region", "region").text(path + "postalCode", "postalCode");
    }

    private void machine(String path, String row, String id) {
        form.put(path + "id", id, row + "-where").text(path + "where", row + "-where");
        MACHINE_KEYS.forEach(key -> form.text(path + key, row + "-" + key));
        // Machines that make flakes have none such; where nothing is known of one, nothing is said.
        if (asked.text(row + "-make").filter("batch"::equals).isPresent()) {
            form.text(path + "evaporator.position", row + "-position")
                    .text(path + "evaporator.plating", row + "-plating");
        }
        form.number(path + "harvestRate", row + "-rate");
    }

    /** Keys and values, and the fields in which they were typed. */
    FilledForm form() {
        return form;
    }

    private Optional<String> name() {
        return asked.text("siteName").or(() -> asked.text("customerName"));
    }

    /** By which the book is to know the site. */
    String id() {
        return EntryId.of(name().orElse(""));
    }

    /** The machines of which something is told, each by the beginning of its fields, with what the book is to call it. */
    Map<String, String> machines() {
        Map<String, String> machines = new LinkedHashMap<>();
        IntStream.range(0, filled(asked.fields())).mapToObj(i -> "new" + i).filter(this::isTold).forEach(row -> {
            String base = EntryId.of(asked.text(row + "-where").orElse("machine"));
            machines.put(row, machines.containsValue(base) ? base + "-" + (machines.size() + 1) : base);
        });
        return machines;
    }

    /** How many rows for machines a page has: always one more than are filled. */
    static int rows(Map<String, List<String>> fields) {
        return Math.max(FEWEST_ROWS, filled(fields) + 1);
    }

    private static int filled(Map<String, List<String>> fields) {
        return new TypedFields(fields, List.of()).rows("new", "-where", "-model", "-rate");
    }

    private boolean isTold(String row) {
        return asked.text(row + "-where").isPresent() || asked.text(row + "-model").isPresent()
                || asked.text(row + "-rate").isPresent();
    }
}
