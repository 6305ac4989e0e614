package icequill.answer.days;

import icequill.answer.days.DueVisits.Cleaning;
import icequill.answer.days.DueVisits.Load;
import icequill.answer.days.DueVisits.Visit;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.files.answer.Sheet;
import icequill.problem.Problem;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Visits that are due, for the screen in one language and as data. */
public record DueSheet(DueVisits data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(sentences.word("due-visits.until", sentences.formats().day(data.until())));
        if (data.weeks().isEmpty()) {
            lines.add(sentences.word("due-visits.none"));
        }
        data.weeks().forEach(week -> {
            lines.add(sentences.word("due-visits.week", sentences.formats().day(week.monday())) + ". "
                    + week.loads().stream().map(this::load).collect(Collectors.joining("; ")));
            week.visits().forEach(visit -> lines.add("  " + visit(visit)));
        });
        if (!data.sites().isEmpty()) {
            lines.add(sentences.word("due-visits.sites"));
            data.sites().forEach(site -> lines.add("  " + cleaning(site)));
        }
        if (!data.missed().isEmpty()) {
            lines.add(sentences.word("due-visits.missed"));
            data.missed().forEach(visit -> lines.add("  " + visit(visit)));
        }
        data.problems().stream().map(Problem::text).forEach(lines::add);
        return lines;
    }

    /** What somebody has to do in a week. */
    public String load(Load load) {
        return sentences.say(new Phrase("due-visits.load",
                List.of(new Fact.Text(load.person().orElseGet(() -> sentences.word("due-visits.nobody"))),
                        Fact.number(load.visits(), ""), new Fact.Text(sentences.duration(load.minutes())))));
    }

    /** Where a visit stands, and what else is to be known of it. */
    public String state(Visit visit) {
        return switch (visit.state()) {
        case PLANNED -> sentences.word("due-visits.planned",
                visit.planned().map(sentences.formats()::day).orElse(""), visit.visit().orElse(""));
        case LATE -> sentences.word("due-visits.late");
        case DONE, DUE, MISSED -> visit.moved().orElse("");
        };
    }

    private String visit(Visit visit) {
        String state = state(visit);
        return sentences.formats().day(visit.due()) + ": " + visit.siteName() + ", " + visit.what() + " ("
                + visit.agreement() + ")" + visit.minutes().map(found -> ", " + sentences.duration(found)).orElse("")
                + visit.person().map(person -> ", " + person).orElse("") + (state.isEmpty() ? "" : "; " + state);
    }

    /** When a site without an agreement is due, and why. */
    public String why(Cleaning site) {
        return site.last()
                .map(last -> sentences.word("due-visits.since", String.valueOf(site.months()),
                        sentences.formats().day(last)))
                .orElseGet(() -> sentences.word("due-visits.never", String.valueOf(site.months())))
                + site.visit().map(visit -> "; " + sentences.word("due-visits.planned-as", visit)).orElse("");
    }

    private String cleaning(Cleaning site) {
        return sentences.formats().day(site.due()) + ": " + site.siteName() + "; " + why(site)
                + (site.isLate() ? "; " + sentences.word("due-visits.late") : "");
    }
}
