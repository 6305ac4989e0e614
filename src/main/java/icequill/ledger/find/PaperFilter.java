package icequill.ledger.find;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.statement.Query;

/**
 * What papers have to be like, whatever words they have; what is empty leaves none out.
 *
 * @param from the first day that they bear
 * @param until the last
 * @param kinds as they are stored
 * @param sites by id
 * @param visits one of which they were issued for, by id; few at a time
 */
public record PaperFilter(Optional<LocalDate> from, Optional<LocalDate> until, Set<String> kinds,
        Optional<BillState> state, Set<String> sites, Set<String> visits) {

    /** Leaves no paper out. */
    public static final PaperFilter NONE = new PaperFilter(Optional.empty(), Optional.empty(), Set.of(),
            Optional.empty(), Set.of(), Set.of());

    public PaperFilter {
        kinds = Set.copyOf(kinds);
        sites = Set.copyOf(sites);
        visits = Set.copyOf(visits);
    }

    /** The same for papers of some visits. */
    public PaperFilter of(Set<String> some) {
        return new PaperFilter(from, until, kinds, state, sites, some);
    }

    /** The same for invoices in another state. */
    public PaperFilter in(BillState other) {
        return new PaperFilter(from, until, kinds, Optional.of(other), sites, visits);
    }

    boolean isNone() {
        return equals(NONE);
    }

    /** Whether an index leads to what it wants; otherwise the newest papers are looked through. */
    boolean leads() {
        return from.isPresent() || until.isPresent() || !kinds.isEmpty() || !sites.isEmpty() || !visits.isEmpty()
                || state.filter(BillState::isRare).isPresent();
    }

    /** Conditions on the row {@code p} of a paper, each after an AND. */
    String sql() {
        StringBuilder sql = new StringBuilder();
        from.ifPresent(day -> sql.append(" AND p.dated >= :from"));
        until.ifPresent(day -> sql.append(" AND p.dated <= :until"));
        sql.append(kinds.isEmpty() ? "" : " AND p.kind IN (<kinds>)");
        state.ifPresent(wanted -> sql.append(" AND ").append(wanted.sql()));
        sql.append(sites.isEmpty()
                ? ""
                : " AND (p.site_id IN (<sites>) OR p.number IN"
                        + " (SELECT number FROM paper_further_visit WHERE site_id IN (<sites>)))");
        return sql.append(visits.isEmpty()
                ? ""
                : " AND (p.visit_id IN (<visits>) OR p.number IN"
                        + " (SELECT number FROM paper_further_visit WHERE visit_id IN (<visits>)))")
                .toString();
    }

    Query bind(Query query) {
        from.ifPresent(day -> query.bind("from", day.toString()));
        until.ifPresent(day -> query.bind("until", day.toString()));
        if (!kinds.isEmpty()) {
            query.bindList("kinds", kinds);
        }
        if (!sites.isEmpty()) {
            query.bindList("sites", sites);
        }
        if (!visits.isEmpty()) {
            query.bindList("visits", visits);
        }
        return query;
    }
}
