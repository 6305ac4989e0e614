package icequill.answer.shown;

import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the book keeps of how a paper came about.
 *
 * @param visits that it was issued for, by id
 * @param backdated why it bears an earlier day than the one before it
 * @param replacedBy the invoice that was issued in its place
 * @param ratesVersion of the rates that it was made by; empty letters where an earlier book did not note it
 * @param sha256 of its PDF, in hexadecimal digits
 */
public record PaperOrigin(Optional<String> customer, Optional<String> site, List<String> visits,
        Optional<String> agreement, Optional<String> backdated, Optional<String> replacedBy, Instant issuedAt,
        String ratesVersion, String sha256, String seal) {

    public PaperOrigin {
        visits = List.copyOf(visits);
    }

    static PaperOrigin of(Reading open, IssuedPaper issued) {
        Origin origin = issued.origin();
        return new PaperOrigin(origin.customer(), origin.site(),
                Stream.concat(origin.visit().stream(), origin.further().stream().map(Origin.At::visit)).toList(),
                origin.agreement(), open.papers().backdated(issued.number()),
                replacedBy(open, issued).findFirst(), issued.issuedAt(), issued.ratesVersion(), issued.pdfHash(),
                issued.seal());
    }

    private static Stream<String> replacedBy(Reading open, IssuedPaper paper) {
        return Stream.concat(paper.origin().visit().stream().flatMap(id -> open.papers().ofVisit(id).stream()),
                paper.origin().agreement().stream().flatMap(id -> open.papers().ofAgreement(id).stream()))
                .filter(other -> other.origin().replaces().filter(paper.number()::equals).isPresent())
                .map(IssuedPaper::number);
    }

    /** Whose and what for, as names and values. */
    List<List<String>> subjects() {
        List<List<String>> rows = new ArrayList<>();
        customer.ifPresent(id -> rows.add(List.of("customer", id)));
        site.ifPresent(id -> rows.add(List.of("site", id)));
        if (!visits.isEmpty()) {
            rows.add(List.of("visit", String.join(" ", visits)));
        }
        agreement.ifPresent(id -> rows.add(List.of("agreement", id)));
        return rows;
    }

    /** How it was issued, as names and values. */
    List<List<String>> marks() {
        List<List<String>> rows = new ArrayList<>();
        backdated.ifPresent(reason -> rows.add(List.of("backdated", reason)));
        replacedBy.ifPresent(number -> rows.add(List.of("replacedBy", number)));
        rows.add(List.of("issuedAt", issuedAt.toString()));
        rows.add(List.of("ratesVersion", ratesVersion));
        rows.add(List.of("sha256", sha256));
        rows.add(List.of("seal", seal));
        return rows;
    }
}
