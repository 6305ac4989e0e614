package icequill.ledger.store;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.sql.SQLException;
import java.util.Optional;
import org.sqlite.SQLiteException;

/** What went wrong in the database or with a file, in words for whoever sits before the screen. */
public final class SqlErrors {

    private static final String SPACE = "free space on the disk, and a folder that may be written to; nothing was changed";
    private static final int SQLITE_PRIMARY_CODE = 0xff;

    /**
     * Something that may fail in the database or with a file.
     *
     * @param <T> what it results in
     */
    @FunctionalInterface
    public interface Work<T> {
        Validated<T> run() throws IOException;
    }

    private SqlErrors() {
    }

    /** Runs the work; what was in its way becomes a problem, a fault of the program stays one. */
    public static <T> Validated<T> caught(BookPlace book, Work<T> work) {
        try {
            return work.run();
        } catch (IOException failed) {
            return Validated.invalid(ofFile(failed));
        } catch (RuntimeException failed) {
            return Validated.invalid(of(failed, book).orElseThrow(() -> failed));
        }
    }

    /** The problem that an exception means; empty where it is a fault of the program. */
    public static Optional<Problem> of(Throwable thrown, BookPlace book) {
        Place place = Place.ofFile(book.text());
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            Optional<Problem> problem = switch (cause) {
            case DamagedRow row ->
                problem(Code.BOOK_DAMAGED, place, "a row of the book cannot be read: " + row.getMessage(),
                        "what icequill audit says of it");
            case BookInUse inUse -> Optional.of(inUse.problem(place));
            case SQLiteException sqlite -> ofSqlite(sqlite, place);
            case SQLException sql -> ofServer(sql, place);
            case IOException io -> Optional.of(ofFile(io));
            default -> Optional.empty();
            };
            if (problem.isPresent()) {
                return problem;
            }
        }
        return Optional.empty();
    }

    /** Whether a database refused a statement for what was in it: by SQLite's code 19 and 20, or the server's classes 22, 23 and 42. */
    public static boolean isOfData(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException sqlite) {
                int code = sqlite.getResultCode().code & SQLITE_PRIMARY_CODE;
                return code == 19 || code == 20;
            }
            if (cause instanceof SQLException sql) {
                return String.valueOf(sql.getSQLState()).matches("(?:22|23|42).*");
            }
        }
        return false;
    }

    static Problem ofFile(IOException failed) {
        String file = failed instanceof FileSystemException named && named.getFile() != null ? named.getFile() : "";
        String what = failed instanceof AccessDeniedException
                ? "may not be written to"
                : "cannot be read or written: " + failed;
        return new Problem(Code.CANNOT_WRITE, Place.ofFile(file), what, SPACE);
    }

    private static Optional<Problem> ofSqlite(SQLiteException thrown, Place place) {
        // The lower eight bits are the primary code (sqlite.org/rescode.html).
        return switch (thrown.getResultCode().code & SQLITE_PRIMARY_CODE) {
        case 5, 6 -> problem(Code.BOOK_IN_USE, place, "another program is writing in the book's database",
                "close that program, and try again");
        case 8 -> problem(Code.CANNOT_WRITE, place, "the book's database may not be written to", SPACE);
        case 10 -> problem(Code.CANNOT_WRITE, place,
                "the disk does not read or write the book's database: " + thrown.getMessage(), SPACE);
        case 13 -> problem(Code.CANNOT_WRITE, place, "the disk is full", SPACE);
        case 14 -> problem(Code.CANNOT_WRITE, place, "the book's database cannot be opened", SPACE);
        case 11, 26 -> damaged(place, thrown);
        default -> Optional.empty();
        };
    }

    /** By the classes of SQLSTATE (PostgreSQL documentation, appendix "Error Codes"). */
    private static Optional<Problem> ofServer(SQLException thrown, Place place) {
        String state = String.valueOf(thrown.getSQLState());
        return switch (state) {
        case "53100" -> problem(Code.CANNOT_WRITE, place, "the server's disk is full", SPACE);
        case "25006", "42501" -> problem(Code.CANNOT_WRITE, place,
                "this user may not write in the book: " + thrown.getMessage(), SPACE);
        case "XX001", "XX002" -> damaged(place, thrown);
        default -> state.startsWith("08") || state.startsWith("57P") || state.startsWith("28") || state.equals("3D000")
                ? problem(Code.CANNOT_WRITE, place, "the server of the book does not answer: " + thrown.getMessage(),
                        "the server running, and the address, user and password in shop.yaml right")
                : Optional.empty();
        };
    }

    private static Optional<Problem> damaged(Place place, SQLException thrown) {
        return problem(Code.BOOK_DAMAGED, place, "the book's database is damaged: " + thrown.getMessage(),
                "keep the file as it is for a specialist, and restore the last backup into another folder");
    }

    private static Optional<Problem> problem(Code code, Place place, String message, String allowed) {
        return Optional.of(new Problem(code, place, message, allowed));
    }
}
