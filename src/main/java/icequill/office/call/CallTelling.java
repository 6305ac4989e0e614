package icequill.office.call;

import icequill.answer.call.CallAnswer;
import icequill.answer.call.CallSheet;
import icequill.answer.call.CallStage;
import icequill.answer.call.ToldPlan;
import icequill.answer.call.ToldResponse;
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
import java.util.Optional;

/** Tells a call of the book in the language of the reader. */
record CallTelling(ShopFolder folder, Reading open, Sentences sentences, ZonedDateTime now) {

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
                call.steps().stream().map(this::step).toList(), next(call.state()), call.isForgotten());
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

    private CallAnswer.Step step(LifeStep step) {
        return open.trail().newest(Subject.STEP, Subject.part(Subject.part(step.kind(), step.id()),
                String.valueOf(step.position())))
                .map(row -> new CallAnswer.Step(word(step), step.dated(), row.at(), row.who())).orElseThrow();
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
