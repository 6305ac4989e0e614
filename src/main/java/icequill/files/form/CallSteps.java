package icequill.files.form;

import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Json;
import icequill.files.yaml.TreeJson;
import icequill.life.call.CallEvent;
import icequill.life.call.CallEvent.Approval;
import icequill.life.call.CallEvent.Attended;
import icequill.life.call.CallEvent.Plan;
import icequill.life.call.TakenCall;
import icequill.money.Amounts;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.work.Call;
import icequill.work.PurchaseOrder;
import java.math.BigDecimal;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** The steps of calls by the keys and texts that the book keeps of them, or that somebody typed. */
public record CallSteps(Shop shop) {

    private static final String SCHEMA = "/icequill/life/call";
    private static final String LIMIT = "limit";
    private static final String NUMBER = "-?\\d{1,15}(\\.\\d{1,15})?";
    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx", Locale.ROOT);

    /** What happens to calls. */
    public enum Kind {
        TAKEN, CORRECTED, PLANNED, APPROVED, DONE, UNDONE, CLOSED, WITHDRAWN
    }

    /** Which of them an event is. */
    public static Kind kind(CallEvent event) {
        return switch (event) {
        case CallEvent.Taken taken -> Kind.TAKEN;
        case CallEvent.Corrected corrected -> Kind.CORRECTED;
        case CallEvent.Planned planned -> Kind.PLANNED;
        case CallEvent.Approved approved -> Kind.APPROVED;
        case CallEvent.Done done -> Kind.DONE;
        case CallEvent.Undone undone -> Kind.UNDONE;
        case CallEvent.Closed closed -> Kind.CLOSED;
        case CallEvent.Withdrawn withdrawn -> Kind.WITHDRAWN;
        };
    }

    /**
     * An event, or all that is wrong with what is told of it, each at its key.
     *
     * @param id of the call
     * @param site of it, by id
     * @param told texts by their keys
     */
    public Validated<CallEvent> event(String id, String site, Kind kind, Map<String, String> told) {
        Problems problems = new Problems();
        Map<String, Object> values = new LinkedHashMap<>(told);
        Optional.ofNullable(told.get(LIMIT)).filter(text -> text.matches(NUMBER))
                .ifPresent(text -> values.put(LIMIT, new BigDecimal(text)));
        Fields fields = Fields.checked(TreeJson.branch(Json.line(values), ""),
                SCHEMA + (kind == Kind.TAKEN || kind == Kind.CORRECTED ? "" : "-step") + ".schema.json", problems)
                .orElseThrow();
        Optional<CallEvent> event = switch (kind) {
        case TAKEN -> taken(fields, id, site).map(CallEvent.Taken::new);
        case CORRECTED -> taken(fields, id, site).map(CallEvent.Corrected::new);
        case PLANNED -> at(fields, "at")
                .map(at -> new CallEvent.Planned(new Plan(fields.text("person").orElse(""), at)));
        case APPROVED -> limit(fields).flatMap(limit -> fields.day("on")
                .map(on -> new CallEvent.Approved(new Approval(fields.text("by").orElse(""), limit, on))));
        case DONE -> at(fields, "arrived").flatMap(arrived -> fields.id("visit")
                .map(visit -> new CallEvent.Done(new Attended(visit, arrived))));
        case UNDONE -> fields.id("visit").map(CallEvent.Undone::new);
        case CLOSED -> Optional.of(new CallEvent.Closed());
        case WITHDRAWN -> Optional.of(new CallEvent.Withdrawn(fields.text("reason").orElse("")));
        };
        return problems.or(event::orElseThrow);
    }

    private Optional<TakenCall> taken(Fields fields, String id, String site) {
        Optional<ZonedDateTime> called = at(fields, "at");
        Optional<ZonedDateTime> promised = at(fields, "promised");
        promised.filter(by -> called.filter(by::isBefore).isPresent()).ifPresent(by -> fields.problems().add(
                Code.WRONG_ORDER, fields.place("promised"),
                "promised for " + by.toLocalDateTime() + ", before the call", "a time after the call"));
        PurchaseOrder order = new PurchaseOrder(fields.text("purchaseOrder"), limit(fields), fields.text("approver"),
                fields.place(LIMIT));
        return called.map(at -> new TakenCall(site,
                new Call(Optional.of(id), fields.text("by").orElse(""), at, fields.text("symptom").orElse(""),
                        promised),
                fields.id("machine"), fields.text("since"), order, fields.text("agreement")));
    }

    private Optional<MonetaryAmount> limit(Fields fields) {
        return Prices.charged(fields, LIMIT, shop.currency());
    }

    private Optional<ZonedDateTime> at(Fields fields, String key) {
        return new LocalMoments(shop.zone()).at(fields, key);
    }

    /** What the book is to keep of an event, by keys; of a call its site apart. */
    public static Map<String, String> told(CallEvent event) {
        return switch (event) {
        case CallEvent.Taken(TakenCall call) -> told(call);
        case CallEvent.Corrected(TakenCall call) -> told(call);
        case CallEvent.Planned(Plan(String person, ZonedDateTime at)) -> Map.of("person", person, "at", moment(at));
        case CallEvent.Approved(Approval approval) -> Map.of("by", approval.by(), LIMIT,
                Amounts.plain(approval.limit()), "on", approval.on().toString());
        case CallEvent.Done(Attended(String visit, ZonedDateTime arrived)) ->
            Map.of("visit", visit, "arrived", moment(arrived));
        case CallEvent.Undone(String visit) -> Map.of("visit", visit);
        case CallEvent.Closed() -> Map.of();
        case CallEvent.Withdrawn(String reason) -> Map.of("reason", reason);
        };
    }

    private static Map<String, String> told(TakenCall call) {
        Map<String, String> told = new LinkedHashMap<>();
        told.put("by", call.asked().askedBy());
        told.put("at", moment(call.asked().at()));
        told.put("symptom", call.asked().symptom());
        call.asked().promised().ifPresent(by -> told.put("promised", moment(by)));
        call.machine().ifPresent(machine -> told.put("machine", machine));
        call.since().ifPresent(since -> told.put("since", since));
        call.order().purchaseOrder().ifPresent(number -> told.put("purchaseOrder", number));
        call.order().limit().ifPresent(limit -> told.put(LIMIT, Amounts.plain(limit)));
        call.order().approver().ifPresent(who -> told.put("approver", who));
        call.agreement().ifPresent(number -> told.put("agreement", number));
        return told;
    }

    /** A moment as forms write it: to the minute, and with its offset where clocks repeat the hour. */
    public static String moment(ZonedDateTime moment) {
        boolean isTwice = moment.getZone().getRules().getValidOffsets(moment.toLocalDateTime()).size() > 1;
        return (isTwice ? MOMENT : LOCAL).format(moment);
    }
}
