package icequill.ledger.care;

import icequill.ledger.papers.Series;
import icequill.ledger.papers.SeriesHead;
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

    /** The tables in an order in which each row comes after those it points to. */
    private static final List<Table> TABLES = List.of(new Table("customer", "id", 1),
            new Table("customer_bill_to", "customer_id, valid_from", 1),
            new Table("customer_certificate", "customer_id, position", 1),
            new Table("customer_contact", "customer_id, position", 6), new Table("site", "id", 1),
            new Table("machine", "site_id, id", 1), new Table("visit", "id", 1),
            new Table("visit_withdrawn", "visit_id", 3), new Table("agreement", "id", 7),
            new Table("request", "kind, id", 7), new Table("series", "kind, office, year", 1),
            new Table("whereabouts", "id", 1), new Table("whereabouts_word", "word, whereabouts_id", 1),
            new Table("paper", "id", 1), new Table("paper_line", "paper_id, position", 1),
            new Table("paper_word", "word, paper_id", 1), new Table("paper_backdated", "paper_id", 3));

    /** Those of a book of that schema. */
    static List<Table> tables(int schema) {
        return TABLES.stream().filter(table -> table.since() <= schema).toList();
    }

    /**
     * A table of the book.
     *
     * @param order of its rows in a backup
     * @param since which schema books have it
     */
    record Table(String name, String order, int since) {
        String entry() {
            return "tables/" + name + ".jsonl";
        }
    }

    /**
     * What a backup says of itself.
     *
     * @param schema the version of the tables
     * @param hashes of the tables' entries, by their names
     * @param missing numbers of papers whose files are not in it
     * @param findings what an audit found wrong with the book as it was written; with any, it is for rescue
     */
    record Contents(int format, int schema, String written, long papers, List<SeriesHead> heads,
            Map<String, String> hashes, List<String> missing, @Nullable List<String> findings) {

        Contents {
            heads = List.copyOf(heads);
            hashes = Map.copyOf(hashes);
            missing = List.copyOf(missing);
            findings = findings == null ? List.of() : List.copyOf(findings);
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

    /** What was issued wrong is restored as it was issued; only damage is in the way. */
    static boolean isDamage(Problem finding) {
        return finding.code() == Code.BOOK_DAMAGED;
    }

    private Archive() {
    }

    static String entry(Series series, String number) {
        return "papers/" + series.text() + "/" + number + ".pdf";
    }
}
