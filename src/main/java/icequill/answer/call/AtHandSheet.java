package icequill.answer.call;

import icequill.answer.call.AtHand.Promise;
import icequill.explain.ConstantKey;
import icequill.files.answer.Sheet;
import icequill.render.words.Formats;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;

/** What is at hand of a site, for the screen in one language and as data. */
public record AtHandSheet(AtHand data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        Formats formats = sentences.formats();
        List<String> lines = new ArrayList<>();
        data.hold().ifPresent(hold -> lines.add(sentences.word("called.hold", data.customerName(),
                formats.amount(hold.pastDue()), String.valueOf(hold.invoices()), formats.day(hold.since()))));
        if (data.agreements().isEmpty()) {
            lines.add(sentences.word("called.no-agreement"));
        }
        data.agreements().forEach(promise -> lines.add(promise(promise)));
        data.waiting().forEach(call -> lines.add(sentences.word("called.open", call.call().orElse(""),
                sentences.word("call-stage." + ConstantKey.of(call.stage())), call.symptom())));
        lines.add(sentences.word(data.lastVisits().isEmpty() ? "called.no-visits" : "called.last-visits"));
        data.lastVisits().forEach(visit -> lines.add("  " + formats.day(visit.began().toLocalDate()) + ": "
                + visit.id() + ", " + sentences.word("visit-state." + ConstantKey.of(visit.state()))
                + (visit.people().isEmpty() ? "" : ", " + String.join(", ", visit.people()))));
        data.repairs().forEach(repair -> lines.add(sentences.word(
                repair.accepted() ? "called.repair-accepted" : "called.repair-declined", repair.machine(),
                repair.recommended(), formats.day(repair.day()))));
        data.approver().ifPresent(who -> lines.add(sentences.word("called.ask", who)));
        return lines;
    }

    private String promise(Promise promise) {
        return response(promise) + promise.calls().map(calls -> " " + sentences.word("called.calls-left",
                String.valueOf(promise.callsLeft().orElse(0)), String.valueOf(calls))).orElse("");
    }

    private String response(Promise promise) {
        return promise.by().map(by -> sentences.word("called.agreement", promise.agreement(), promise.plan(),
                sentences.formats().day(by.toLocalDate()), sentences.formats().time(by.toLocalTime()),
                String.valueOf(promise.hours().orElse(0)), promise.band().orElse("")))
                .orElseGet(() -> sentences.word("called.agreement-only", promise.agreement(), promise.plan()));
    }
}
