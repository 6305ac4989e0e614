package icequill.ledger;

import icequill.money.Amounts;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
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
final class Books {

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-14T16:00:00Z"), ZoneOffset.UTC);
    static final LongConsumer UNHEARD = count -> {
    };
    static final Series INVOICES = new Series(PaperKind.INVOICE, "", 2026);

    private static final LocalDate DATE = LocalDate.of(2026, 5, 14);
    private static final LocalDate DUE = LocalDate.of(2026, 6, 13);
    private static final Pattern FORM = Pattern.compile("\\{\"number\":\"([^\"]+)\",\"seed\":(\\d+)}");

    private Books() {
    }

    static Book open(BookPlace place) {
        return Opening.open(place, CLOCK).orElseThrow();
    }

    static Checked<IssuedPaper> issue(Book book, int seed) {
        return issue(book, INVOICES, Origin.NONE, seed);
    }

    static Checked<IssuedPaper> issue(Book book, Series series, Origin origin, int seed) {
        return book.write(transaction -> transaction.issue(series, origin,
                numbered -> Checked.sound(printed(numbered, seed))));
    }

    /** Reads what {@link #printed} wrote. */
    static final PaperReader READER = new PaperReader() {
        @Override
        public Checked<Read> read(String json) {
            Matcher parts = FORM.matcher(json);
            if (!parts.matches()) {
                return Checked.faulty(new Problem(Code.UNREADABLE, Place.NOWHERE, "no paper of these tests", "one"));
            }
            int seed = Integer.parseInt(parts.group(2));
            return Checked.sound(new Read(Optional.of(parts.group(1)), DATE, Optional.of(DUE), Optional.of(sums(seed)),
                    List.of(new Levied("state", usd(8))), facts(seed)));
        }

        @Override
        public Checked<Carried> carried(Pdf pdf) {
            String[] parts = new String(pdf.bytes(), StandardCharsets.UTF_8).split(" ", -1);
            return Checked.sound(new Carried(parts[1], Map.of(Marks.PREVIOUS, parts[2]), Map.of()));
        }
    };

    /** The same, but for what is read from data. */
    static PaperReader reading(Function<String, Checked<PaperReader.Read>> read) {
        return new PaperReader() {
            @Override
            public Checked<Read> read(String json) {
                return read.apply(json);
            }

            @Override
            public Checked<Carried> carried(Pdf pdf) {
                return READER.carried(pdf);
            }
        };
    }

    static AuditReport audit(Book book) {
        return book.audit(READER, Optional.empty(), UNHEARD).orElseThrow();
    }

    static <T> List<T> read(Book book, Function<Reading, List<T>> look) {
        return book.read(reading -> Checked.sound(look.apply(reading))).orElseThrow();
    }

    /** At most a hundred. */
    static List<IssuedPaper> found(Book book, String text) {
        return read(book, reading -> reading.papers().find(text, 100));
    }

    static Printed printed(Numbered numbered, int seed) {
        Sums sums = sums(seed);
        return new Printed(DATE, Optional.of(DUE), Optional.of(sums), facts(seed),
                "{\"number\":\"" + numbered.number() + "\",\"seed\":" + seed + "}", "2026-01-01",
                Pdf.of(pdf(numbered, seed)));
    }

    private static Facts facts(int seed) {
        return new Facts("Crumb Lane Bakery", "Store 12", "4 Crumb Lane, Millbrook, NY 12545",
                Optional.of("PO-" + (4710 + seed)), List.of("SN-" + seed), List.of(sums(seed).gross()), List.of(DATE));
    }

    private static Sums sums(int seed) {
        MonetaryAmount net = usd(100 + seed);
        MonetaryAmount tax = usd(8);
        return new Sums(net.add(usd(10)), net, tax, net.add(tax),
                List.of(new Sums.Line("LABOR", "CHARGED", "Labor", net, net.subtract(usd(10))),
                        new Sums.Line("FILTERS", "CHARGED", "Filter", usd(10), usd(10))));
    }

    static byte[] pdf(Numbered numbered, int seed) {
        return ("%PDF " + numbered.number() + " " + numbered.previousSeal() + " " + seed)
                .getBytes(StandardCharsets.UTF_8);
    }

    static MonetaryAmount usd(int whole) {
        return Amounts.of(BigDecimal.valueOf(whole), Monetary.getCurrency("USD"));
    }
}
