package icequill.ledger.care;

import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PaperRows;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;
import org.jdbi.v3.core.Handle;

/**
 * Compares what the credit notes of each invoice give back with what it billed: never more, and all of every authority's tax
 * with the whole.
 */
final class CreditCheck {

    private static final String NET = "the net";

    private final Handle handle;
    private final PaperReader reader;
    private final Problems findings;

    CreditCheck(Handle handle, PaperReader reader, Problems findings) {
        this.handle = handle;
        this.reader = reader;
        this.findings = findings;
    }

    void check() {
        handle.createQuery("SELECT DISTINCT corrects FROM paper WHERE corrects IS NOT NULL ORDER BY corrects")
                .mapTo(String.class).list().forEach(this::check);
    }

    /** Rows that are missing and data that cannot be read are found paper by paper. */
    private void check(String invoice) {
        List<String> data = handle.createQuery("SELECT data FROM paper WHERE corrects = :invoice ORDER BY id")
                .bind("invoice", invoice).mapTo(String.class).list();
        PaperRows.byNumber(handle, invoice).flatMap(row -> amounts(List.of(row.data())))
                .ifPresent(billed -> amounts(data).ifPresent(given -> compare(invoice, billed, given)));
    }

    private void compare(String invoice, Map<String, MonetaryAmount> billed, Map<String, MonetaryAmount> given) {
        boolean isWhole = given.get(NET) != null && given.get(NET).equals(billed.get(NET));
        billed.forEach((what, amount) -> {
            MonetaryAmount back = given.getOrDefault(what, amount.multiply(0));
            if (back.isGreaterThan(amount) || (isWhole && back.isLessThan(amount))) {
                found(invoice, what, back, amount);
            }
        });
        given.forEach((what, back) -> {
            if (!billed.containsKey(what)) {
                found(invoice, what, back, back.multiply(0));
            }
        });
    }

    private void found(String invoice, String what, MonetaryAmount back, MonetaryAmount billed) {
        findings.add(Code.OUT_OF_RANGE, Place.NOWHERE, "the credit notes of " + invoice + " give back " + back + " of "
                + what + ", but it billed " + billed, "what was billed, and no more");
    }

    /** The net and each authority's tax, of all papers together; empty when one cannot be read. */
    private Optional<Map<String, MonetaryAmount>> amounts(List<String> papers) {
        Map<String, MonetaryAmount> amounts = new LinkedHashMap<>();
        for (String data : papers) {
            if (!(reader.read(data) instanceof Validated.Valid<PaperReader.Read>(PaperReader.Read paper))) {
                return Optional.empty();
            }
            paper.sums().ifPresent(sums -> amounts.merge(NET, sums.net(), MonetaryAmount::add));
            paper.taxes().forEach(tax -> amounts.merge("the tax of " + tax.authority(), tax.amount(),
                    MonetaryAmount::add));
        }
        return Optional.of(amounts);
    }
}
