package icequill.ledger;

import icequill.ledger.find.FindWords;
import icequill.ledger.find.SearchKeys;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.PaperRow;
import icequill.ledger.papers.Series;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.store.Dialect;
import icequill.ledger.store.Seal;
import icequill.money.Amounts;
import java.io.IOException;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.Monetary;

/**
 * Fills a book with invented customers, machines and papers, many at a time, for measurements. Rows and words are those that
 * issuing would store; there are no PDFs behind them, so no audit will be clean.
 *
 * @param customers each has one site
 * @param machines shared out over the sites
 */
public record BookFilling(int customers, int machines, int papers) {

    private static final CurrencyUnit USD = Monetary.getCurrency("USD");
    private static final int BATCH = 1000;
    /** Papers of one day, so that a date finds some hundreds in a large book. */
    private static final int DAYS = 3000;
    private static final int SERIES = 10_000;
    private static final LocalDate FIRST = LocalDate.of(2016, 1, 4);

    private static final String[] TRADES = {"Hotel", "Grill", "Bakery", "Taproom", "Clinic", "Seafood", "Pizza",
            "Diner"};
    private static final String[] NAMES = {"Amber", "Birch", "Copper", "Dune", "Elm", "Fern", "Granite", "Harbor",
            "Iris",
            "Juniper", "Kestrel", "Lantern", "Maple", "North", "Orchard", "Pebble", "Quarry", "River", "Sable",
            "Timber"};
    private static final String[] WAYS = {"Street", "Road", "Avenue", "Lane"};
    private static final String[] TOWNS = {"Millbrook", "Fernhill", "Easton", "Larkdale", "Stillwater", "Ashby"};

    /** What filling writes to; closed with the connection. */
    private record Tables(PreparedStatement paper, PreparedStatement line, PreparedStatement word) {}

    /** Makes the book, and fills it. */
    public void fill(BookPlace place) throws SQLException, IOException {
        Opening.open(place, Books.CLOCK, Books.AUTHOR).orElseThrow().close();
        try (Connections connections = Connections.to(place)) {
            try (Connection connection = connections.writing().getConnection()) {
                if (connections.dialect() == Dialect.SQLITE) {
                    hurry(connection);
                }
                connection.setAutoCommit(false);
                entries(connection);
                papers(connection);
            }
            connections.writer().useTransaction(connections.dialect()::afterLoading);
            // A server does it by itself in time, and knows little of tables that it has not looked at.
            connections.writer().useHandle(handle -> handle.execute(
                    connections.dialect() == Dialect.POSTGRESQL ? "VACUUM ANALYZE" : "PRAGMA optimize"));
        }
    }

    /** Words fall all over their table, so much of it is kept in memory; and what is lost by a stop can be filled again. */
    private static void hurry(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA cache_size = -400000");
            statement.execute("PRAGMA synchronous = OFF");
        }
    }

    /** The facts of a paper by its number in the filling, from 0. */
    public SearchKeys facts(int paper) {
        int customer = customer(paper);
        return new SearchKeys(name(customer), "Store " + customer % 400, address(customer),
                Optional.of("PO-" + order(paper)),
                List.of("SN-" + (customer * 3 + paper % 3)),
                List.of(Amounts.of(BigDecimal.valueOf(cents(paper), 2), USD)),
                List.of(day(paper)));
    }

    public String number(int paper) {
        return series(paper).number(paper % SERIES + 1);
    }

    /** The purchase order of a paper, which no other has. */
    public int order(int paper) {
        return 1_000_000 + paper;
    }

    private static Series series(int paper) {
        return new Series(PaperKind.INVOICE, PaperKind.INVOICE.usualLetters(), "o" + paper / SERIES, 2026);
    }

    private LocalDate day(int paper) {
        return FIRST.plusDays((long) paper * DAYS / papers);
    }

    private int customer(int paper) {
        return (int) ((paper * 7919L) % customers);
    }

    private static int cents(int paper) {
        return paper % 5 == 0 ? 15_000 : 10_000 + (int) ((paper * 104_729L) % 200_000);
    }

    private static String name(int customer) {
        return NAMES[customer / TRADES.length % NAMES.length] + " " + TRADES[customer % TRADES.length] + " " + customer;
    }

    private static String where(int customer) {
        return name(customer) + "\nStore " + customer % 400 + "\n" + address(customer);
    }

    private static String address(int customer) {
        return 1 + customer % 999 + " " + NAMES[customer % NAMES.length] + " " + WAYS[customer % WAYS.length] + ", "
                + TOWNS[customer % TOWNS.length] + ", NY " + (12_000 + customer % 500);
    }

    private void entries(Connection connection) throws SQLException {
        try (PreparedStatement customer = connection.prepareStatement(
                "INSERT INTO customer (id, name, claims_exemption) VALUES (?, ?, 0)");
                PreparedStatement site = connection
                        .prepareStatement("INSERT INTO site (id, customer_id, name, street, city,"
                                + " region, postal_code, country, data) VALUES (?, ?, 'Main', ?, 'Millbrook', 'NY', '', 'US', '{}')");
                PreparedStatement whereabouts = connection.prepareStatement(
                        "INSERT INTO whereabouts (id, text, last_paper) VALUES (?, ?, 0)");
                PreparedStatement word = connection.prepareStatement(
                        "INSERT INTO whereabouts_word (word, whereabouts_id) VALUES (?, ?)")) {
            for (int i = 0; i < customers; i++) {
                add(customer, "c" + i, name(i));
                add(site, "c" + i, "c" + i, address(i));
                add(whereabouts, i + 1, where(i));
                for (String found : FindWords.ofWhereabouts(where(i))) {
                    add(word, found, i + 1);
                }
                if (i % BATCH == BATCH - 1) {
                    run(customer, site, whereabouts, word);
                }
            }
            run(customer, site, whereabouts, word);
        }
        try (PreparedStatement machine = connection
                .prepareStatement("INSERT INTO machine (site_id, id, model, serial, data)"
                        + " VALUES (?, ?, 'Cube ice machine', ?, '{}')")) {
            for (int i = 0; i < machines; i++) {
                add(machine, "c" + i % customers, "m" + i, "SN-" + i);
                if (i % BATCH == BATCH - 1) {
                    run(machine);
                }
            }
            run(machine);
        }
        connection.commit();
    }

    private void papers(Connection connection) throws SQLException {
        try (PreparedStatement paper = connection.prepareStatement("INSERT INTO paper (id, number, kind, office, year,"
                + " position, dated, issued_at, customer_id, site_id, currency, lines_minor, net_minor, tax_minor, gross_minor,"
                + " rates_version, data, pdf_hash, previous_seal, seal, whereabouts_id)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'USD', ?, ?, 0, ?, '2026', ?, ?, ?, ?, ?)");
                PreparedStatement line = connection.prepareStatement("INSERT INTO paper_line (paper_id, position,"
                        + " charge_class, outcome, text, net_minor, base_minor) VALUES (?, 1, 'LABOR', 'CHARGED', 'Labor', ?, ?)");
                PreparedStatement word = connection.prepareStatement(
                        "INSERT INTO paper_word (word, whereabouts_id, paper_id) VALUES (?, ?, ?)")) {
            Tables tables = new Tables(paper, line, word);
            String seal = Seal.NONE;
            for (int i = 0; i < papers; i++) {
                seal = add(tables, i, i % SERIES == 0 ? Seal.NONE : seal);
                if (i % BATCH == BATCH - 1 || i == papers - 1) {
                    run(paper, line, word);
                    connection.commit();
                }
                if (i % SERIES == SERIES - 1 || i == papers - 1) {
                    series(connection, i, seal);
                }
            }
        }
        try (PreparedStatement last = connection.prepareStatement("UPDATE whereabouts SET last_paper ="
                + " (SELECT coalesce(max(p.id), 0) FROM paper p WHERE p.whereabouts_id = whereabouts.id)")) {
            last.executeUpdate();
        }
        connection.commit();
    }

    /** Adds a paper, and returns its seal. */
    private String add(Tables tables, int i, String previous) throws SQLException {
        long id = i + 1L;
        String customer = "c" + customer(i);
        long cents = cents(i);
        Series series = series(i);
        Origin origin = new Origin(Optional.of(customer), Optional.of(customer), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty());
        PaperRow row = new PaperRow(id, number(i), series.kind().name(), series.office(), series.year(), i % SERIES + 1,
                day(i).toString(), Optional.empty(), "2026-05-14T16:00:00Z", origin,
                Optional.of(new PaperRow.Amounts("USD", cents, cents, 0, cents)), "2026",
                "{\"number\":\"" + number(i) + "\",\"text\":\"" + "labor and travel ".repeat(40) + "\"}",
                "0".repeat(64), previous, customer(i) + 1L, where(customer(i)),
                List.of(new PaperRow.Line("LABOR", "CHARGED", "Labor", cents, cents)));
        String seal = row.seal();
        add(tables.paper(), id, row.number(), row.kind(), row.office(), row.year(), row.position(), row.dated(),
                row.issuedAt(), customer, customer, cents, cents, cents, row.data(), row.pdfHash(), previous, seal,
                row.whereabouts());
        add(tables.line(), id, cents, cents);
        for (String word : new ArrayList<>(FindWords.ofPaper(row.number(), row.position(), facts(i)))) {
            add(tables.word(), word, row.whereabouts(), id);
        }
        return seal;
    }

    private static void series(Connection connection, int paper, String seal) throws SQLException {
        Series series = series(paper);
        try (PreparedStatement insert = connection
                .prepareStatement(
                        "INSERT INTO series (kind, letters, office, year, next, head) VALUES (?, ?, ?, ?, ?, ?)")) {
            add(insert, series.kind().name(), series.letters(), series.office(), series.year(), paper % SERIES + 2,
                    seal);
            run(insert);
        }
    }

    private static void add(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        statement.addBatch();
    }

    private static void run(PreparedStatement... statements) throws SQLException {
        for (PreparedStatement statement : statements) {
            statement.executeBatch();
        }
    }
}
