package icequill.web.call;

import icequill.answer.call.CallAnswer;
import icequill.money.Amounts;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Asked;
import icequill.web.page.Typing;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The fields of the pages of calls, made into the keys of a call and of its steps. */
final class CallForm {

    private static final String SYMPTOM = "symptom";
    private static final String LIMIT = "limit";
    private static final List<String> FREE = List.of("machine", "since", "purchaseOrder", "approver");
    /** What may be taken away. */
    private static final List<String> CHANGED = Stream.concat(FREE.stream(), Stream.of(LIMIT)).toList();

    private final Typing typing;
    private final LocalDate today;
    private final Map<String, String> told = new LinkedHashMap<>();

    private CallForm(Asked asked) {
        this.typing = new Typing(asked);
        this.today = asked.reader().today();
    }

    /** A call as it is taken. */
    static CallForm taken(Asked asked) {
        CallForm form = new CallForm(asked);
        form.text("by", "it is not said who calls");
        form.text(SYMPTOM, "it is not said what is wrong");
        FREE.forEach(form::text);
        form.number(LIMIT);
        form.moment("at", "atDay", "atTime");
        form.moment("promised", "promisedDay", "promisedTime");
        return form;
    }

    /** What a call says; a blank field takes it away. */
    static CallForm changed(Asked asked) {
        CallForm form = new CallForm(asked);
        form.text("by", "it is not said who calls");
        form.text(SYMPTOM, "it is not said what is wrong");
        FREE.forEach(form::text);
        form.number(LIMIT);
        CHANGED.stream().filter(asked.fields()::containsKey).forEach(field -> form.told.putIfAbsent(field, ""));
        return form;
    }

    /** What is typed of a call as it stands. */
    static Map<String, List<String>> fields(CallAnswer call) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        fields.put("by", List.of(call.caller()));
        fields.put(SYMPTOM, List.of(call.symptom()));
        call.machine().ifPresent(machine -> fields.put("machine", List.of(machine)));
        call.since().ifPresent(since -> fields.put("since", List.of(since)));
        call.purchaseOrder().ifPresent(number -> fields.put("purchaseOrder", List.of(number)));
        call.limit().ifPresent(limit -> fields.put(LIMIT, List.of(Amounts.plain(limit))));
        call.approver().ifPresent(who -> fields.put("approver", List.of(who)));
        return fields;
    }

    /** Who goes there, and when. */
    static CallForm planned(Asked asked) {
        CallForm form = new CallForm(asked);
        form.text("person", "it is not said who goes there");
        form.moment("at", "planDay", "planTime");
        if (form.typing.text("planTime").isEmpty()) {
            form.typing.missing("planTime", "the time of day is missing");
        }
        return form;
    }

    /** Who allows more, and how much. */
    static CallForm approved(Asked asked) {
        CallForm form = new CallForm(asked);
        form.text("by", "it is not said who allows it");
        form.number(LIMIT);
        if (form.typing.text(LIMIT).isEmpty()) {
            form.typing.missing(LIMIT, "the new limit is missing");
        }
        return form;
    }

    /** Why nobody goes there. */
    static CallForm withdrawn(Asked asked) {
        CallForm form = new CallForm(asked);
        form.text("reason", "no reason is given");
        return form;
    }

    /** Nothing is typed. */
    static CallForm closed(Asked asked) {
        return new CallForm(asked);
    }

    /** Texts by their keys, or what cannot be read of them. */
    Validated<Map<String, String>> told() {
        return typing.or(() -> told);
    }

    /** The problems, each at the field in which it was typed. */
    List<Problem> atFields(List<Problem> found) {
        return typing.atFields(found);
    }

    private void text(String key) {
        typing.place(key, key);
        typing.text(key).ifPresent(text -> told.put(key, text));
    }

    private void text(String key, String missing) {
        text(key);
        if (typing.text(key).isEmpty()) {
            typing.missing(key, missing);
        }
    }

    private void number(String key) {
        typing.place(key, key);
        typing.number(key).map(BigDecimal::toPlainString).ifPresent(number -> told.put(key, number));
    }

    /** Today, unless a day is typed. */
    private void moment(String key, String dayField, String timeField) {
        typing.place(key, timeField);
        Optional<LocalDate> day = typing.day(dayField);
        typing.unnamed(timeField, List.of(dayField), "the time of day is missing");
        typing.time(timeField).ifPresent(time -> told.put(key, day.orElse(today) + "T" + time.text()));
    }
}
