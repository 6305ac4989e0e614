package icequill.ledger.papers;

import icequill.ledger.store.Seal;
import icequill.money.MinorUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.mapper.reflect.ColumnName;
import org.jspecify.annotations.Nullable;

/**
 * A paper as its row says it, and its lines; what the seal covers.
 *
 * @param sums its amounts in minor units: lines, net, tax, gross; all or none
 * @param where it went, as the row of its place says it
 */
public record PaperRow(long id, String number, String kind, String office, int year, int position, String dated,
        Optional<String> due, String issuedAt, Origin origin, Optional<Amounts> sums, String ratesVersion, String data,
        String pdfHash, String previousSeal, @ColumnName("whereabouts_id") long whereabouts,
        @ColumnName("place") String where,
        List<Line> lines) {

    /** Amounts in minor units. */
    public record Amounts(String currency, @ColumnName("lines_minor") long lines, @ColumnName("net_minor") long net,
            @ColumnName("tax_minor") long tax, @ColumnName("gross_minor") long gross) {

        public static Amounts of(Sums sums) {
            return new Amounts(sums.gross().getCurrency().getCurrencyCode(), MinorUnits.of(sums.lines()),
                    MinorUnits.of(sums.net()), MinorUnits.of(sums.tax()), MinorUnits.of(sums.gross()));
        }
    }

    /** A line with its amounts in minor units. */
    public record Line(String chargeClass, String outcome, String text, @ColumnName("net_minor") long net,
            @ColumnName("base_minor") long base) {

        public static List<Line> all(Sums sums) {
            return sums.each().stream().map(line -> new Line(line.chargeClass(), line.outcome(), line.text(),
                    MinorUnits.of(line.net()), MinorUnits.of(line.base()))).toList();
        }
    }

    public PaperRow {
        lines = List.copyOf(lines);
    }

    /** Everything that may not change, in a fixed order. The id is the database's own and the words are made from the rest. */
    List<@Nullable String> contents() {
        List<@Nullable String> all = contentsWithoutPlace();
        all.add(where);
        return all;
    }

    private List<@Nullable String> contentsWithoutPlace() {
        List<@Nullable String> all = new ArrayList<>(List.of(previousSeal, number, kind, office, String.valueOf(year),
                String.valueOf(position), dated, issuedAt, ratesVersion, pdfHash, data));
        for (Optional<String> part : List.of(due, origin.customer(), origin.site(), origin.visit(), origin.agreement(),
                origin.corrects(), origin.replaces())) {
            all.add(part.orElse(null));
        }
        sums.ifPresent(found -> all.addAll(List.of(found.currency(), text(found.lines()), text(found.net()),
                text(found.tax()), text(found.gross()))));
        for (Line line : lines) {
            all.addAll(List.of(line.chargeClass(), line.outcome(), line.text(), text(line.net()), text(line.base())));
        }
        if (!origin.further().isEmpty()) {
            all.add("visits");
            origin.further().forEach(at -> all.addAll(List.of(at.visit(), at.site())));
        }
        return all;
    }

    public Series series() {
        return Series.stored(kind, Series.lettersOf(number), office, String.valueOf(year));
    }

    /** The same with what stands in other tables. */
    PaperRow with(List<Origin.At> further, List<Line> all) {
        return new PaperRow(id, number, kind, office, year, position, dated, due, issuedAt, origin.with(further), sums,
                ratesVersion, data, pdfHash, previousSeal, whereabouts, where, all);
    }

    /** The same with the id of where it went. */
    public PaperRow at(long place) {
        return new PaperRow(id, number, kind, office, year, position, dated, due, issuedAt, origin, sums, ratesVersion,
                data, pdfHash, previousSeal, place, where, lines);
    }

    public String seal() {
        return Seal.of(contents());
    }

    /** Whether a seal is that of this row. Papers of earlier versions were sealed without where they went. */
    public boolean isSealedBy(String seal) {
        return seal.equals(seal()) || seal.equals(Seal.of(contentsWithoutPlace()));
    }

    private static String text(long minor) {
        return Objects.toString(minor);
    }
}
