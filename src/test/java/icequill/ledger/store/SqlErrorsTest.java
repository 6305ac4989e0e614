package icequill.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Code;
import icequill.problem.Problem;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What databases and disks report, in words. */
class SqlErrorsTest {

    private static final BookPlace SERVER = new BookPlace.OnServer(
            "jdbc:postgresql://books.example/shop?user=a&password=secret",
            Path.of("papers"));

    /** Codes by sqlite.org/rescode.html. */
    @ParameterizedTest
    @CsvSource({"SQLITE_BUSY, BOOK_IN_USE", "SQLITE_LOCKED, BOOK_IN_USE", "SQLITE_READONLY, CANNOT_WRITE",
            "SQLITE_READONLY_DIRECTORY, CANNOT_WRITE", "SQLITE_IOERR_WRITE, CANNOT_WRITE", "SQLITE_FULL, CANNOT_WRITE",
            "SQLITE_CANTOPEN, CANNOT_WRITE", "SQLITE_CORRUPT, BOOK_DAMAGED", "SQLITE_NOTADB, BOOK_DAMAGED"})
    void sqliteCodes_areProblems(SQLiteErrorCode code, Code expected) {
        assertThat(SqlErrors.of(new SQLiteException("it says", code), SERVER).map(Problem::code)).contains(expected);
    }

    /** States by the PostgreSQL documentation, appendix "Error Codes". */
    @ParameterizedTest
    @CsvSource({"53100, CANNOT_WRITE", "25006, CANNOT_WRITE", "42501, CANNOT_WRITE", "08006, CANNOT_WRITE",
            "57P01, CANNOT_WRITE", "28P01, CANNOT_WRITE", "3D000, CANNOT_WRITE", "XX001, BOOK_DAMAGED"})
    void serverStates_areProblems(String state, Code expected) {
        Problem problem = SqlErrors.of(new SQLException("it says", state), SERVER).orElseThrow();

        assertThat(problem.code()).isEqualTo(expected);
        assertThat(problem.text()).contains("jdbc:postgresql://books.example/shop").doesNotContain("secret");
    }

    @Test
    void files_areNamed() {
        assertThat(SqlErrors.ofFile(new AccessDeniedException("papers")).text())
                .startsWith("papers: may not be written to");
        assertThat(SqlErrors.ofFile(new FileSystemException("papers", null, "No space left on device")).text())
                .startsWith("papers: cannot be read or written").contains("No space left on device");
    }

    @Test
    void faultOfTheProgram_isNoProblem() {
        assertThat(SqlErrors.of(new IllegalStateException("a fault", new SQLException("syntax", "42601")), SERVER))
                .isEmpty();
    }
}
