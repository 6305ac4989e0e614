package icequill.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
final class Finder {

    /** More words are left out: each may double the queries. */
    private static final int MOST_WORDS = 6;
    /** Shorter beginnings of words fit too much. */
    private static final int SHORTEST_BEGINNING = 3;
    /** Counting goes no further: beyond, a word is common. */
    private static final int COMMON = 20_000;

    private final Handle handle;
    private final int most;

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

    Finder(Handle handle, int most) {
        this.handle = handle;
        this.most = most;
    }

    /** Ids of papers, the newest first. */
    List<Long> find(List<String> words) {
        if (words.isEmpty()) {
            return List.of();
        }
        List<Counted> counted = words.stream().limit(MOST_WORDS).map(this::counted).toList();
        return splits(counted).filter(Split::isPossible).flatMap(split -> found(split).stream()).distinct()
                .sorted(Comparator.reverseOrder()).limit(most).toList();
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

    private static Stream<Split> splits(List<Counted> words) {
        return IntStream.range(0, 1 << words.size()).mapToObj(chosen -> {
            List<Counted> papers = new ArrayList<>();
            List<Counted> whereabouts = new ArrayList<>();
            for (int i = 0; i < words.size(); i++) {
                ((chosen >> i & 1) == 1 ? papers : whereabouts).add(words.get(i));
            }
            papers.sort(Comparator.comparingInt(Counted::papers));
            whereabouts.sort(Comparator.comparingInt(Counted::whereabouts));
            return new Split(papers, whereabouts);
        });
    }

    private List<Long> found(Split split) {
        return split.papers().isEmpty() ? newestAt(split.whereabouts()) : joined(split);
    }

    /** The newest papers are among those of the places that had one last: no other place can hold one of so many. */
    private List<Long> newestAt(List<Counted> words) {
        String chosen = IntStream.range(1, words.size())
                .mapToObj(i -> " AND EXISTS (SELECT 1 FROM whereabouts_word w WHERE w.whereabouts_id = places.id AND "
                        + fits(words.get(i).word(), i) + ")")
                .collect(Collectors.joining());
        Query query = handle.createQuery("SELECT places.id FROM whereabouts places WHERE places.id IN"
                + " (SELECT w.whereabouts_id FROM whereabouts_word w WHERE " + fits(words.getFirst().word(), 0) + ")"
                + chosen + " ORDER BY places.last_paper DESC LIMIT :most");
        List<Long> places = bound(query, words).mapTo(Long.class).list();
        return places.stream().flatMap(place -> handle
                .createQuery("SELECT id FROM paper WHERE whereabouts_id = :place ORDER BY id DESC LIMIT :most")
                .bind("place", place).bind("most", most).mapTo(Long.class).list().stream())
                .sorted(Comparator.reverseOrder()).limit(most).toList();
    }

    private List<Long> joined(Split split) {
        List<Counted> words = new ArrayList<>(split.whereabouts());
        StringBuilder sql = new StringBuilder("SELECT p0.paper_id FROM paper_word p0");
        for (int i = 1; i < split.papers().size(); i++) {
            String other = "p" + i;
            sql.append(" JOIN paper_word ").append(other).append(" ON ").append(other).append(".word = :own").append(i)
                    .append(" AND ").append(other).append(".whereabouts_id = p0.whereabouts_id AND ").append(other)
                    .append(".paper_id = p0.paper_id");
        }
        sql.append(" WHERE p0.word = :own0");
        boolean placesFirst = split.leastWhereabouts() < split.leastPapers();
        for (int i = 0; i < words.size(); i++) {
            String fits = fits(words.get(i).word(), i);
            sql.append(placesFirst && i == 0
                    ? " AND p0.whereabouts_id IN (SELECT w.whereabouts_id FROM whereabouts_word w WHERE " + fits + ")"
                    : " AND EXISTS (SELECT 1 FROM whereabouts_word w WHERE w.whereabouts_id = p0.whereabouts_id AND "
                            + fits + ")");
        }
        Query query = bound(handle.createQuery(sql + " ORDER BY p0.paper_id DESC LIMIT :most"), words);
        for (int i = 0; i < split.papers().size(); i++) {
            query.bind("own" + i, split.papers().get(i).word());
        }
        return query.mapTo(Long.class).list();
    }

    private Query bound(Query query, List<Counted> whereabouts) {
        for (int i = 0; i < whereabouts.size(); i++) {
            query.bind("word" + i, whereabouts.get(i).word()).bind("end" + i, end(whereabouts.get(i).word()));
        }
        return query.bind("most", most);
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
