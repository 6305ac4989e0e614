package icequill.ledger;

import icequill.money.Amounts;
import icequill.problem.Checked;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import javax.money.Monetary;
import javax.money.MonetaryAmount;

/** Books for tests, and small papers to issue into them. */
final class Books {

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-14T16:00:00Z"), ZoneOffset.UTC);
    static final Series INVOICES = new Series(PaperKind.INVOICE, "", 2026);

    private Books() {
    }

    static Book open(BookPlace place) {
        return Book.open(place, CLOCK).orElseThrow();
    }

    static Checked<IssuedPaper> issue(Book book, int seed) {
        return issue(book, INVOICES, Origin.NONE, seed);
    }

    static Checked<IssuedPaper> issue(Book book, Series series, Origin origin, int seed) {
        return book.write(transaction -> transaction.issue(series, origin,
                numbered -> Checked.sound(printed(numbered, seed))));
    }

    static Printed printed(Numbered numbered, int seed) {
        MonetaryAmount net = usd(100 + seed);
        MonetaryAmount tax = usd(8);
        MonetaryAmount gross = net.add(tax);
        LocalDate date = LocalDate.of(2026, 5, 14);
        Sums sums = new Sums(net, net, tax, gross,
                List.of(new Sums.Line("LABOR", "CHARGED", "Labor", net, net)));
        Facts facts = new Facts("Crumb Lane Bakery", "Store 12", "4 Crumb Lane, Millbrook, NY 12545",
                Optional.of("PO-" + (4710 + seed)), List.of("SN-" + seed), List.of(gross), List.of(date));
        return new Printed(date, Optional.of(date.plusDays(30)), Optional.of(sums), facts,
                "{\"number\":\"" + numbered.number() + "\",\"seed\":" + seed + "}", "2026-01-01",
                Pdf.of(pdf(numbered, seed)));
    }

    static byte[] pdf(Numbered numbered, int seed) {
        return ("%PDF " + numbered.number() + " " + numbered.previousSeal() + " " + seed)
                .getBytes(StandardCharsets.UTF_8);
    }

    private static MonetaryAmount usd(int whole) {
        return Amounts.of(BigDecimal.valueOf(whole), Monetary.getCurrency("USD"));
    }
}
