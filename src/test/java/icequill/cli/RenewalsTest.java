package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The dated list of renewals to come. */
class RenewalsTest {

    @TempDir
    private Path folder;

    /**
     * By hand, seen from 30 December 2026: the camp's season ended in September, so it is not among them; the other terms end on 31 May 2027.
     * In New York the notice is due at least 15 and at most 30 days before the last day to refuse (General Obligations Law, section 5-903, by
     * the rules of {@code pricing}); the bakery's is 60 days before the end: 1 April 2027 less 30 and 15 days.
     */
    @Test
    void eachWindow_isThatOfTheLaws_andTheFirstStandsFirst() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);

        List<String> rows = new ArrayList<>();
        shop.json("agreement", "renewals").path("renewals").forEach(row -> rows.add(row.path("agreement").asString()
                + " " + row.path("ends").asString() + " " + row.path("refuseUntil").asString() + " "
                + row.path("window").path("first").asString("") + " " + row.path("window").path("last").asString("")));

        assertThat(rows).contains("A-2026-004 2027-05-31 2027-04-01 2027-03-02 2027-03-17");
        assertThat(rows).noneMatch(row -> row.startsWith("A-2026-006"));
        assertThat(shop.json("agreement", "renewals", "--until", "2027-05-30").path("renewals")).isEmpty();
    }
}
