package icequill.answer.days;

import icequill.answer.days.DayProposals.Going;
import icequill.answer.days.DayProposals.Proposal;
import icequill.files.answer.Sheet;
import icequill.problem.Problem;
import icequill.render.words.Formats;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Days proposed for visits, for the screen in one language and as data. */
public record DaysSheet(DayProposals data, Sentences sentences) implements Sheet {

    /** The same with its visits stored under ids, in their order. */
    public DaysSheet stored(List<String> ids) {
        return new DaysSheet(data.stored(ids), sentences);
    }

    public List<String> lines() {
        Formats formats = sentences.formats();
        List<String> lines = new ArrayList<>();
        lines.add(sentences.word("days.head", formats.day(data.until()), String.join(", ", data.people())));
        if (data.visits().isEmpty()) {
            lines.add(sentences.word("days.none"));
        }
        data.visits().stream().map(Proposal::day).distinct().forEach(day -> {
            lines.add(Sentences.capitalized(formats.dayOfWeek(day)));
            data.visits().stream().filter(visit -> visit.day().equals(day))
                    .forEach(visit -> lines.add("  " + proposal(visit)));
        });
        if (!data.left().isEmpty()) {
            lines.add(sentences.word("days.left"));
            data.left().forEach(visit -> lines.add("  " + formats.day(visit.due()) + ": " + visit.siteName() + ", "
                    + visit.what() + " (" + visit.agreement() + "): " + visit.why()));
        }
        if (!data.visits().isEmpty()) {
            lines.add(weighed());
        }
        data.problems().stream().map(Problem::text).forEach(lines::add);
        return lines;
    }

    /** How much is driven, and how sure it is that nothing is better. */
    public String weighed() {
        return sentences.word(data.isBest() ? "days.best" : "days.good", sentences.duration(data.driving()));
    }

    /** Who goes; for how long, where somebody leaves before the others. */
    private String going(Proposal visit, Going one) {
        return one.minutes() == visit.minutes()
                ? one.person()
                : one.person() + " (" + sentences.duration(one.minutes()) + ")";
    }

    private String proposal(Proposal visit) {
        return visit.begins() + "–" + visit.ends() + " "
                + visit.going().stream().map(one -> going(visit, one)).collect(Collectors.joining(", ")) + ": "
                + visit.siteName() + ", "
                + visit.what() + " (" + visit.agreement() + "); " + String.join("; ", visit.reasons())
                + visit.visit().map(id -> "; " + sentences.word("due-visits.planned-as", id)).orElse("");
    }
}
