package icequill.ledger;

import icequill.ledger.care.AuditReport;
import icequill.ledger.find.PaperFilter;
import icequill.ledger.find.SearchKeys;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Marks;
import icequill.ledger.papers.Numbered;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.Pdf;
import icequill.ledger.papers.PrintedPaper;
import icequill.ledger.papers.Series;
import icequill.ledger.papers.Sums;
import icequill.ledger.store.Author;
import icequill.ledger.store.BookPlace;
import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.money.Monetary;
import javax.money.MonetaryAmount;

/** Books for tests, and small papers to issue into them. */
public final class Books {

    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-14T16:00:00Z"), ZoneOffset.UTC);
    public static final Author AUTHOR = new Author("ann", "");
    public static final LongConsumer UNHEARD = count -> {
    };
    public static final Series INVOICES = new Series(PaperKind.INVOICE, PaperKind.INVOICE.usualLetters(), "", 2026);

    private static final LocalDate DATE = LocalDate.of(2026, 5, 14);
    private static final LocalDate DUE = LocalDate.of(2026, 6, 13);
    private static final Pattern FORM = Pattern.compile("\\{\"number\":\"([^\"]+)\",\"seed\":(\\d+)}");

    private Books() {
    }

    public static Book open(BookPlace place) {
        return Opening.open(place, CLOCK, AUTHOR).orElseThrow();
    }

    public static Validated<IssuedPaper> issue(Book book, int seed) {
        return issue(book, INVOICES, Origin.NONE, seed);
    }

    public static Validated<IssuedPaper> issue(Book book, Series series, Origin origin, int seed) {
        return book.write(transaction -> transaction.issue(series, origin,
                numbered -> Validated.valid(printed(numbered, seed))));
    }

    /** Reads what {@link #printed} wrote. */
    public static final PaperReader READER = new PaperReader() {
        @Override
        public Validated<Read> read(String json) {
            Matcher parts = FORM.matcher(json);
            if (!parts.matches()) {
                return Validated.invalid(new Problem(Code.UNREADABLE, Place.NOWHERE, "no paper of these tests", "one"));
            }
            int seed = Integer.parseInt(parts.group(2));
            return Validated
                    .valid(new Read(parts.group(1).startsWith("CN") ? PaperKind.CREDIT_NOTE : PaperKind.INVOICE,
                            Optional.of(parts.group(1)), DATE, Optional.of(DUE), Optional.of(sums(seed)),
                            List.of(new Levied("state", usd(8))), facts(seed)));
        }

        @Override
        public Validated<Carried> carried(Pdf pdf) {
            String[] parts = new String(pdf.bytes(), StandardCharsets.UTF_8).split(" ", -1);
            return Validated.valid(new Carried(Map.of(Marks.PREVIOUS, parts[2]), Map.of(),
                    List.of()));
        }

        @Override
        public boolean prints(Pdf pdf, String text) {
            return new String(pdf.bytes(), StandardCharsets.UTF_8).split(" ", -1)[1].contains(text);
        }
    };

    /** The same, but for what is read from data. */
    public static PaperReader reading(Function<String, Validated<PaperReader.Read>> read) {
        return new PaperReader() {
            @Override
            public Validated<Read> read(String json) {
                return read.apply(json);
            }

            @Override
            public Validated<Carried> carried(Pdf pdf) {
                return READER.carried(pdf);
            }

            @Override
            public boolean prints(Pdf pdf, String text) {
                return READER.prints(pdf, text);
            }
        };
    }

    public static AuditReport audit(Book book) {
        return book.audit(READER, Optional.empty(), UNHEARD).orElseThrow();
    }

    public static <T> List<T> read(Book book, Function<Reading, List<T>> look) {
        return book.read(reading -> Validated.valid(look.apply(reading))).orElseThrow();
    }

    /** At most a hundred. */
    public static List<IssuedPaper> found(Book book, String text) {
        return read(book, reading -> reading.papers().find(text, PaperFilter.NONE, 100));
    }

    public static PrintedPaper printed(Numbered numbered, int seed) {
        Sums sums = sums(seed);
        return new PrintedPaper(DATE, Optional.of(DUE), Optional.of(sums), facts(seed),
                "{\"number\":\"" + numbered.number() + "\",\"seed\":" + seed + "}", "2026-01-01",
                Pdf.of(pdf(numbered, seed)));
    }

    private static SearchKeys facts(int seed) {
        return new SearchKeys("Crumb Lane Bakery", "Store 12", "4 Crumb Lane, Millbrook, NY 12545",
                Optional.of("PO-" + (4710 + seed)), List.of("SN-" + seed), List.of(sums(seed).gross()), List.of(DATE));
    }

    private static Sums sums(int seed) {
        MonetaryAmount net = usd(100 + seed);
        MonetaryAmount tax = usd(8);
        return new Sums(net.add(usd(10)), net, tax, net.add(tax),
                List.of(new Sums.Line("LABOR", "CHARGED", "Labor", net, net.subtract(usd(10))),
                        new Sums.Line("FILTERS", "CHARGED", "Filter", usd(10), usd(10))));
    }

    public static byte[] pdf(Numbered numbered, int seed) {
        return ("%PDF " + numbered.number() + " " + numbered.previousSeal() + " " + seed)
                .getBytes(StandardCharsets.UTF_8);
    }

    public static MonetaryAmount usd(int whole) {
        return Amounts.of(BigDecimal.valueOf(whole), Monetary.getCurrency("USD"));
    }
}
