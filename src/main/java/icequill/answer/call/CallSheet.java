package icequill.answer.call;

import icequill.explain.ConstantKey;
import icequill.files.answer.Sheet;
import icequill.render.words.Formats;
import icequill.render.words.Sentences;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A call, for the screen in one language and as data. */
public record CallSheet(CallAnswer data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(sentences.word("called.title", data.id(), data.siteName(),
                sentences.word("call-stage." + ConstantKey.of(data.stage()))));
        if (data.isForgotten()) {
            lines.add(sentences.word("called.forgotten"));
        }
        add(lines, "visit.asked", data.caller() + ", " + moment(data.at()));
        add(lines, "visit.symptom", data.symptom());
        data.machineName().ifPresent(name -> add(lines, "called.machine", name));
        data.since().ifPresent(since -> add(lines, "called.since", since));
        data.purchaseOrder().ifPresent(number -> add(lines, "fact.purchase-order", number));
        data.limit().ifPresent(limit -> add(lines, "called.limit", sentences.formats().amount(limit)));
        data.approvals().forEach(more -> lines.add(sentences.word("called.allowed", more.by(),
                sentences.formats().amount(more.limit()), sentences.formats().day(more.on()))));
        data.approver().ifPresent(who -> add(lines, "visit.approved", who));
        new ResponseTelling(sentences).lines(data.response(), data.agreement()).forEach(lines::add);
        data.plan().ifPresent(plan -> add(lines, "called.planned", plan.person() + ", " + moment(plan.at())));
        data.visits().forEach(visit -> add(lines, "called.visit", visit.visit() + ", " + moment(visit.arrived())));
        data.steps().stream().filter(step -> !step.corrected().isEmpty()).forEach(step -> lines.add(
                sentences.word("called.corrected", sentences.formats().day(step.dated()), step.who(),
                        step.corrected().stream().map(said -> sentences.word("call-said." + ConstantKey.of(said)))
                                .collect(Collectors.joining(", ")))));
        data.withdrawn().ifPresent(reason -> add(lines, "called.withdrawn", reason));
        return lines;
    }

    private String moment(ZonedDateTime moment) {
        Formats formats = sentences.formats();
        return formats.day(moment.toLocalDate()) + ", " + formats.time(moment.toLocalTime());
    }

    private void add(List<String> lines, String key, String text) {
        lines.add(sentences.word(key) + ": " + text);
    }
}
