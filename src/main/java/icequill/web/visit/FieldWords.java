package icequill.web.visit;

import icequill.answer.entry.VisitChoices;
import icequill.render.words.Sentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What the fields of a visit's page, and what stands in them, are called in words. */
final class FieldWords {

    private static final Pattern ROW = Pattern.compile("(person|line|own|modifier)(\\d+)([a-z]+)");
    private static final Pattern MACHINE_ROW = Pattern.compile("(reading|recommended|accepted)(\\d+)([a-z]*)-(.+)");
    private static final Pattern OF_MACHINE = Pattern.compile("([a-z]+)_([^_]+)_([^_]+)");
    private static final Pattern NOTE = Pattern.compile("([a-z]+)-(.+)");
    /** Fields whose words stand elsewhere already. */
    private static final Map<String, String> WORDS = Map.ofEntries(Map.entry("askedBy", "visit.asked"),
            Map.entry("symptom", "visit.symptom"), Map.entry("promisedAt", "visit.promised"),
            Map.entry("promisedDay", "visit.promised"), Map.entry("purchaseOrder", "fact.purchase-order"),
            Map.entry("approver", "visit.approved"), Map.entry("complaint", "machine.complaint"),
            Map.entry("cause", "machine.cause"), Map.entry("correction", "machine.correction"),
            Map.entry("side", "machine.side"),
            Map.entry("task", "machine.tasks"), Map.entry("nextDue", "record.next-due"));

    private final Sentences sentences;
    private final Map<String, String> names = new LinkedHashMap<>();

    FieldWords(Sentences sentences, VisitChoices choices) {
        this.sentences = sentences;
        choices.machines().forEach(machine -> {
            names.put(machine.id(), machine.name());
            machine.tasks().forEach(task -> names.put(task.id(), task.name()));
        });
        choices.parts().forEach(part -> names.put(part.id(), part.name()));
        choices.circumstances().forEach(part -> names.put(part.id(), part.name()));
        choices.grades().forEach(grade -> names.put(grade.id(), grade.name()));
        choices.fees().forEach(fee -> names.put(fee.id(), fee.name()));
        choices.surcharges().forEach(fee -> names.put(fee.id(), fee.name()));
    }

    /** What a field is called. */
    String name(String field) {
        Matcher row = ROW.matcher(field);
        Matcher machineRow = MACHINE_ROW.matcher(field);
        Matcher ofMachine = OF_MACHINE.matcher(field);
        Matcher note = NOTE.matcher(field);
        if (row.matches()) {
            return sentences.word("page.entry.row." + row.group(1), number(row.group(2))) + part(row.group(3));
        }
        if (machineRow.matches()) {
            return named(machineRow.group(4)) + ", "
                    + sentences.word("page.entry.row." + machineRow.group(1), number(machineRow.group(2)))
                    + part(machineRow.group(3));
        }
        if (ofMachine.matches()) {
            return named(ofMachine.group(2)) + ", " + named(ofMachine.group(3)) + ": " + word(ofMachine.group(1));
        }
        return note.matches() ? named(note.group(2)) + ": " + word(note.group(1)) : word(field);
    }

    private static String number(String row) {
        return String.valueOf(Integer.parseInt(row) + 1);
    }

    /** The field that says what a row is about needs no words of its own. */
    private String part(String part) {
        return List.of("name", "part", "text", "what", "").contains(part) ? "" : ": " + word(part);
    }

    private String word(String field) {
        return sentences.word(Optional.ofNullable(WORDS.get(field)).orElse("page.entry.field." + field));
    }

    private String named(String id) {
        return names.getOrDefault(id, id);
    }

    /** What stands in a field. */
    String text(String field, List<String> values) {
        return values.stream().map(value -> text(field, value)).collect(Collectors.joining(", "));
    }

    private String text(String field, String value) {
        if (field.endsWith("outcome") || field.equals("serviceCall") || field.startsWith("bears_")) {
            return sentences.word("outcome." + value);
        }
        if (field.startsWith("side-")) {
            return sentences.word("call-side." + value);
        }
        if (field.startsWith("accepted")) {
            return sentences.word(value.equals("yes") ? "page.entry.accepted" : "page.entry.declined");
        }
        return field.matches("person\\d+on|own\\d+class") ? sentences.word("class." + value) : named(value);
    }
}
