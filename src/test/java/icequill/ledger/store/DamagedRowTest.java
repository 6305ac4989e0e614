package icequill.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Book;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Entered;
import icequill.ledger.Reading;
import icequill.ledger.Tampering;
import icequill.problem.Code;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whoever reads what no program wrote is told the table, the row and the column. */
class DamagedRowTest {

    @TempDir
    private Path shop;

    /** A cell that somebody changed with SQL, who asks for it, and what he is told. */
    private record Changed(String change, Function<Reading, Object> asks, String told) {}

    private static final List<Changed> CHANGED = List.of(
            new Changed("UPDATE customer SET accepted_on = '2026-02-30' WHERE id = 'crumb-lane'",
                    open -> open.entries().customers(),
                    "customer \"crumb-lane\": accepted_on is \"2026-02-30\", which is no day"),
            new Changed("UPDATE customer SET accepted_on = '2026-02-03', accepted_paper = NULL WHERE id = 'crumb-lane'",
                    open -> open.entries().customer("crumb-lane"), "customer \"crumb-lane\": accepted_paper is empty"),
            new Changed("UPDATE visit SET began = 'Tuesday'", open -> open.entries().visitsAt("crumb-lane-bakery"),
                    "visit \"spring-cleaning\": began is \"Tuesday\", which is no moment"),
            new Changed("UPDATE customer SET accepted_on = NULL; UPDATE customer_contact SET purposes = 'BILLS WINE'",
                    open -> open.entries().customers(), "purposes is \"WINE\", which is no Purpose"),
            new Changed("UPDATE payment_share SET counts_from = ''", open -> open.accounts().payments(),
                    "payment_share \"A-1\": counts_from is \"\", which is no day"),
            new Changed("UPDATE paper SET issued_at = '2026-05-14'", open -> open.papers().show("INV-2026-00001"),
                    "paper \"INV-2026-00001\": issued_at is \"2026-05-14\", which is no moment"));

    @ParameterizedTest
    @EnumSource
    void cell_isNamed(Database database) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            Entered.all(book);
            Books.issue(book, 1).orElseThrow();
            Entered.paid(book);
        }
        for (Changed changed : CHANGED) {
            try (Connections connections = Connections.to(place)) {
                connections.writer().useHandle(handle -> {
                    if (database == Database.POSTGRESQL) {
                        handle.execute("SET session_replication_role = replica");
                    } else {
                        Tampering.TRIGGERS.forEach(trigger -> handle.execute("DROP TRIGGER IF EXISTS " + trigger));
                    }
                    handle.createScript(changed.change()).execute();
                });
            }
            try (Book book = Books.open(place)) {
                assertThat(book.read(open -> Validated.valid(changed.asks().apply(open))).problems()).singleElement()
                        .satisfies(problem -> {
                            assertThat(problem.code()).isEqualTo(Code.BOOK_DAMAGED);
                            assertThat(problem.message()).contains(changed.told());
                        });
            }
        }
    }
}
