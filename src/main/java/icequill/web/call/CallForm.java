package icequill.web.call;

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

/** The fields of the pages of calls, made into the keys of a call and of its steps. */
final class CallForm {

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
        form.text("symptom", "it is not said what is wrong");
        List.of("machine", "since", "purchaseOrder", "approver").forEach(form::text);
        form.number("limit");
        form.moment("at", "atDay", "atTime");
        form.moment("promised", "promisedDay", "promisedTime");
        return form;
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
        form.number("limit");
        if (form.typing.text("limit").isEmpty()) {
            form.typing.missing("limit", "the new limit is missing");
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
