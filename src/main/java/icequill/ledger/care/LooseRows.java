package icequill.ledger.care;

import icequill.ledger.entries.MailFiles;
import icequill.ledger.find.FindWords;
import icequill.ledger.store.Schema;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import java.util.Set;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.ResultIterable;

/** Looks at the rows that belong to papers, or are made from them: lines that are nobody's, words and places that were put in. */
record LooseRows(Handle handle, Problems findings) {

    private static final int FETCHED = 500;

    /** Where papers went. */
    private record Whereabouts(long id, String text) {}

    /** @param words how many words all papers together are found by */
    void check(long words) {
        each("SELECT DISTINCT paper_id FROM paper_line l WHERE NOT EXISTS (SELECT 1 FROM paper p WHERE p.id = l.paper_id)",
                "lines belong to no paper: ");
        each("SELECT paper_id FROM paper_line GROUP BY paper_id"
                + " HAVING min(position) <> 1 OR max(position) <> count(*)",
                "lines are not numbered from 1 without a gap: those of paper ");
        each("SELECT id FROM whereabouts w WHERE last_paper <> (SELECT coalesce(max(id), 0) FROM paper p"
                + " WHERE p.whereabouts_id = w.id)", "the last paper that went to a place is another: place ");
        each("SELECT id FROM whereabouts w WHERE NOT EXISTS (SELECT 1 FROM paper p WHERE p.whereabouts_id = w.id)",
                "no paper went to a place: ");
        each("SELECT DISTINCT whereabouts_id FROM whereabouts_word d"
                + " WHERE NOT EXISTS (SELECT 1 FROM whereabouts w WHERE w.id = d.whereabouts_id)",
                "words belong to no place: ");
        // A backup of an earlier version has no such tables.
        if (Schema.version(handle) == Schema.NEWEST) {
            checkMerged();
        }
        checkPlaces();
        long stored = handle.createQuery("SELECT count(*) FROM paper_word").mapTo(Long.class).one();
        if (stored > words) {
            damaged("papers are found by " + (stored - words) + " words that are not in their data");
        }
    }

    private void checkMerged() {
        each("SELECT id FROM site s WHERE EXISTS (SELECT 1 FROM customer_merged m WHERE m.customer_id = s.customer_id)",
                "a site belongs to a customer who was merged into another: ");
        each("SELECT id FROM machine a WHERE EXISTS (SELECT 1 FROM site_merged m WHERE m.site_id = a.site_id)",
                "a machine belongs to a site that was merged into another: ");
        each("SELECT id FROM visit v WHERE EXISTS (SELECT 1 FROM site_merged m WHERE m.site_id = v.site_id)",
                "a visit belongs to a site that was merged into another: ");
        each("SELECT id FROM agreement g WHERE EXISTS (SELECT 1 FROM site_merged m WHERE m.site_id = g.site_id)",
                "an agreement is for a site that was merged into another: ");
        each("SELECT id FROM request r WHERE EXISTS (SELECT 1 FROM site_merged m WHERE m.site_id = r.site_id)",
                "a request is for a site that was merged into another: ");
        each("SELECT DISTINCT kind || ' ' || id FROM life_step l"
                + " WHERE EXISTS (SELECT 1 FROM site_merged m WHERE m.site_id = l.site_id)",
                "a step is of a site that was merged into another: ");
        each("SELECT mail_id || ' ' || position FROM mail_file f WHERE NOT EXISTS (SELECT 1 FROM life_step l"
                + " WHERE l.kind = 'MAIL' AND l.id = f.mail_id)", "a file goes along with no mail: ");
        MailFiles.changed(handle).forEach(mail -> damaged("what goes along with a mail was changed: " + mail));
        each("SELECT kind || ' ' || id FROM life_step GROUP BY kind, id"
                + " HAVING min(position) <> 1 OR max(position) <> count(*)",
                "steps are not numbered from 1 without a gap: those of ");
    }

    private void checkPlaces() {
        long[] words = {0};
        try (Stream<Whereabouts> places = handle.createQuery("SELECT id, text FROM whereabouts ORDER BY id")
                .setFetchSize(FETCHED).mapTo(Whereabouts.class).stream()) {
            places.forEach(place -> {
                Set<String> expected = FindWords.ofWhereabouts(place.text());
                words[0] += expected.size();
                if (expected.size() != stored(place.id(), expected)) {
                    damaged("a place is not found by its own words: " + place.text().replace("\n", ", "));
                }
            });
        }
        long stored = handle.createQuery("SELECT count(*) FROM whereabouts_word").mapTo(Long.class).one();
        if (stored > words[0]) {
            damaged("places are found by " + (stored - words[0]) + " words that are not theirs");
        }
    }

    private long stored(long place, Set<String> words) {
        return words.isEmpty()
                ? 0
                : handle.createQuery(
                        "SELECT count(*) FROM whereabouts_word WHERE whereabouts_id = :place AND word IN (<words>)")
                        .bind("place", place).bindList("words", words).mapTo(Long.class).one();
    }

    private void each(String query, String message) {
        ResultIterable<String> ids = handle.createQuery(query).mapTo(String.class);
        ids.forEach(id -> damaged(message + id));
    }

    private void damaged(String message) {
        findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, message, "the row from a backup");
    }
}
