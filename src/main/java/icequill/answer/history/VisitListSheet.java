package icequill.answer.history;

import icequill.explain.ConstantKey;
import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.stream.Stream;

/** A list of visits, for the screen in one language and as data. */
public record VisitListSheet(VisitListing data, Sentences sentences) implements Sheet {

    /** The heads of {@link #rows}. */
    public List<String> head() {
        return Stream.of("day", "visit", "site", "state", "caller", "people", "invoices")
                .map(column -> sentences.word("list." + column)).toList();
    }

    public List<List<String>> rows() {
        return data.visits().stream()
                .map(visit -> List.of(visit.began().toLocalDate().toString(), visit.id(), visit.site(),
                        sentences.word("visit-state." + ConstantKey.of(visit.state())), visit.caller().orElse(""),
                        String.join(", ", visit.people()), String.join(" ", visit.invoices())))
                .toList();
    }

    public String none() {
        return sentences.word("list.none");
    }

    /** What is said where there are older ones. */
    public String more(int wanted) {
        return sentences.word("list.more", String.valueOf(wanted));
    }
}
