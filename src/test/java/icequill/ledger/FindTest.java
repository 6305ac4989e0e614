package icequill.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.find.PaperFilter;
import icequill.ledger.find.SearchKeys;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.Pdf;
import icequill.ledger.papers.PrintedPaper;
import icequill.money.Amounts;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.Monetary;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Finding issued papers. */
@Tag("wide")
class FindTest {

    @TempDir
    private Path shop;

    @ParameterizedTest
    @EnumSource
    void paper_isFoundByEachOfItsFacts(Database database) {
        try (Book book = filled(database)) {
            for (String text : List.of("INV-2026-00002", "inv-2026-00002", "00002", "José", "jose's grill", "grill",
                    "GRIL", "store 7", "no. 7", "Harbor", "14 Harbor Street", "12508", "PO-88/2", "po 88/2", "882",
                    "SN-9-b",
                    "sn9b", "1,250.00", "1250.00", "2026-06-02", "grill 1250.00", "harbor 2026-06-02 88/2")) {
                assertThat(numbers(book, text)).as(text).containsExactly("INV-2026-00002");
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyWord_mustBeThere(Database database) {
        try (Book book = filled(database)) {
            for (String text : List.of("grill crumb", "grill 100.00", "1250.00 2026-06-01", "crumb 88/2", "harbr",
                    "INV-2026-00009", "r", "")) {
                assertThat(numbers(book, text)).as(text).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void papers_comeNewestFirstAndNoMoreThanAsked(Database database) {
        try (Book book = filled(database)) {
            assertThat(numbers(book, "crumb")).containsExactly("INV-2026-00004", "INV-2026-00003", "INV-2026-00001");
            assertThat(Books.read(book, reading -> reading.papers().find("street", PaperFilter.NONE, 2)))
                    .extracting(IssuedPaper::number).containsExactly("INV-2026-00004", "INV-2026-00003");
            assertThat(Books.read(book, reading -> reading.papers().find("2026-06-01", PaperFilter.NONE, 2)))
                    .extracting(IssuedPaper::number).containsExactly("INV-2026-00004", "INV-2026-00003");
        }
    }

    /** The 7 of a house and the 7 of an order are the same word, in different places. */
    @ParameterizedTest
    @EnumSource
    void word_mayBeOfThePaperOrOfWhereItWent(Database database) {
        try (Book book = filled(database)) {
            issue(book, facts("Crumb Lane Bakery", "12", "4 Crumb Street, Millbrook", "7", "SN-1", "1.00",
                    "2026-06-03"));

            assertThat(numbers(book, "7")).containsExactly("INV-2026-00005", "INV-2026-00002");
            assertThat(numbers(book, "street 7")).containsExactly("INV-2026-00005", "INV-2026-00002");
            assertThat(numbers(book, "4 7")).containsExactly("INV-2026-00005");
        }
    }

    @ParameterizedTest
    @EnumSource
    void longQuestion_isTakenWordByWord(Database database) {
        try (Book book = filled(database)) {
            String all = "José's Grill Store No. 7 14 Harbor Street Fernhill 12508 88/2 SN-9-b 1250.00 2026-06-02 ";

            assertThat(numbers(book, all)).containsExactly("INV-2026-00002");
            assertThat(numbers(book, all + "Millbrook")).isEmpty();
        }
    }

    private Book filled(Database database) {
        Book book = Books.open(database.place(shop));
        SearchKeys crumb = facts("Crumb Lane Bakery", "Store 12", "4 Crumb Street, Millbrook 12545", "PO-4711", "SN-8",
                "100.00", "2026-06-01");
        issue(book, crumb);
        issue(book, facts("José's Grill", "Store No. 7", "14 Harbor Street, Fernhill 12508", "PO-88/2", "SN-9-b",
                "1250.00", "2026-06-02"));
        issue(book, crumb);
        issue(book, crumb);
        return book;
    }

    private static SearchKeys facts(String customer, String store, String address, String order, String serial,
            String amount, String day) {
        return new SearchKeys(customer, store, address, Optional.of(order), List.of(serial),
                List.of(Amounts.of(new BigDecimal(amount), Monetary.getCurrency("USD"))),
                List.of(LocalDate.parse(day)));
    }

    private static void issue(Book book, SearchKeys facts) {
        book.write(transaction -> transaction.issue(Books.INVOICES, Origin.NONE,
                numbered -> Validated
                        .valid(new PrintedPaper(facts.days().getFirst(), Optional.empty(), Optional.empty(), facts,
                                "{}", "", Pdf.of(Books.pdf(numbered, 1))))))
                .orElseThrow();
    }

    private static List<String> numbers(Book book, String text) {
        return Books.found(book, text).stream().map(IssuedPaper::number).toList();
    }
}
