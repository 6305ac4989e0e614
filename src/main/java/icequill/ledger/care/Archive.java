package icequill.ledger.care;

import icequill.ledger.papers.Series;
import icequill.ledger.papers.SeriesHead;
import icequill.ledger.store.Schema;
import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailHead;
import icequill.problem.Code;
import icequill.problem.Problem;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/**
 * The form of a backup, the same for every database: a ZIP file that holds each table as lines of JSON (the names of its columns,
 * then a row a line), the PDFs, and at its end what it holds.
 */
public final class Archive {

    static final int FORMAT = 2;
    static final String CONTENTS = "contents.json";
    static final JsonMapper JSON = JsonMapper.builder().build();

    private static final int WITH_REASONS = 3;
    private static final int WITH_CONTACTS = 6;
    private static final int WITH_MERGED = 9;
    private static final int WITH_FORMS = 10;
    private static final int WITH_PAYMENTS = 13;
    private static final int WITH_LIVES = 24;
    private static final int WITH_MAIL = 26;
    private static final int WITH_MAIL_FILES = 27;

    /** The tables in an order in which each row comes after those it points to. */
    private static final List<Table> TABLES = List.of(new Table("customer", "id"),
            new Table("customer_bill_to", "customer_id, valid_from"),
            new Table("customer_certificate", "customer_id, position"),
            new Table("customer_contact", "customer_id, position", WITH_CONTACTS),
            new Table("customer_mail", "customer_id", WITH_MAIL),
            new Table("customer_merged", "customer_id", WITH_MERGED), new Table("site", "id"),
            new Table("site_merged", "site_id", WITH_MERGED),
            new Table("machine", "site_id, id"), new Table("visit", "id"),
            new Table("visit_withdrawn", "visit_id", WITH_REASONS),
            new Table("agreement", "id", WITH_FORMS), new Table("request", "kind, id", WITH_FORMS),
            new Table("payment", "id", WITH_PAYMENTS),
            new Table("payment_share", "payment_id, position", WITH_PAYMENTS),
            new Table("payment_withdrawn", "payment_id", WITH_PAYMENTS),
            new Table("account", "customer_id", WITH_PAYMENTS),
            new Table("life_step", "kind, id, position", WITH_LIVES),
            new Table("mail_file", "mail_id, position", WITH_MAIL_FILES),
            new Table("rates_version", "id", Schema.WITH_RATES),
            new Table("rates_file", "version_id, name", Schema.WITH_RATES),
            new Table("rates_adopted", "number", Schema.WITH_RATES), new Table("series", "kind, office, year"),
            new Table("whereabouts", "id"), new Table("whereabouts_word", "word, whereabouts_id"),
            new Table("paper", "id"), new Table("paper_line", "paper_id, position"),
            new Table("paper_further_visit", "number, position", Schema.WITH_PAPER_VISITS),
            new Table("paper_word", "word, paper_id"), new Table("paper_backdated", "paper_id", WITH_REASONS),
            new Table("trail", "number", Trail.SINCE), new Table("trail_value", "trail_number, side", Trail.SINCE));

    /**
     * A table of the book.
     *
     * @param order of its rows in a backup
     * @param since the version of the tables that first had it
     */
    record Table(String name, String order, int since) {

        private Table(String name, String order) {
            this(name, order, 1);
        }

        String entry() {
            return "tables/" + name + ".jsonl";
        }
    }

    /**
     * What a backup says of itself.
     *
     * @param schema the version of the tables
     * @param hashes of the tables' entries, by their names
     * @param trail how far it had come; none in a backup of a book without
     * @param missing numbers of papers whose files are not in it
     * @param findings what an audit found wrong with the book as it was written; with any, it is for rescue
     */
    record Contents(int format, int schema, String written, long papers, List<SeriesHead> heads,
            @Nullable TrailHead trail, Map<String, String> hashes, List<String> missing,
            @Nullable List<String> findings) {

        Contents {
            heads = List.copyOf(heads);
            hashes = Map.copyOf(hashes);
            missing = List.copyOf(missing);
            findings = findings == null ? List.of() : List.copyOf(findings);
        }

        TrailHead trailHead() {
            return trail == null ? TrailHead.NONE : trail;
        }

        /** What is wrong with it besides files that are missing; with any it is for rescue. */
        List<String> wrong() {
            return findings == null
                    ? List.of()
                    : findings.stream().filter(message -> missing.stream()
                            .noneMatch(number -> message.startsWith("the file of " + number + " "))).toList();
        }
    }

    /** What a backup says of a paper whose file is not in it. */
    static String isMissing(String number) {
        return "the file of " + number + " is missing";
    }

    /** What an audit says of a paper whose file is another than was issued. */
    static String isChanged(String number) {
        return "the file of " + number + " was changed after it was issued";
    }

    /** What was issued wrong is restored as it was issued; only damage is in the way. */
    static boolean isDamage(Problem finding) {
        return finding.code() == Code.BOOK_DAMAGED;
    }

    /** Those that books of a version have. */
    static List<Table> tables(int schema) {
        return TABLES.stream().filter(table -> table.since() <= schema).toList();
    }

    private Archive() {
    }

    static String entry(Series series, String number) {
        return "papers/" + series.text() + "/" + number + ".pdf";
    }
}
