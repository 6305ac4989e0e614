package icequill.web.visit;

import icequill.office.asking.Draft;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Asked;
import icequill.web.page.TypedMoment;
import icequill.web.page.TypedNumber;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A visit as the fields of its page have it, made into the keys that its form has. */
final class VisitForm {

    /** As many rows as the page has. */
    static final int PEOPLE = 3;
    static final int LINES = 6;
    static final int OWN_LINES = 2;

    private static final Duration LONGEST_NIGHT = Duration.ofHours(12);

    private final Asked asked;
    private final String site;
    private final Problems problems = new Problems();
    /** Which field a place of the form was typed in. */
    private final Map<String, String> fields = new LinkedHashMap<>();

    VisitForm(Asked asked, String site) {
        this.asked = asked;
        this.site = site;
    }

    /** The keys and values of the form, or what cannot be read of them. */
    Validated<Draft> draft() {
        Optional<LocalDate> day = day();
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("site", site);
        day.ifPresent(on -> {
            call(on).ifPresent(call -> form.put("asked", call));
            form.put("people", people(on));
        });
        order().ifPresent(order -> form.put("order", order));
        list(form, "machines", machines());
        list(form, "lines", lines());
        asked.text("outcome").filter(outcome -> !outcome.equals("charged"))
                .ifPresent(outcome -> form.put("outcome", outcome));
        return problems.or(() -> new Draft(form));
    }

    /** The problems, each at the field in which it was typed. */
    List<Problem> atFields(List<Problem> found) {
        return found.stream().map(problem -> new Problem(problem.code(),
                new Place("", 0, field(problem.place().path())), problem.message(), problem.allowed())).toList();
    }

    private String field(String path) {
        return fields.entrySet().stream().filter(entry -> path.startsWith(entry.getKey()))
                .max(Map.Entry.comparingByKey()).map(Map.Entry::getValue).orElse(path);
    }

    private Optional<LocalDate> day() {
        return asked.text("day").map(text -> problems.take(TypedMoment.day(text, "day")))
                .orElseGet(() -> missing("day", "the day of the visit is missing"));
    }

    private <T> Optional<T> missing(String field, String message) {
        problems.add(Code.MISSING, new Place("", 0, field), message, "");
        return Optional.empty();
    }

    private Optional<Map<String, Object>> call(LocalDate day) {
        Map<String, Object> call = new LinkedHashMap<>();
        text("askedBy").ifPresent(who -> call.put("by", who));
        text("askedAt").flatMap(text -> problems.take(TypedMoment.time(text, "askedAt")))
                .ifPresent(time -> call.put("at", day + "T" + time));
        text("symptom").ifPresent(symptom -> call.put("symptom", symptom));
        fields.put("asked.by", "askedBy");
        fields.put("asked.at", "askedAt");
        fields.put("asked.symptom", "symptom");
        fields.put("asked", "askedBy");
        return call.isEmpty() ? Optional.empty() : Optional.of(call);
    }

    private List<Map<String, Object>> people(LocalDate day) {
        List<Map<String, Object>> people = new ArrayList<>();
        for (int i = 0; i < PEOPLE; i++) {
            String row = "person" + i;
            Optional<String> name = text(row + "name");
            unnamed(row + "name", name, List.of(row + "from", row + "to"), "nobody is named for these hours");
            if (name.isPresent()) {
                Map<String, Object> person = new LinkedHashMap<>();
                person.put("name", name.get());
                text(row + "grade").ifPresent(grade -> person.put("grade", grade));
                hours(day, row, person);
                text(row + "on").ifPresent(on -> person.put("on", on));
                place("people[" + people.size() + "]", row + "name");
                place("people[" + people.size() + "].arrived", row + "from");
                place("people[" + people.size() + "].left", row + "to");
                people.add(person);
            }
        }
        if (people.isEmpty()) {
            missing("person0name", "nobody is named who came");
        }
        return people;
    }

    /** What was typed in a row whose first field says nothing would be lost. */
    private void unnamed(String field, Optional<String> first, List<String> others, String message) {
        if (first.isEmpty() && others.stream().anyMatch(other -> text(other).isPresent())) {
            missing(field, message);
        }
    }

    /** Whoever leaves at an earlier hour than he came left on the next day, unless that is longer than a night's work. */
    private void hours(LocalDate day, String row, Map<String, Object> person) {
        Optional<LocalTime> from = time(row + "from", "when he arrived is missing");
        Optional<LocalTime> to = time(row + "to", "when he left is missing");
        from.ifPresent(arrived -> person.put("arrived", day + "T" + arrived));
        to.ifPresent(left -> person.put("left",
                (from.filter(arrived -> !left.isAfter(arrived)).isPresent() ? day.plusDays(1) : day) + "T" + left));
        from.ifPresent(arrived -> to.filter(left -> !left.isAfter(arrived))
                .filter(left -> Duration.between(arrived, left).plusDays(1).compareTo(LONGEST_NIGHT) > 0)
                .ifPresent(left -> problems.add(Code.WRONG_ORDER, new Place("", 0, row + "to"),
                        left + " is not after " + arrived, "a later time; past midnight at most 12 hours after it")));
    }

    private Optional<LocalTime> time(String field, String missing) {
        return text(field).map(text -> problems.take(TypedMoment.time(text, field)))
                .orElseGet(() -> missing(field, missing));
    }

    private Optional<Map<String, Object>> order() {
        Map<String, Object> order = new LinkedHashMap<>();
        text("purchaseOrder").ifPresent(number -> order.put("purchaseOrder", number));
        number("limit").ifPresent(limit -> order.put("limit", limit));
        text("approver").ifPresent(who -> order.put("approver", who));
        List.of("purchaseOrder", "limit", "approver").forEach(key -> place("order." + key, key));
        return order.isEmpty() ? Optional.empty() : Optional.of(order);
    }

    private List<Map<String, Object>> machines() {
        List<Map<String, Object>> machines = new ArrayList<>();
        for (String id : asked.texts("machine")) {
            Map<String, Object> machine = new LinkedHashMap<>();
            machine.put("machine", id);
            for (String note : List.of("complaint", "cause", "correction")) {
                text(note + "-" + id).ifPresent(text -> machine.put(note, text));
                place("machines[" + machines.size() + "]." + note, note + "-" + id);
            }
            List<Map<String, Object>> tasks = asked.texts("task-" + id).stream()
                    .<Map<String, Object>>map(task -> Map.of("task", task)).toList();
            list(machine, "tasks", tasks);
            list(machine, "chemicals", chemicals(id));
            text("recommended-" + id).ifPresent(text -> machine.put("recommended", List.of(Map.of("text", text,
                    "accepted", asked.text("accepted-" + id).filter("yes"::equals).isPresent()))));
            place("machines[" + machines.size() + "]", "machine");
            machines.add(machine);
        }
        return machines;
    }

    private List<Map<String, Object>> chemicals(String machine) {
        List<Map<String, Object>> chemicals = new ArrayList<>();
        String prefix = "dose_" + machine + "_";
        asked.fields().keySet().stream().filter(field -> field.startsWith(prefix)).sorted()
                .forEach(field -> number(field).ifPresent(dose -> {
                    Map<String, Object> chemical = new LinkedHashMap<>();
                    chemical.put("material", field.substring(prefix.length()));
                    chemical.put("dose", dose);
                    chemicals.add(chemical);
                }));
        return chemicals;
    }

    private List<Map<String, Object>> lines() {
        List<Map<String, Object>> lines = new ArrayList<>();
        for (int i = 0; i < LINES; i++) {
            String row = "line" + i;
            Optional<String> part = text(row + "part");
            unnamed(row + "part", part, List.of(row + "amount"), "no part is named for this amount");
            if (part.isPresent()) {
                Map<String, Object> line = new LinkedHashMap<>();
                line.put("material", part.get());
                line.put("amount", number(row + "amount").orElse(BigDecimal.ONE));
                text(row + "machine").ifPresent(machine -> line.put("machine", machine));
                place("lines[" + lines.size() + "]", row + "part");
                place("lines[" + lines.size() + "].amount", row + "amount");
                lines.add(line);
            }
        }
        for (int i = 0; i < OWN_LINES; i++) {
            own("own" + i, lines);
        }
        return lines;
    }

    private void own(String row, List<Map<String, Object>> lines) {
        Optional<String> text = text(row + "text");
        unnamed(row + "text", text, List.of(row + "price"), "it is not said what this price is for");
        if (text.isPresent()) {
            Map<String, Object> line = new LinkedHashMap<>();
            line.put("text", text.get());
            text(row + "class").ifPresent(of -> line.put("class", of));
            number(row + "price").ifPresentOrElse(price -> line.put("price", price),
                    () -> missing(row + "price", "its price is missing"));
            line.put("amount", BigDecimal.ONE);
            place("lines[" + lines.size() + "]", row + "text");
            place("lines[" + lines.size() + "].price", row + "price");
            lines.add(line);
        }
    }

    private void place(String path, String field) {
        fields.put(path, field);
    }

    private Optional<String> text(String field) {
        return asked.text(field);
    }

    private Optional<BigDecimal> number(String field) {
        return text(field).flatMap(text -> problems.take(TypedNumber.of(text, field)));
    }

    private static void list(Map<String, Object> form, String key, List<?> rows) {
        if (!rows.isEmpty()) {
            form.put(key, rows);
        }
    }
}
