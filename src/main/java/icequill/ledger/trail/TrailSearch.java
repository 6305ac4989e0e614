package icequill.ledger.trail;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Looks rows of the trail up. */
public record TrailSearch(Handle handle) {

    private static final Pattern JOKER = Pattern.compile("[!%_]");
    private static final Pattern END = Pattern.compile("Z$");

    /** The newest first. */
    public List<TrailRow> find(TrailQuestion question) {
        StringBuilder where = new StringBuilder("WHERE t.number > 0");
        question.entry().ifPresent(entry -> where.append(" AND (t.entry = :entry OR (t.kind = '")
                .append(Subject.MACHINE.name()).append("' AND t.entry LIKE :machines ESCAPE '!'))"));
        question.from().ifPresent(from -> where.append(" AND t.noted_at >= :from"));
        question.until().ifPresent(until -> where.append(" AND t.noted_at < :until"));
        question.who().ifPresent(who -> where.append(" AND t.who = :who"));
        Query query = handle.createQuery(TrailRows.SELECT + where + " ORDER BY t.number DESC LIMIT :most")
                .bind("most", question.most());
        question.entry().ifPresent(entry -> query.bind("entry", entry).bind("machines",
                JOKER.matcher(Subject.part(entry, "")).replaceAll("!$0") + "%"));
        question.from().map(TrailSearch::text).ifPresent(from -> query.bind("from", from));
        question.until().map(TrailSearch::text).ifPresent(until -> query.bind("until", until));
        question.who().ifPresent(who -> query.bind("who", who));
        return query.mapTo(TrailRow.class).list();
    }

    /** The last change of one entry. */
    public Optional<TrailRow> newest(Subject subject, String entry) {
        return TrailRows.newest(handle, subject, entry);
    }

    /** Whether any row tells of it. */
    public boolean knows(String entry) {
        return handle.createQuery("SELECT 1 FROM trail WHERE entry = :entry LIMIT 1").bind("entry", entry)
                .mapTo(Integer.class).findOne().isPresent();
    }

    /** What all that the trail knows is called, but for papers. */
    public List<String> entries() {
        return handle.createQuery("SELECT DISTINCT entry FROM trail WHERE kind NOT IN (:book, :paper) ORDER BY entry")
                .bind("book", Subject.BOOK.name()).bind("paper", Subject.PAPER.name()).mapTo(String.class).list();
    }

    /** Whole seconds and their parts stand in the right order only without the sign at the end. */
    private static String text(Instant moment) {
        return END.matcher(moment.toString()).replaceFirst("");
    }
}
