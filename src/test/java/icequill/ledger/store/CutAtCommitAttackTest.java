package icequill.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Book;
import icequill.ledger.Books;
import icequill.ledger.CuttingProxy;
import icequill.ledger.Database;
import icequill.ledger.Opening;
import icequill.ledger.papers.IssuedPaper;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The connection to the server is cut at a COMMIT. What is told is what happened; there is no such moment in a book that is a file. */
@Tag("wide")
class CutAtCommitAttackTest {

    private static final Pattern ADDRESS = Pattern.compile("//[^:/]+:(\\d+)/");

    @TempDir
    private Path shop;

    @Test
    void cutBeforeTheAnswer_isFoundToBeStoredAndToldSo() throws IOException {
        BookPlace.OnServer direct = (BookPlace.OnServer) Database.POSTGRESQL.place(shop);
        try (CuttingProxy proxy = new CuttingProxy(port(direct)); Book book = open(direct, proxy)) {
            Books.issue(book, 1).orElseThrow();
            proxy.at(CuttingProxy.Cut.BEFORE_THE_ANSWER);

            assertThat(Books.issue(book, 2).orElseThrow().number()).isEqualTo("INV-2026-00002");
            assertThat(Books.issue(book, 3).orElseThrow().number()).isEqualTo("INV-2026-00003");
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @Test
    void cutBeforeTheServerHears_isFoundNotToBeStored() throws IOException {
        BookPlace.OnServer direct = (BookPlace.OnServer) Database.POSTGRESQL.place(shop);
        try (CuttingProxy proxy = new CuttingProxy(port(direct)); Book book = open(direct, proxy)) {
            Books.issue(book, 1).orElseThrow();
            proxy.at(CuttingProxy.Cut.BEFORE_THE_SERVER_HEARS);

            assertThat(Books.issue(book, 2).problems()).extracting(Problem::code, Problem::message)
                    .containsExactly(org.assertj.core.groups.Tuple.tuple(Code.CANNOT_WRITE,
                            "the connection was cut as the book was being written, and nothing was stored"));
            assertThat(Books.issue(book, 2).orElseThrow().number()).isEqualTo("INV-2026-00002");
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @Test
    void serverThatStaysAway_isSaidToHaveTheAnswer() throws IOException {
        BookPlace.OnServer direct = (BookPlace.OnServer) Database.POSTGRESQL.place(shop);
        try (CuttingProxy proxy = new CuttingProxy(port(direct)); Book book = open(direct, proxy)) {
            Books.issue(book, 1).orElseThrow();
            proxy.at(CuttingProxy.Cut.FOR_GOOD);

            Validated<IssuedPaper> second = Books.issue(book, 2);

            assertThat(second.problems()).extracting(Problem::code).containsExactly(Code.OUTCOME_UNKNOWN);
            assertThat(second.problems().getFirst().text()).contains("is not known yet").doesNotContain("nothing was");
        }
        try (Book book = Books.open(direct)) {
            assertThat(Books.audit(book).findings()).isEmpty();
            assertThat(Books.issue(book, 2).orElseThrow().number()).isEqualTo("INV-2026-00002");
        }
    }

    private static Book open(BookPlace.OnServer direct, CuttingProxy proxy) {
        String url = ADDRESS.matcher(direct.url()).replaceFirst("//127.0.0.1:" + proxy.port() + "/")
                + "&preferQueryMode=simple";
        return Opening
                .open(new BookPlace.OnServer(url, direct.papers()), Books.CLOCK, Books.AUTHOR,
                        LockWait.of(Duration.ofSeconds(2)))
                .orElseThrow();
    }

    private static int port(BookPlace.OnServer direct) {
        Matcher address = ADDRESS.matcher(direct.url());
        assertThat(address.find()).isTrue();
        return Integer.parseInt(address.group(1));
    }
}
