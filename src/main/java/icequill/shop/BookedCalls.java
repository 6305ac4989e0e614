package icequill.shop;

import icequill.files.form.CallSteps;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.store.DamagedRow;
import icequill.life.call.CallEvent;
import icequill.life.call.CallLife;
import icequill.life.call.CallState;
import icequill.party.Shop;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The calls of a book, each where its steps led it. */
public record BookedCalls(Shop shop, Reading open) {

    private static final String KIND = "CALL";
    /** The keys under which names and words of people stand. */
    private static final Set<String> PERSONAL = Set.of("by", "symptom", "since", "approver", "reason");
    /** What stands in the place of what was forgotten. */
    private static final String FORGOTTEN = "\u2014";

    /** What calls of a book are called. */
    public static List<String> ids(Reading open) {
        return List.copyOf(open.entries().lastSteps(KIND).keySet());
    }

    /** The call of an id; what there is where there is none. */
    public Validated<BookedCall> find(String id) {
        List<LifeStep> steps = open.entries().steps(KIND, id);
        return steps.isEmpty()
                ? Validated.invalid(UnknownName.name("call", id, ids(open), "see: icequill call list"))
                : call(steps);
    }

    /** Whether there is one of an id. */
    public boolean has(String id) {
        return !open.entries().steps(KIND, id).isEmpty();
    }

    /** All of them, by id. */
    public Validated<List<BookedCall>> all() {
        return calls(open.entries().steps(KIND));
    }

    /** Those of a site, by id. */
    public Validated<List<BookedCall>> at(String site) {
        return calls(open.entries().stepsAt(site).stream().filter(step -> step.kind().equals(KIND)).toList());
    }

    private Validated<List<BookedCall>> calls(List<LifeStep> steps) {
        Problems problems = new Problems();
        Map<String, List<LifeStep>> byId = steps.stream()
                .collect(Collectors.groupingBy(LifeStep::id, LinkedHashMap::new, Collectors.toList()));
        List<BookedCall> calls = byId.values().stream().flatMap(own -> problems.take(call(own)).stream()).toList();
        return problems.or(() -> calls);
    }

    private Validated<BookedCall> call(List<LifeStep> steps) {
        LifeStep first = steps.getFirst();
        String site = first.site().orElse("");
        Validated<CallState> state = Validated.valid(new CallState.Unknown());
        for (LifeStep step : steps) {
            state = state.then(before -> event(step, site).then(event -> CallLife.step(before, event)));
        }
        return state.map(now -> new BookedCall(first.id(), site, (CallState.Known) now, steps));
    }

    private Validated<CallEvent> event(LifeStep step, String site) {
        CallSteps.Kind kind = DamagedRow.made("event", () -> CallSteps.Kind.valueOf(step.event()));
        Map<String, String> told = new LinkedHashMap<>(step.said());
        told.putAll(step.personal());
        if (step.personal().isEmpty()) {
            switch (kind) {
            case TAKEN, CORRECTED -> told.putAll(Map.of("by", FORGOTTEN, "symptom", FORGOTTEN));
            case APPROVED -> told.put("by", FORGOTTEN);
            case WITHDRAWN -> told.put("reason", FORGOTTEN);
            case PLANNED, DONE, UNDONE, CLOSED -> {
            }
            }
        }
        return new CallSteps(shop).event(step.id(), site, kind, told);
    }

    /**
     * Adds a step, or says why there is none such.
     *
     * @param site of the call, by id
     * @param dated on which day it happened
     */
    public Validated<BookedCall> add(Transaction writing, String id, String site, CallEvent event, LocalDate dated) {
        List<LifeStep> before = open.entries().steps(KIND, id);
        Validated<CallState> state = before.isEmpty()
                ? Validated.valid(new CallState.Unknown())
                : call(before).map(BookedCall::state);
        return state.then(known -> CallLife.step(known, event)).map(next -> {
            Map<String, String> told = CallSteps.told(event);
            LifeStep step = new LifeStep(KIND, id, before.size() + 1, CallSteps.kind(event).name(), dated,
                    Optional.of(before.isEmpty() ? site : before.getFirst().site().orElse(site)),
                    part(told, false), part(told, true));
            writing.lifeSteps().add(step);
            List<LifeStep> steps = new ArrayList<>(before);
            steps.add(step);
            return new BookedCall(id, site, (CallState.Known) next, steps);
        });
    }

    private static Map<String, String> part(Map<String, String> told, boolean isPersonal) {
        return told.entrySet().stream().filter(entry -> PERSONAL.contains(entry.getKey()) == isPersonal)
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }
}
