package icequill.answer.history;

import icequill.explain.ConstantKey;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A history as lines for a screen; how far a line is indented says what it belongs to. */
public final class HistoryText {

    private final Sentences sentences;
    private final VisitText visits;

    public HistoryText(Sentences sentences) {
        this.sentences = sentences;
        this.visits = new VisitText(sentences);
    }

    public List<String> lines(SiteHistory history) {
        List<String> lines = new ArrayList<>();
        lines.add(history.name() + " (" + history.site() + ")"
                + history.storeNumber().map(store -> ", " + sentences.word("fact.store") + " " + store).orElse(""));
        lines.add(String.join(", ", history.address().lines()));
        history.machine().ifPresent(machine -> lines.add(sentences.word("history.only", machine)));
        lines.add(summary(history));
        Set<String> told = new HashSet<>();
        for (ToldVisit visit : history.visits()) {
            lines.add("");
            lines.addAll(visits.lines(visit));
            lines.addAll(papers(visit, history.papers(), told));
        }
        if (history.machine().isPresent() && !told.isEmpty()) {
            lines.add("");
            lines.add(sentences.word("history.whole-visits"));
        }
        return lines;
    }

    /** One visit with its papers. */
    public List<String> lines(ToldVisit visit, List<ToldPaper> papers) {
        List<String> lines = new ArrayList<>(visits.lines(visit));
        lines.addAll(papers(visit, papers, new HashSet<>()));
        return lines;
    }

    private String summary(SiteHistory history) {
        List<String> parts = new ArrayList<>();
        if (history.visits().isEmpty()) {
            parts.add(sentences.word("history.none"));
        }
        count(history.counts().done(), "history.done", parts);
        count(history.counts().planned(), "history.planned", parts);
        count(history.counts().withdrawn(), "history.withdrawn-visits", parts);
        count(history.counts().calls(), "history.calls", parts);
        history.counts().billed()
                .forEach(sum -> parts.add(sentences.word("history.billed",
                        sentences.formats().amountInCurrency(sum.amount()))));
        return history.period().words(sentences).map(period -> period + ": ").orElse("") + String.join("; ", parts);
    }

    private void count(long count, String key, List<String> parts) {
        if (count > 0) {
            parts.add(sentences.word(key, String.valueOf(count)));
        }
    }

    /** Each is told once, at the first visit that it was issued for. */
    private List<String> papers(ToldVisit visit, List<ToldPaper> papers, Set<String> told) {
        if (visit.papers().isEmpty()) {
            return visit.state() == VisitState.DONE ? List.of("  " + sentences.word("history.not-billed")) : List.of();
        }
        return Stream.concat(Stream.of("  " + sentences.word("history.papers")),
                visit.papers().stream().map(number -> "    " + (told.add(number)
                        ? papers.stream().filter(paper -> paper.number().equals(number)).map(this::paper)
                                .collect(Collectors.joining())
                        : sentences.word("history.above", number))))
                .toList();
    }

    private String paper(ToldPaper paper) {
        return sentences.word("history.paper", sentences.word("paper-kind." + ConstantKey.of(paper.kind())),
                paper.number(),
                sentences.formats().day(paper.date()))
                + paper.gross().map(sum -> ": " + sentences.formats().amountInCurrency(sum)).orElse("")
                + paper.corrects().map(invoice -> ", " + sentences.word("history.corrects", invoice)).orElse("")
                + paper.replaces().map(invoice -> ", " + sentences.word("history.replaces", invoice)).orElse("");
    }
}
