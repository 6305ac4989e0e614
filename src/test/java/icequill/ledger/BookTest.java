package icequill.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Checked;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book does what its door says, on the database that every shop has. */
class BookTest {

    @TempDir
    private Path shop;

    @Test
    void issuedPaper_hasTheNextNumberAndIsFound() {
        try (Book book = Books.open(BookPlace.inShop(shop))) {
            IssuedPaper first = Books.issue(book, 1).orElseThrow();
            IssuedPaper second = Books.issue(book, 2).orElseThrow();

            assertThat(first.number()).isEqualTo("INV-2026-00001");
            assertThat(second.previousSeal()).isEqualTo(first.seal());
            assertThat(book.read(reading -> Checked.sound(reading.papers().find("crumb 4711", 5))).orElseThrow())
                    .containsExactly(first);
            assertThat(book.read(reading -> reading.papers().pdf(first.number())).orElseThrow())
                    .isEqualTo(Books.pdf(new Numbered(first.number(), first.previousSeal()), 1));
        }
    }
}
