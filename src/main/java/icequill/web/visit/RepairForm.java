package icequill.web.visit;

import icequill.office.asking.Draft;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Asked;
import icequill.web.page.Typing;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** A repair that is to be quoted, as the fields of its page have it, made into the keys that the form of its planned visit has. */
record RepairForm(Typing typing, String site) {

    private static final Pattern BETWEEN = Pattern.compile("[\\s,;/]+");
    private static final List<String> NUMBERS = List.of("deposit", "retainage", "holdsDays");

    static RepairForm of(Asked asked, String site) {
        return new RepairForm(new Typing(asked), site);
    }

    /** The keys and values of the form, or what cannot be read of them. */
    Validated<Draft> draft() {
        Kept nothing = new Kept(Told.NOTHING);
        Map<String, Object> form = new LinkedHashMap<>(Map.of("site", site));
        Optional<LocalDate> day = typing.text("day").isPresent()
                ? typing.day("day")
                : typing.missing("day", "the day for which the work is planned is missing");
        form.put("people", new PeopleFields(typing, day.orElse(LocalDate.EPOCH), nothing.rows("people")).read());
        MachineFields.list(form, "lines", new LineFields(typing, nothing.rows("lines")).read());
        form.put("quote", quote());
        return typing.or(() -> new Draft(form));
    }

    private Map<String, Object> quote() {
        Map<String, Object> quote = new LinkedHashMap<>();
        List.of("machine", "work").forEach(key -> typing.text(key).ifPresentOrElse(text -> quote.put(key, text),
                () -> typing.missing(key, key.equals("work")
                        ? "nothing says what is to be done"
                        : "no machine is chosen")));
        typing.text("found").ifPresent(found -> quote.put("found", EarlierRepair.of(found).form()));
        NUMBERS.forEach(key -> typing.number(key).ifPresent(number -> quote.put(key, number)));
        typing.text("stages").ifPresent(stages -> quote.put("stages", BETWEEN.splitAsStream(stages)
                .flatMap(part -> typing.part(part, "stages").stream()).toList()));
        quote.keySet().forEach(key -> typing.place("quote." + key, key));
        typing.place("quote", "work");
        return quote;
    }

    /** The problems, each at the field in which it was typed. */
    List<Problem> atFields(List<Problem> found) {
        return typing.atFields(found);
    }
}
