package icequill.web.visit;

import icequill.office.asking.CalledVisit;
import icequill.office.asking.Draft;
import icequill.office.asking.KnownVisit;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Asked;
import icequill.web.page.Typing;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A visit as the fields of its page have it, made into the keys that its form has, and back.
 *
 * @param known what the book says of it so far; empty for one that is new
 */
record VisitForm(Typing typing, String site, Optional<KnownVisit> known) {

    /** The names of its fields that hold days. */
    static final Pattern DAYS = Pattern.compile("day|nextDue|[a-z]+Day|person\\d+day");

    private static final Set<String> SHOWN = Set.of("format", "site", "asked", "order", "serviceCall", "people",
            "machines", "lines", "fees", "surcharges", "route", "diagnosis", "safeFrom", "nextDue", "outcome");
    /** Names of what its price has to do with. */
    private static final List<String> NAMED = List.of("route", "diagnosis");
    /** What a form says only of a visit that is still to come. */
    private static final Set<String> OF_PLANS = Set.of("doneBy", "quote");
    private static final String CHARGED = "charged";

    static VisitForm of(Asked asked, String site, Optional<KnownVisit> known) {
        return new VisitForm(new Typing(asked), site, known);
    }

    /** The keys and values of the form, or what cannot be read of them. */
    Validated<Draft> draft() {
        Kept kept = new Kept(known.map(visit -> new Told(visit.told().values())).orElse(Told.NOTHING));
        Map<String, Object> form = kept.but(SHOWN);
        if (known.filter(KnownVisit::isPlanned).isPresent()) {
            form.keySet().removeAll(OF_PLANS);
        }
        form.put("site", site);
        Optional<LocalDate> day = typing.text("day").isPresent()
                ? typing.day("day")
                : typing.missing("day", "the day of the visit is missing");
        LocalDate on = day.orElse(LocalDate.EPOCH);
        new CallFields(typing, on).read(form);
        form.put("people", new PeopleFields(typing, on, kept.rows("people")).read());
        MachineFields.list(form, "machines", new MachineFields(typing, kept.rows("machines")).read());
        MachineFields.list(form, "lines", new LineFields(typing, kept.rows("lines")).read());
        List.of("fees", "surcharges").forEach(key -> MachineFields.list(form, key, typing.texts(key)));
        typing.day("nextDue").ifPresent(due -> form.put("nextDue", due.toString()));
        typing.unnamed("safeAt", List.of("safeDay"), "the time of day is missing");
        Optional<LocalDate> safeDay = typing.day("safeDay");
        typing.time("safeAt").ifPresent(time -> form.put("safeFrom", safeDay.orElse(on) + "T" + time.text()));
        List.of("nextDue", "fees", "surcharges").forEach(key -> typing.place(key, key));
        typing.place("safeFrom", "safeAt");
        NAMED.forEach(key -> {
            typing.text(key).ifPresent(name -> form.put(key, name));
            typing.place(key, key);
        });
        typing.text("serviceCall").ifPresent(outcome -> form.put("serviceCall", outcome));
        typing.text("outcome").filter(outcome -> !outcome.equals(CHARGED))
                .ifPresent(outcome -> form.put("outcome", outcome));
        return typing.or(() -> new Draft(form));
    }

    /** The problems, each at the field in which it was typed. */
    List<Problem> atFields(List<Problem> found) {
        return typing.atFields(found);
    }

    /** What the fields of a page say of a visit that the book knows. */
    static Map<String, List<String>> fields(KnownVisit visit) {
        Told form = new Told(visit.told().values());
        Filling filling = new Filling();
        LocalDate day = LocalDate.parse(Moments.day(form.rows("people").getFirst().text("arrived").orElseThrow()));
        filling.put("day", day.toString());
        CallFields.fill(form, day, filling);
        PeopleFields.fill(form, day, filling);
        MachineFields.fill(form, filling);
        Told quoted = form.part("quote");
        if (!quoted.part("found").values().isEmpty()) {
            filling.tick("settled-" + quoted.text("machine").orElse(""), EarlierRepair.of(quoted.part("found")).text());
        }
        LineFields.fill(form, filling);
        List.of("fees", "surcharges").forEach(key -> form.texts(key).forEach(id -> filling.tick(key, id)));
        filling.put("nextDue", form.text("nextDue"));
        filling.put("safeAt", form.text("safeFrom").map(Moments::time));
        filling.put("safeDay", form.text("safeFrom").map(Moments::day).filter(on -> !on.equals(day.toString())));
        NAMED.forEach(key -> filling.put(key, form.text(key)));
        filling.put("serviceCall", form.text("serviceCall"));
        return filling.fields();
    }

    /** What the fields say of a visit before anything is typed, by the call that it answers. */
    static Map<String, List<String>> fields(CalledVisit call, LocalDate today) {
        Filling filling = new Filling();
        LocalDate day = call.day().filter(on -> on.isBefore(today)).orElse(today);
        filling.put("day", day.toString());
        filling.put("person0name", call.person());
        Told told = new Told(call.told().values());
        CallFields.fill(told, day, filling);
        call.machine().ifPresent(machine -> {
            filling.tick("machine", machine);
            filling.put("complaint-" + machine, told.part("asked").text("symptom"));
        });
        return filling.fields();
    }

    /** The keys of what the book says of it that no field shows, and that stays. */
    List<String> alsoKept() {
        return known.map(visit -> new Kept(new Told(visit.told().values())).but(SHOWN).keySet().stream()
                .filter(key -> !OF_PLANS.contains(key)).sorted().toList()).orElse(List.of());
    }
}
