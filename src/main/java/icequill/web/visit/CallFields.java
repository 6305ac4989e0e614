package icequill.web.visit;

import icequill.web.page.Typing;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Who asked for the visit, when and why, and what the customer ordered. */
record CallFields(Typing typing, LocalDate day) {

    private static final String CALL = "asked";
    private static final String ORDER = "order";

    void read(Map<String, Object> form) {
        Map<String, Object> call = new LinkedHashMap<>();
        typing.text("call").ifPresent(id -> call.put("call", id));
        typing.text("askedBy").ifPresent(who -> call.put("by", who));
        moment("asked").ifPresent(at -> call.put("at", at));
        typing.text("symptom").ifPresent(symptom -> call.put("symptom", symptom));
        moment("promised").ifPresent(at -> call.put("promised", at));
        typing.place(CALL, "askedBy");
        typing.place("asked.by", "askedBy");
        typing.place("asked.at", "askedAt");
        typing.place("asked.symptom", "symptom");
        typing.place("asked.promised", "promisedAt");
        put(form, CALL, call);
        Map<String, Object> order = new LinkedHashMap<>();
        typing.text("purchaseOrder").ifPresent(number -> order.put("purchaseOrder", number));
        typing.number("limit").ifPresent(limit -> order.put("limit", limit));
        typing.text("approver").ifPresent(who -> order.put("approver", who));
        List.of("purchaseOrder", "limit", "approver").forEach(key -> typing.place("order." + key, key));
        put(form, ORDER, order);
    }

    /** On the day of the visit, unless another is typed. */
    private Optional<String> moment(String field) {
        Optional<LocalDate> on = typing.day(field + "Day");
        typing.unnamed(field + "At", List.of(field + "Day"), "the time of day is missing");
        return typing.time(field + "At").map(time -> on.orElse(day) + "T" + time.text());
    }

    private static void put(Map<String, Object> form, String key, Map<String, Object> part) {
        if (!part.isEmpty()) {
            form.put(key, part);
        }
    }

    static void fill(Told form, LocalDate day, Filling filling) {
        Told call = form.part(CALL);
        filling.put("call", call.text("call"));
        filling.put("askedBy", call.text("by"));
        filling.put("symptom", call.text("symptom"));
        fill("asked", call.text("at"), day, filling);
        fill("promised", call.text("promised"), day, filling);
        Told order = form.part(ORDER);
        List.of("purchaseOrder", "limit", "approver").forEach(key -> filling.put(key, order.text(key)));
    }

    private static void fill(String field, Optional<String> moment, LocalDate day, Filling filling) {
        filling.put(field + "At", moment.map(Moments::time));
        filling.put(field + "Day", moment.map(Moments::day).filter(on -> !on.equals(day.toString())));
    }
}
