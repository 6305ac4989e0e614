package icequill.office.call;

import icequill.answer.call.CallAnswer;
import icequill.answer.call.CallSheet;
import icequill.answer.call.CallStage;
import icequill.answer.call.ToldPlan;
import icequill.answer.call.ToldResponse;
import icequill.files.form.CallSteps;
import icequill.ledger.Reading;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.trail.Subject;
import icequill.life.call.CallRecord;
import icequill.life.call.CallState;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.shop.BookedCall;
import icequill.shop.ShopFolder;
import icequill.work.PurchaseOrder;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Tells a call of the book in the language of the reader. */
record CallTelling(ShopFolder folder, Reading open, Sentences sentences, ZonedDateTime now) {

    private static final Set<String> IS_WHOLE = Set.of(CallSteps.Kind.TAKEN.name(), CallSteps.Kind.CORRECTED.name());
    /** The keys under which steps have what a call says. */
    private static final Map<CallAnswer.Said, String> SAID = Map.of(CallAnswer.Said.CALLER, "by",
            CallAnswer.Said.SYMPTOM, "symptom", CallAnswer.Said.MACHINE, "machine", CallAnswer.Said.SINCE, "since",
            CallAnswer.Said.PURCHASE_ORDER, "purchaseOrder", CallAnswer.Said.LIMIT, "limit",
            CallAnswer.Said.APPROVER, "approver");

    CallSheet sheet(BookedCall call) {
        return new CallSheet(answer(call), sentences);
    }

    private CallAnswer answer(BookedCall call) {
        CallRecord known = call.state().known();
        PurchaseOrder order = known.call().order();
        return new CallAnswer(call.id(), CallStage.of(call.state()), call.site(), siteName(open, call.site()),
                known.call().asked().askedBy(), known.call().asked().at(), known.call().asked().symptom(),
                known.call().machine(), known.call().machine().map(id -> machine(call.site(), id)),
                known.call().since(), order.purchaseOrder(), known.limit(), order.approver(),
                known.call().agreement(), ToldResponse.of(known.response(), now), ToldPlan.of(call.state()),
                known.approvals(), known.visits(), withdrawn(call.state()),
                call.steps().stream().map(step -> step(step, corrected(call.steps(), step))).toList(),
                next(call.state()), call.isForgotten());
    }

    private String machine(String site, String id) {
        Optional<Site> where = folder.site(site, Place.NOWHERE);
        return where.flatMap(found -> found.machine(id)).map(machine -> new MachineName(machine, sentences).text())
                .orElse(id);
    }

    static String siteName(Reading open, String site) {
        return open.entries().siteNow(site).found().map(SiteEntry::name).filter(name -> !name.isBlank()).orElse(site);
    }

    private static Optional<String> withdrawn(CallState.Known state) {
        return state instanceof CallState.Withdrawn(CallRecord known, String reason)
                ? Optional.of(reason)
                : Optional.empty();
    }

    private static List<CallAnswer.Said> corrected(List<LifeStep> steps, LifeStep step) {
        Map<CallAnswer.Said, String> now = said(step);
        return step.event().equals(CallSteps.Kind.CORRECTED.name())
                ? steps.subList(0, step.position() - 1).reversed().stream().map(CallTelling::said)
                        .filter(said -> !said.isEmpty()).findFirst().stream()
                        .flatMap(before -> SAID.keySet().stream()
                                .filter(what -> !Objects.equals(before.get(what), now.get(what))))
                        .sorted().toList()
                : List.of();
    }

    /** What a step says of all that a call does; nothing where it is another step. */
    private static Map<CallAnswer.Said, String> said(LifeStep step) {
        return IS_WHOLE.contains(step.event())
                ? SAID.entrySet().stream().flatMap(said -> step.text(said.getValue()).stream()
                        .map(text -> Map.entry(said.getKey(), text)))
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue))
                : Map.of();
    }

    private CallAnswer.Step step(LifeStep step, List<CallAnswer.Said> corrected) {
        return open.trail().newest(Subject.STEP, Subject.part(Subject.part(step.kind(), step.id()),
                String.valueOf(step.position())))
                .map(row -> new CallAnswer.Step(word(step), step.dated(), row.at(), row.who(), corrected))
                .orElseThrow();
    }

    private static String word(LifeStep step) {
        return step.event().toLowerCase(Locale.ROOT);
    }

    /** What there is a step for; more can be allowed only where there is a limit. */
    private static List<CallAnswer.Next> next(CallState.Known state) {
        List<CallAnswer.Next> next = new ArrayList<>();
        CallStage stage = CallStage.of(state);
        boolean isOver = stage == CallStage.CLOSED || stage == CallStage.WITHDRAWN;
        if (!isOver) {
            next.add(CallAnswer.Next.VISIT);
            next.add(CallAnswer.Next.PLAN);
            next.add(CallAnswer.Next.CHANGE);
        }
        if (stage != CallStage.WITHDRAWN && state.known().limit().isPresent()) {
            next.add(CallAnswer.Next.APPROVE);
        }
        if (!isOver) {
            next.add(state.known().visits().isEmpty() ? CallAnswer.Next.WITHDRAW : CallAnswer.Next.CLOSE);
        }
        return next;
    }
}
