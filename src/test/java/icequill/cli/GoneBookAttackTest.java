package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The book is not where it should be: that is said, and no other is begun. */
class GoneBookAttackTest {

    @TempDir
    private Path other;

    @Test
    void databaseThatIsGone_isSaidByWhateverAsks() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        shop.issue("late-call", "2026-05-14");
        Files.delete(shop.folder().resolve("book/book.sqlite"));

        for (String line : new String[]{"audit", "find crumb", "show INV-2026-00001", "invoice issue late-call",
                "customer list",
                "visit add " + shop.folder().resolve("visits/late-call.yaml")}) {
            assertThat(shop.problems(line.split(" ", -1))).as(line).singleElement().asString()
                    .contains("the book's database is empty or gone, but there are issued papers in");
        }
        assertThat(shop.folder().resolve("book/book.sqlite")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"book: {databse: \"jdbc:postgresql://server/shop\"} | databse | database",
            "book: {ofice: north} | ofice | office", "bok: {office: north} | bok | book", "Book: {} | Book | book"})
    void misspeltKey_doesNotQuietlyMeanAnotherBook(String text, String wrong, String right) throws IOException {
        BookShop shop = BookShop.empty(other.resolve("shop"), Database.SQLITE);
        Files.writeString(shop.folder().resolve("shop.yaml"), "\n" + text + "\n", StandardOpenOption.APPEND);

        assertThat(shop.problems("audit"))
                .anySatisfy(problem -> assertThat(problem).contains("shop.yaml:", wrong, right));
        assertThat(shop.problems("visit", "add", shop.folder().resolve("visits/late-call.yaml").toString()))
                .isNotEmpty();
        assertThat(shop.folder().resolve("book")).doesNotExist();
    }
}
