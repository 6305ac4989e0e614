package icequill.web.visit;

import icequill.problem.Code;
import icequill.web.page.TypedTime;
import icequill.web.page.Typing;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Who came and when, a row for each stay. A row of somebody that begins where his row before it ended divides his time; one that
 * begins later is another stay.
 */
record PeopleFields(Typing typing, LocalDate day, Kept.Rows kept) {

    private static final Set<String> SHOWN = Set.of("name", "grade", "arrived", "left", "on", "outcome", "spent",
            "mustLeave");
    private static final Duration LONGEST_NIGHT = Duration.ofHours(12);

    /** A stay that is being read, with its spells by when they end. */
    private record Stay(Map<String, Object> values, List<Map<String, Object>> spells) {

        Map<String, Object> form() {
            if (spells.size() > 1) {
                List.of("on", "outcome").forEach(values::remove);
                values.put("spent", spells);
            }
            return values;
        }

        boolean goesOn(Optional<Object> from, String name, Object grade) {
            return from.isPresent() && from.get().equals(values.get("left")) && name.equals(values.get("name"))
                    && grade.equals(values.getOrDefault("grade", ""));
        }
    }

    List<Map<String, Object>> read() {
        List<Stay> stays = new ArrayList<>();
        for (int i = 0; i < typing.rows("person", "name", "from", "to"); i++) {
            String row = "person" + i;
            typing.unnamed(row + "name", List.of(row + "from", row + "to"), "nobody is named for these hours");
            typing.text(row + "name").ifPresent(name -> read(row, name, stays));
        }
        if (stays.isEmpty()) {
            typing.missing("person0name", "nobody is named who came");
        }
        return stays.stream().map(Stay::form).toList();
    }

    private void read(String row, String name, List<Stay> stays) {
        Map<String, Object> spell = hours(row);
        typing.text(row + "on").ifPresent(on -> spell.put("on", on));
        typing.text(row + "outcome").ifPresent(outcome -> spell.put("outcome", outcome));
        Object grade = typing.text(row + "grade").orElse("");
        Optional<Object> from = Optional.ofNullable(spell.remove("arrived"));
        Optional<Stay> before = stays.stream().filter(stay -> stay.goesOn(from, name, grade)).findFirst();
        Map<String, Object> values = before.map(Stay::values)
                .orElseGet(() -> new LinkedHashMap<>(kept.next("name", name).but(SHOWN)));
        if (before.isEmpty()) {
            String path = "people[" + stays.size() + "]";
            typing.place(path, row + "name");
            typing.place(path + ".arrived", row + "from");
            typing.place(path + ".left", row + "to");
            values.put("name", name);
            typing.text(row + "grade").ifPresent(known -> values.put("grade", known));
            from.ifPresent(arrived -> values.put("arrived", arrived));
            stays.add(new Stay(values, new ArrayList<>()));
        }
        Stay stay = before.orElseGet(stays::getLast);
        values.putAll(spell);
        Map<String, Object> spent = new LinkedHashMap<>();
        Optional.ofNullable(spell.remove("left")).ifPresent(until -> spent.put("until", until));
        spent.putAll(spell);
        stay.spells().add(spent);
    }

    /** Whoever leaves at an earlier hour than he came left on the next day, unless that is longer than a night's work. */
    private Map<String, Object> hours(String row) {
        Map<String, Object> hours = new LinkedHashMap<>();
        LocalDate on = typing.text(row + "day").isPresent() ? typing.day(row + "day").orElse(day) : day;
        Optional<TypedTime> from = typing.time(row + "from", "when he arrived is missing");
        Optional<TypedTime> to = typing.time(row + "to", "when he left is missing");
        from.ifPresent(arrived -> hours.put("arrived", on + "T" + arrived.text()));
        to.ifPresent(left -> hours.put("left", (from.filter(arrived -> isBackward(arrived, left)).isPresent()
                ? on.plusDays(1)
                : on) + "T" + left.text()));
        from.ifPresent(arrived -> to.filter(left -> isBackward(arrived, left))
                .filter(left -> Duration.between(arrived.time(), left.time()).plusDays(1)
                        .compareTo(LONGEST_NIGHT) > 0)
                .ifPresent(left -> typing.wrong(Code.WRONG_ORDER, row + "to",
                        left.text() + " is not after " + arrived.text(),
                        "a later time; past midnight at most 12 hours after it")));
        return hours;
    }

    /** Where clocks repeat an hour, the same time comes twice. */
    private static boolean isBackward(TypedTime arrived, TypedTime left) {
        boolean isRepeated = !arrived.offset().equals(left.offset()) && !arrived.offset().isEmpty()
                && !left.offset().isEmpty();
        return isRepeated
                ? left.time().isBefore(arrived.time().minusHours(1))
                : !left.time().isAfter(arrived.time());
    }

    static void fill(Told form, LocalDate day, Filling filling) {
        int row = 0;
        for (Told person : form.rows("people")) {
            List<Told> spells = person.rows("spent").isEmpty() ? List.of(person) : person.rows("spent");
            String from = person.text("arrived").orElse("");
            for (Told spell : spells) {
                String until = spell.text("until").or(() -> person.text("left")).orElse("");
                String name = "person" + row++;
                filling.put(name + "name", person.text("name"));
                filling.put(name + "grade", person.text("grade"));
                filling.put(name + "day", Optional.of(Moments.day(from)).filter(on -> !on.equals(day.toString())));
                filling.put(name + "from", Moments.time(from));
                filling.put(name + "to", Moments.time(until));
                filling.put(name + "on", spell.text("on").or(() -> person.text("on")));
                filling.put(name + "outcome", spell.text("outcome").or(() -> person.text("outcome")));
                from = until;
            }
        }
    }
}
