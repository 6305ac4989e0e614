package icequill.answer.today;

import icequill.answer.call.CallRow;
import icequill.answer.today.DayAnswer.Attendance;
import icequill.answer.today.DayAnswer.LapsingQuote;
import icequill.files.answer.Sheet;
import icequill.render.words.Formats;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;

/** What waits for somebody, for the screen in one language and as data. */
public record DaySheet(DayAnswer data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(sentences.word("today.on", sentences.formats().day(data.day())));
        if (data.isFree()) {
            lines.add(sentences.word("today.free"));
        }
        if (!data.calls().isEmpty()) {
            lines.add(sentences.word("today.calls"));
            data.calls().forEach(call -> lines.add("  " + call(call)));
        }
        visits("today.late", data.late(), lines);
        visits("today.planned", data.planned(), lines);
        visits("today.unbilled", data.unbilled(), lines);
        if (!data.lapsing().isEmpty()) {
            lines.add(sentences.word("today.lapsing"));
            data.lapsing().forEach(quote -> lines.add("  " + quote(quote)));
        }
        if (!data.claims().isEmpty()) {
            lines.add(sentences.word("today.claims"));
            data.claims().forEach(claim -> lines.add("  " + sentences.formats().day(claim.by()) + ": " + claim.claim()
                    + ", " + claim.siteName()));
        }
        if (data.mails().toLookAfter() > 0) {
            lines.add(sentences.word("today.mails", String.valueOf(data.mails().toLookAfter())));
        }
        if (data.mails().waiting() > 0) {
            lines.add(sentences.word("today.mails-waiting", String.valueOf(data.mails().waiting())));
        }
        return lines;
    }

    private void visits(String key, List<Attendance> visits, List<String> lines) {
        if (!visits.isEmpty()) {
            lines.add(sentences.word(key));
            visits.forEach(visit -> lines.add("  " + visit(visit)));
        }
    }

    private String call(CallRow call) {
        Formats formats = sentences.formats();
        return formats.day(call.at().toLocalDate()) + ", " + formats.time(call.at().toLocalTime()) + ": "
                + call.siteName() + ", " + call.symptom()
                + call.plan().map(plan -> "; " + plan.person() + ", " + formats.day(plan.at().toLocalDate()) + ", "
                        + formats.time(plan.at().toLocalTime())).orElse("")
                + " (" + call.call().orElse("") + ")";
    }

    private String visit(Attendance visit) {
        Formats formats = sentences.formats();
        return formats.day(visit.began().toLocalDate()) + ", " + formats.time(visit.began().toLocalTime()) + ": "
                + visit.siteName() + (visit.people().isEmpty() ? "" : ", " + String.join(", ", visit.people()))
                + " (" + visit.visit() + ")";
    }

    private String quote(LapsingQuote quote) {
        return sentences.formats().day(quote.validUntil()) + ": " + quote.number() + ", " + quote.where();
    }
}
