package icequill.ledger.find;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/**
 * Finds the newest papers that have every word of a question. A word may belong to the paper itself or to where it went. Where
 * papers went is few beside the papers, so words that are common there, even two that no site has together, are compared
 * there; each way to share the words out between the two is one query, and most have but one.
 */
public final class Finder {

    /** Each doubles the queries; further ones count as words of where papers went. */
    private static final int MOST_ON_BOTH_SIDES = 6;
    /** Shorter beginnings of words fit too much. */
    private static final int SHORTEST_BEGINNING = 3;
    /** Counting goes no further: beyond, a word is common. */
    private static final int COMMON = 20_000;
    /** So few places are sorted at once; among more, the newest are looked for one after another. */
    private static final int FEW = 2000;

    private final Handle handle;
    private final int most;
    private final PaperFilter filter;

    /** A word, with how often it stands in papers and in where they went (up to the limit of counting). */
    private record Counted(String word, int papers, int whereabouts) {}

    /** One way to share the words out, each side with its rarest first. */
    private record Split(List<Counted> papers, List<Counted> whereabouts) {

        int leastPapers() {
            return papers.isEmpty() ? Integer.MAX_VALUE : papers.getFirst().papers();
        }

        int leastWhereabouts() {
            return whereabouts.isEmpty() ? Integer.MAX_VALUE : whereabouts.getFirst().whereabouts();
        }

        boolean isPossible() {
            return leastPapers() > 0 && leastWhereabouts() > 0;
        }
    }

    public Finder(Handle handle, int most, PaperFilter filter) {
        this.handle = handle;
        this.most = most;
        this.filter = filter;
    }

    /** Ids of papers, the newest first; none for a question that asks nothing. */
    public List<Long> find(List<String> words) {
        if (words.isEmpty()) {
            return filter.isNone() ? List.of() : filtered();
        }
        List<Counted> counted = words.stream().map(this::counted).toList();
        return splits(counted).filter(Split::isPossible).flatMap(split -> found(split).stream()).distinct()
                .sorted(Comparator.reverseOrder()).limit(most).toList();
    }

    /** Adding 0 keeps the ids from being the way where there is a shorter one. */
    private List<Long> filtered() {
        return filter.bind(handle.createQuery("SELECT p.id FROM paper p WHERE 1 = 1" + filter.sql()
                + " ORDER BY p.id" + (filter.leads() ? " + 0" : "") + " DESC LIMIT :most").bind("most", most))
                .mapTo(Long.class).list();
    }

    private Counted counted(String word) {
        int papers = handle.createQuery("""
                SELECT count(*) FROM (SELECT 1 FROM paper_word WHERE word = :word LIMIT :common) counted""")
                .bind("word", word).bind("common", COMMON).mapTo(Integer.class).one();
        int whereabouts = handle.createQuery(
                "SELECT count(*) FROM (SELECT 1 FROM whereabouts_word w WHERE " + fits(word, 0)
                        + " LIMIT :common) counted")
                .bind("word0", word).bind("end0", end(word)).bind("common", COMMON).mapTo(Integer.class).one();
        return new Counted(word, papers, whereabouts);
    }

    /** All ways to share out the words that are on both sides; most words are on one. */
    private static Stream<Split> splits(List<Counted> words) {
        List<Counted> both = words.stream().filter(word -> word.papers() > 0 && word.whereabouts() > 0)
                .limit(MOST_ON_BOTH_SIDES).toList();
        return IntStream.range(0, 1 << both.size()).mapToObj(chosen -> {
            Predicate<Counted> ofPaper = word -> both.contains(word)
                    ? (chosen >> both.indexOf(word) & 1) == 1
                    : word.whereabouts() == 0;
            return new Split(sorted(words, ofPaper, Counted::papers),
                    sorted(words, ofPaper.negate(), Counted::whereabouts));
        });
    }

    private static List<Counted> sorted(List<Counted> words, Predicate<Counted> side, ToIntFunction<Counted> count) {
        return words.stream().filter(side).sorted(Comparator.comparingInt(count)).toList();
    }

    private List<Long> found(Split split) {
        if (split.papers().isEmpty()) {
            return filter.isNone() ? newestAt(split.whereabouts()) : fromPlaces(split);
        }
        // Looking through the papers of few places is quicker than through those of a common word.
        return split.leastWhereabouts() * papersEach() < split.leastPapers() ? fromPlaces(split) : fromWords(split);
    }

    /** About how many papers went to one place. */
    private long papersEach() {
        return handle.createQuery("SELECT coalesce((SELECT max(id) FROM paper), 0)"
                + " / coalesce((SELECT max(id) FROM whereabouts), 1) + 1").mapTo(Long.class).one();
    }

    /** The newest papers are among those of the places that had one last: no other place can hold one of so many. */
    private List<Long> newestAt(List<Counted> words) {
        List<Long> last = bound("SELECT w.id FROM whereabouts w WHERE " + among("w.id", words)
                + " ORDER BY w.last_paper DESC LIMIT :most", List.of(), words).mapTo(Long.class).list();
        return last.isEmpty()
                ? last
                : handle.createQuery(
                        "SELECT id FROM paper WHERE whereabouts_id IN (<last>) ORDER BY id DESC LIMIT :most")
                        .bindList("last", last).bind("most", most).mapTo(Long.class).list();
    }

    /** Goes through the papers of some places, and keeps those that have the words. Adding 0 keeps the ids from being the way. */
    private List<Long> fromPlaces(Split split) {
        return bound("SELECT p.id FROM paper p WHERE " + among("p.whereabouts_id", split.whereabouts())
                + having(0, split.papers().size(), "p.id") + filter.sql() + " ORDER BY p.id + 0 DESC LIMIT :most",
                split.papers(),
                split.whereabouts()).mapTo(Long.class).list();
    }

    /**
     * Goes through the papers that have the rarest word, from the newest on, and keeps those that have the others and went to the
     * places. IS TRUE, here and elsewhere, keeps the databases from doing it the other way around.
     */
    private List<Long> fromWords(Split split) {
        String places = split.whereabouts().isEmpty()
                ? ""
                : " AND (n.whereabouts_id IN (" + places(split.whereabouts()) + ")) IS TRUE";
        return bound("SELECT n.paper_id FROM paper_word n WHERE n.word = :own0"
                + having(1, split.papers().size(), "n.paper_id") + places + alike()
                + " ORDER BY n.paper_id DESC LIMIT :most",
                split.papers(), split.whereabouts()).mapTo(Long.class).list();
    }

    private String alike() {
        return filter.isNone()
                ? ""
                : " AND (EXISTS (SELECT 1 FROM paper p WHERE p.id = n.paper_id" + filter.sql() + ")) IS TRUE";
    }

    /** Few places lead the way; many are looked up in. */
    private static String among(String place, List<Counted> words) {
        String among = place + " IN (" + places(words) + ")";
        return words.getFirst().whereabouts() > FEW ? "(" + among + ") IS TRUE" : among;
    }

    private static String having(int first, int end, String paper) {
        return IntStream.range(first, end)
                .mapToObj(i -> " AND (EXISTS (SELECT 1 FROM paper_word o WHERE o.word = :own" + i
                        + " AND o.paper_id = " + paper + ")) IS TRUE")
                .collect(Collectors.joining());
    }

    /** The places that have all of the words. */
    private static String places(List<Counted> words) {
        return IntStream.range(0, words.size())
                .mapToObj(i -> "SELECT w.whereabouts_id FROM whereabouts_word w WHERE " + fits(words.get(i).word(), i))
                .collect(Collectors.joining(" INTERSECT "));
    }

    private Query bound(String sql, List<Counted> papers, List<Counted> whereabouts) {
        Query query = handle.createQuery(sql).bind("most", most);
        for (int i = 0; i < papers.size(); i++) {
            query.bind("own" + i, papers.get(i).word());
        }
        for (int i = 0; i < whereabouts.size(); i++) {
            query.bind("word" + i, whereabouts.get(i).word()).bind("end" + i, end(whereabouts.get(i).word()));
        }
        return filter.bind(query);
    }

    private static String fits(String word, int i) {
        return word.length() < SHORTEST_BEGINNING
                ? "w.word = :word" + i + " AND :end" + i + " IS NOT NULL"
                : "w.word >= :word" + i + " AND w.word < :end" + i;
    }

    /** Just beyond every word that begins so. */
    private static String end(String word) {
        return word + '\uffff';
    }
}
