package icequill.office.care;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.answer.rates.Rework;
import icequill.ledger.Transaction;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Issued papers worked out again by what held when they were issued. */
class ReworkTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-30T17:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path temporary;

    /** Prices double, a site moves away and its agreement ends, and still each comes to what was issued. */
    @Test
    void everyPaperOfTheDemo_comesToWhatWasIssued_whateverChangedSince() throws IOException {
        Path shop = FinishedDemo.copy(temporary.resolve("shop"));
        Path calls = shop.resolve("pricing/service-call.yaml");
        Files.writeString(calls, Files.readString(calls).replace("standard: 52.00", "standard: 104.00"));
        List<IssuedPaper> papers = new ArrayList<>();

        Validated<Integer> compared = ShopBook.of(shop, CLOCK).together(book -> {
            book.read(open -> {
                open.papers().each(papers::add);
                return Validated.valid(true);
            }).orElseThrow();
            book.write(ReworkTest::changed).orElseThrow();
            int same = 0;
            for (IssuedPaper paper : papers) {
                Validated<Rework> again = ReworkOffice.of(book).rework(paper.number());
                if (paper.series().kind() == PaperKind.CREDIT_NOTE) {
                    assertThat(again.problems()).extracting(Problem::message).singleElement().asString()
                            .contains("whose amounts are those of the invoice that it corrects");
                } else {
                    assertThat(again.problems()).as(paper.number()).isEmpty();
                    assertThat(again.orElseThrow().differences()).as(paper.number()).isEmpty();
                    same++;
                }
            }
            return Validated.valid(same);
        });

        assertThat(compared).isEqualTo(Validated.valid(29));
    }

    /** Every site lies 99 miles away now, and no agreement says anything any more. */
    private static Validated<Boolean> changed(Transaction open) {
        open.entries().sites().forEach(site -> open.register().change(new SiteEntry(site.id(), site.customer(),
                site.name(), site.storeNumber(), site.address(), site.taxPlace(),
                site.data().replaceFirst("\"miles\":[0-9.]+", "\"miles\":99"))).orElseThrow());
        open.entries().agreements().forEach(agreement -> open.register().change(
                new AgreementEntry(agreement.id(), agreement.number(), agreement.site(), "{}")).orElseThrow());
        return Validated.valid(true);
    }
}
