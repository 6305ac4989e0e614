package icequill.office.billing;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.BookedPaper;
import icequill.ledger.Database;
import icequill.ledger.entries.SiteEntry;
import icequill.money.Amounts;
import icequill.office.care.RatesOffice;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A colleague changes in the book what a paper was just worked out from: the paper is not issued, and the person is told. */
@Tag("wide")
class ChangedMeanwhileAttackTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-21T16:00:00Z"), ZoneOffset.UTC);
    private static final IssueOptions WISH = new IssueOptions(LocalDate.of(2026, 5, 14), Optional.empty());

    @TempDir
    private Path folder;

    /** The call until 18:05 comes to 301.13; recorded anew until 20:05 it comes to more. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void visitRecordedAnewMeanwhile_isNotBilledAsItWas(Database database) throws IOException {
        Path shop = shop(database);
        Path visit = shop.resolve("visits/late-call.yaml");
        RecordOffice.of(shop, CLOCK).record(FormName.file(visit)).orElseThrow();
        PendingWrite<BookedPaper> first = VisitBilling.of(shop, CLOCK).pending("late-call", WISH).orElseThrow();
        Files.writeString(visit, Files.readString(visit).replace("limit: 400.00", "limit: 900.00").replace("18:05",
                "20:05"));
        String recorded = RecordOffice.of(shop, CLOCK).record(FormName.file(visit)).orElseThrow().summary();

        assertThat(first.done().problems()).extracting(Problem::code, Problem::message).containsExactly(
                org.assertj.core.groups.Tuple.tuple(Code.CHANGED_MEANWHILE,
                        "visit \"late-call\" was changed by somebody"
                                + " else while this was worked out, so nothing was stored"));
        BookedPaper issued = VisitBilling.of(shop, CLOCK).issue(new FormName.InBook("late-call"), WISH).orElseThrow();
        assertThat(issued.number()).isEqualTo("INV-2026-00001");
        assertThat(issued.gross().map(Amounts::plain)).contains("621.22");
        assertThat(recorded).contains("621.22");
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void siteChangedMeanwhile_isToldForVisitsQuotesAndPayments(Database database) throws IOException {
        Path shop = shop(database);
        IssueOffice office = IssueOffice.of(shop, CLOCK);
        RecordOffice.of(shop, CLOCK).record(FormName.file(shop.resolve("visits/late-call.yaml"))).orElseThrow();
        office.quote(FormName.file(shop.resolve("quotes/float-switch.yaml")), WISH).orElseThrow();
        Path agreement = shop.resolve("agreements/crumb-lane-bakery.yaml");
        office.installment(FormName.file(agreement), 1, WISH).orElseThrow();
        List<PendingWrite<BookedPaper>> waiting = List.of(
                VisitBilling.of(shop, CLOCK).pending("late-call", WISH).orElseThrow(),
                office.pendingQuote(FormName.file(shop.resolve("quotes/float-switch.yaml")), WISH).orElseThrow(),
                office.pendingInstallment(FormName.file(agreement), 2, WISH).orElseThrow());
        renameSites(shop);

        assertThat(waiting).allSatisfy(pending -> assertThat(pending.done().problems()).extracting(Problem::code)
                .containsExactly(Code.CHANGED_MEANWHILE));
        assertThat(VisitBilling.of(shop, CLOCK).issue(new FormName.InBook("late-call"), WISH).problems()).isEmpty();
    }

    /** A machine more in mid-term is shared over the payments that were not invoiced; one more invoice, and the shares are others. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void paymentInvoicedMeanwhile_theNextIsNotBilledAsItWas(Database database) throws IOException {
        Path shop = shop(database);
        IssueOffice office = IssueOffice.of(shop, Clock.fixed(Instant.parse("2026-12-30T16:00:00Z"), ZoneOffset.UTC));
        Path agreement = shop.resolve("agreements/hotel-fernhill.yaml");
        IssueOptions wish = new IssueOptions(LocalDate.of(2026, 12, 1), Optional.empty(),
                new Booking(Optional.empty(), true, false));
        PendingWrite<BookedPaper> waiting = office.pendingInstallment(FormName.file(agreement), 4, wish).orElseThrow();
        office.installment(FormName.file(agreement), 5, wish).orElseThrow();

        assertThat(waiting.done().problems()).extracting(Problem::code, Problem::message).containsExactly(
                org.assertj.core.groups.Tuple.tuple(Code.CHANGED_MEANWHILE,
                        "an invoice of A-2026-002 was changed by somebody"
                                + " else while this was worked out, so nothing was stored"));
        assertThat(office.installment(FormName.file(agreement), 4, wish).orElseThrow().number())
                .isEqualTo("INV-2026-00002");
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void addresseeChangedMeanwhile_isToldForAReissue(Database database) throws IOException {
        Path shop = shop(database);
        RecordOffice.of(shop, CLOCK).record(FormName.file(shop.resolve("visits/late-call.yaml"))).orElseThrow();
        VisitBilling.of(shop, CLOCK).issue(new FormName.InBook("late-call"), WISH).orElseThrow();
        CreditOffice credits = CreditOffice.of(shop, CLOCK);
        CreditOptions wish = new CreditOptions(List.of(), "Wrong addressee.", LocalDate.of(2026, 5, 20),
                Optional.of(new CreditOptions.Reissue(Optional.empty(), Optional.of(""), CreditOptions.Due.KEEP)));
        PendingWrite<List<BookedPaper>> waiting = credits.pending("INV-2026-00001", wish).orElseThrow();
        renameSites(shop);

        assertThat(waiting.done().problems()).extracting(Problem::code).containsExactly(Code.CHANGED_MEANWHILE);
        List<BookedPaper> papers = credits.credit("INV-2026-00001", wish).orElseThrow();
        assertThat(papers).extracting(BookedPaper::number).containsExactly("CN-2026-00001", "INV-2026-00002");
        assertThat(papers.get(0).replaces()).isEmpty();
        assertThat(papers.get(1).replaces()).contains("INV-2026-00001");
        CreditOptions again = new CreditOptions(List.of(), "Not done.", LocalDate.of(2026, 5, 21), Optional.empty());
        BookedPaper second = credits.credit("INV-2026-00002", again).orElseThrow().getFirst();
        assertThat(second.corrects()).contains("INV-2026-00002");
        assertThat(second.replaces()).as("a credit note gives back, and takes the place of nothing").isEmpty();
    }

    private void renameSites(Path shop) {
        assertThat(ShopBook.of(shop, CLOCK).write(open -> {
            for (SiteEntry site : open.entries().sites()) {
                open.register().change(new SiteEntry(site.id(), site.customer(), site.name(), site.storeNumber(),
                        site.address(), site.taxPlace(), site.data().replace("\"name\":\"", "\"name\":\"New ")))
                        .orElseThrow();
            }
            return Validated.valid(open);
        }).problems()).isEmpty();
    }

    private Path shop(Database database) throws IOException {
        Path shop = DemoShop.in(folder.resolve("shop"), database);
        if (database == Database.POSTGRESQL) {
            RatesOffice.of(shop, CLOCK).adopt(true).orElseThrow();
        }
        return shop;
    }
}
