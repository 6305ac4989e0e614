package icequill.ledger.papers;

import icequill.ledger.find.FindWords;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Writes the rows of a paper that is being issued. */
public final class NewPaper {

    private static final String PAPER = """
            INSERT INTO paper (number, kind, office, year, position, dated, due, issued_at, customer_id, site_id, visit_id,
                agreement, corrects, replaces, currency, lines_minor, net_minor, tax_minor, gross_minor, rates_version,
                data, pdf_hash, previous_seal, seal, whereabouts_id)
            VALUES (:number, :kind, :office, :year, :position, :dated, :due, :issuedAt, :origin.customer, :origin.site,
                :origin.visit, :origin.agreement, :origin.corrects, :origin.replaces, :currency, :lines, :net, :tax, :gross,
                :ratesVersion, :data, :pdfHash, :previousSeal, :seal, :whereabouts)
            RETURNING id""";

    private final Handle handle;

    public NewPaper(Handle handle) {
        this.handle = handle;
    }

    /** The id of the row for where papers went, made when it is the first that went there. */
    public long whereabouts(String text) {
        Optional<Long> known = handle.createQuery("SELECT id FROM whereabouts WHERE text = :text").bind("text", text)
                .mapTo(Long.class).findOne();
        return known.orElseGet(() -> newWhereabouts(text, FindWords.ofWhereabouts(text)));
    }

    /** Stores the row and its lines. */
    public long store(PaperRow row, String seal) {
        Optional<PaperRow.Amounts> sums = row.sums();
        long id = handle.createQuery(PAPER).bindMethods(row)
                .bind("currency", sums.map(PaperRow.Amounts::currency)).bind("lines", sums.map(PaperRow.Amounts::lines))
                .bind("net", sums.map(PaperRow.Amounts::net)).bind("tax", sums.map(PaperRow.Amounts::tax))
                .bind("gross", sums.map(PaperRow.Amounts::gross)).bind("seal", seal).mapTo(Long.class).one();
        storeLines(id, row);
        storeVisits(row);
        return id;
    }

    /** Makes the paper findable. */
    public void storeWords(long id, long whereabouts, Set<String> words) {
        PreparedBatch batch = handle.prepareBatch(
                "INSERT INTO paper_word (word, whereabouts_id, paper_id) VALUES (:word, :whereabouts, :paper)");
        words.forEach(word -> batch.bind("word", word).bind("whereabouts", whereabouts).bind("paper", id).add());
        batch.execute();
        handle.createUpdate("UPDATE whereabouts SET last_paper = :paper WHERE id = :id").bind("paper", id)
                .bind("id", whereabouts).execute();
    }

    private void storeVisits(PaperRow row) {
        int position = 1;
        for (Origin.At at : row.origin().further()) {
            position++;
            handle.createUpdate("INSERT INTO paper_further_visit (number, position, visit_id, site_id)"
                    + " VALUES (:number, :position, :visit, :site)").bindMethods(at).bind("number", row.number())
                    .bind("position", position).execute();
        }
    }

    private void storeLines(long id, PaperRow row) {
        if (row.lines().isEmpty()) {
            return;
        }
        PreparedBatch batch = handle.prepareBatch("""
                INSERT INTO paper_line (paper_id, position, charge_class, outcome, text, net_minor, base_minor)
                VALUES (:paper, :position, :chargeClass, :outcome, :text, :net, :base)""");
        int position = 0;
        for (PaperRow.Line line : row.lines()) {
            position++;
            batch.bindMethods(line).bind("paper", id).bind("position", position).add();
        }
        batch.execute();
    }

    private long newWhereabouts(String text, Set<String> words) {
        long id = handle.createQuery("INSERT INTO whereabouts (text, last_paper) VALUES (:text, 0) RETURNING id")
                .bind("text", text).mapTo(Long.class).one();
        if (!words.isEmpty()) {
            PreparedBatch batch = handle
                    .prepareBatch("INSERT INTO whereabouts_word (word, whereabouts_id) VALUES (:word, :id)");
            words.forEach(word -> batch.bind("word", word).bind("id", id).add());
            batch.execute();
        }
        return id;
    }
}
