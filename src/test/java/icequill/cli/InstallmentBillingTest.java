package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.answer.paper.DueInstallments;
import icequill.answer.paper.IssuedPapers;
import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import icequill.office.billing.InstallmentBilling;
import icequill.office.billing.IssueOptions;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Installments of all agreements, billed in one run. */
class InstallmentBillingTest {

    private static final LocalDate JULY = LocalDate.of(2026, 7, 31);

    private static final String MISSED = "A-2026-005: the visit that was due on 2026-06-01 is not recorded as done, so it"
            + " is not billed";

    @TempDir
    private Path folder;

    /**
     * By hand, up to 31 July 2026: of the bakery's four installments of 268.75 that of 1 June; of the hotel's twelve of 140.00 those of June
     * and July; of the coffee rooms' four that of 1 June; of the camp's, which has a payment in each of its open months, those of June and
     * July. Mercado del Mar pays visit by visit when it is done: that of 1 June is not recorded.
     */
    @Test
    void whatIsDue_isThatOfTheCalendar_andIsBilledOnce() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);

        List<String> due = new ArrayList<>();
        JsonNode listed = shop.json("invoice", "due", "--until", JULY.toString());
        assertThat(listed.path("problems")).isEmpty();
        assertThat(listed.path("missed")).extracting(one -> one.path("agreement").asString() + " "
                + one.path("due").asString()).containsExactly("A-2026-005 2026-06-01");
        listed.path("installments").forEach(one -> due.add(
                one.path("agreement").asString() + " " + one.path("number").asInt() + " "
                        + one.path("due").asString()));
        assertThat(due).containsExactly("A-2026-002 1 2026-06-01", "A-2026-004 1 2026-06-01", "A-2026-006 1 2026-06-01",
                "A-2026-007 1 2026-06-01", "A-2026-002 2 2026-07-01", "A-2026-006 2 2026-07-01");

        JsonNode issued = shop.json("invoice", "due", "--until", JULY.toString(), "--issue", "--date", "2026-07-31");
        assertThat(issued.path("papers")).hasSize(6);
        assertThat(issued.path("problems")).isEmpty();
        // 268.75 and 8.875 % of it, 23.85
        assertThat(issued.path("papers")).extracting(paper -> paper.path("gross").asString()).contains("292.60");
        Run again = shop.run("invoice", "due", "--until", JULY.toString(), "--issue", "--date", "2026-07-31");
        assertThat(again.status()).as(again.err()).isZero();
        assertThat(again.err()).contains(MISSED);
        assertThat(again.out()).isEqualToIgnoringNewLines("0 of 0 installments billed.");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** The fish market pays for a visit once that is done, and only then. */
    @Test
    void visitThatIsPaidWhenItIsDone_isBilledOnceItIsRecorded() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        cleaned(shop, "2026-06-03");

        JsonNode listed = shop.json("invoice", "due", "--until", JULY.toString());

        assertThat(listed.path("missed")).isEmpty();
        assertThat(listed.path("installments")).filteredOn(one -> one.path("agreement").asString().equals("A-2026-005"))
                .extracting(one -> one.path("net").asString()).containsExactly("357.50");
    }

    /**
     * The fish market's notice of 25 October ends its agreement 30 days later, on 24 November. A visit of the day before is nearest to the slot of 1
     * December, and by hand half of 715.00: it is billed, by the last day; one after the end is none of the agreement's.
     */
    @Test
    void visitThatIsDoneJustBeforeTheEnd_isBilled_andNoneAfterIt() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        shop.json("agreement", "end", "A-2026-005", "--way", "mail", "--on", "2026-10-25", "--yes");
        cleaned(shop, "2026-11-26");
        assertThat(ready(shop)).isEmpty();

        cleaned(shop, "2026-11-23");

        assertThat(ready(shop)).containsExactly("2 2026-11-24 357.50");
        shop.json("invoice", "issue", "A-2026-005", "--installment", "2", "--date", "2026-12-30", "--out-of-order");
        assertThat(ready(shop)).isEmpty();
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    private static List<String> ready(BookShop shop) {
        return shop.json("invoice", "due", "--until", "2026-12-30").path("installments").valueStream()
                .filter(one -> one.path("agreement").asString().equals("A-2026-005")).map(one -> one.path("number")
                        .asInt() + " " + one.path("due").asString() + " " + one.path("net").asString())
                .toList();
    }

    /** The fish market's cleaning of June was missed, that of December was done. */
    @Test
    void missedVisit_holdsUpNoLaterOne() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        cleaned(shop, "2026-12-03");

        Run run = shop.run("invoice", "due", "--until", "2026-12-30", "--issue", "--date", "2026-12-30");

        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.err()).contains(MISSED);
        assertThat(shop.json("agreement", "show", "A-2026-005").path("payments"))
                .filteredOn(payment -> payment.has("invoice")).extracting(payment -> payment.path("due").asString())
                .containsExactly("2026-12-01");
    }

    /** A planned cleaning of the fish market was done. */
    private static void cleaned(BookShop shop, String day) throws IOException {
        shop.json("visit", "add", shop.write("visits/cleaned-" + day + ".yaml", """
                format: 1
                form: visit
                site: mercado-del-mar
                people:
                  - {name: Lead technician, grade: lead, arrived: %1$sT09:00, left: %1$sT10:30, on: cleaning}
                """.formatted(day)).toString());
    }

    /** Whoever stops it after the second invoice, which is printed beside the third, finds the rest the next time, and nothing twice. */
    @Test
    void stoppedRun_goesOnWhereItWas() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        InstallmentBilling office = InstallmentBilling.of(shop.folder(), BookShop.CLOCK);
        DueInstallments due = office.due(JULY).orElseThrow();
        IssueOptions options = new IssueOptions(JULY, Optional.empty());
        List<String> told = new ArrayList<>();

        IssuedPapers first = office.each(due.installments(), options, paper -> {
            told.add(paper.orElseThrow().number());
            return told.size() != 2;
        });
        assertThat(first.papers()).hasSize(3);

        DueInstallments rest = office.due(JULY).orElseThrow();
        assertThat(rest.installments()).containsExactlyElementsOf(due.installments().subList(3, 6));
        IssuedPapers twice = office.each(due.installments(), options, paper -> true);
        assertThat(twice.papers()).hasSize(3);
        assertThat(twice.problems()).hasSize(3)
                .allSatisfy(problem -> assertThat(problem.message()).contains("was billed as INV-2026-0000"));
    }
}
