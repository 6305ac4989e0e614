package icequill.ledger.entries;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Book;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Entered;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.party.BillTo;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Customers, sites, machines and visits in a book. */
class RegisterTest {

    @TempDir
    private Path shop;

    @ParameterizedTest
    @EnumSource
    void whatIsEntered_isReadBack(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);

            assertThat(Books.read(book, reading -> reading.entries().customers()))
                    .containsExactly(Entered.bakery(), Entered.group());
            assertThat(Books.read(book, reading -> reading.entries().sitesOf("crumb-lane")))
                    .containsExactly(Entered.site());
            assertThat(Books.read(book, reading -> reading.entries().machinesOf("crumb-lane-bakery")))
                    .containsExactly(Entered.machine());
            assertThat(Books.read(book, reading -> reading.entries().visitsAt("crumb-lane-bakery")))
                    .containsExactly(Entered.visit());
        }
    }

    @ParameterizedTest
    @EnumSource
    void billTo_isThatOfTheDay(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);
            CustomerEntry bakery = book.read(reading -> reading.entries().customer("crumb-lane")).orElseThrow();

            assertThat(List.of(LocalDate.of(2026, 6, 30), LocalDate.of(2026, 7, 1)).stream()
                    .map(day -> bakery.customer().billTo().at(day).map(BillTo::name).orElseThrow()))
                    .containsExactly("Crumb Lane Bakery", "Oven Group");
        }
    }

    @ParameterizedTest
    @EnumSource
    void changedEntries_takeThePlaceOfTheOld(Database database) {
        SiteEntry moved = new SiteEntry("crumb-lane-bakery", "oven-group", "Bakery and café", Optional.empty(),
                Entered.OFFICE, Optional.empty(), "{}");
        MachineEntry renewed = new MachineEntry("crumb-lane-bakery", "flaker", "Cube ice machine", Optional.empty(),
                Optional.empty(), 0, "{}");
        CustomerEntry alone = CustomerEntry.of("crumb-lane", Entered.group().customer());
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);
            book.write(transaction -> transaction.register().change(moved)
                    .then(done -> transaction.register().change(renewed))
                    .then(done -> transaction.register().change(alone))).orElseThrow();

            assertThat(Books.read(book, reading -> reading.entries().sites())).containsExactly(moved);
            assertThat(Books.read(book, reading -> reading.entries().machines())).containsExactly(renewed);
            assertThat(book.read(reading -> reading.entries().customer("crumb-lane")).orElseThrow()).isEqualTo(alone);
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatWouldBeUntrue_isRefused(Database database) {
        SiteEntry nobodys = new SiteEntry("attic", "nobody", "Attic", Optional.empty(), Entered.LANE, Optional.empty(),
                "{}");
        AgreementEntry agreement = new AgreementEntry("crumb-lane-plan", "A-2026-001", "crumb-lane-bakery", "{}");
        CustomerEntry circle = new CustomerEntry("oven-group", Entered.group().customer(), Optional.of("crumb-lane"),
                Optional.empty());
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);

            assertThat(refused(book.write(transaction -> transaction.register().add(Entered.group()))))
                    .containsExactly("ALREADY_EXISTS the book has a customer \"oven-group\" already");
            assertThat(refused(book.write(transaction -> transaction.register().add(nobodys))))
                    .containsExactly("UNKNOWN_NAME the book has no customer \"nobody\"");
            assertThat(refused(book.write(transaction -> transaction.register().change(nobodys)))).containsExactly(
                    "UNKNOWN_NAME the book has no site \"attic\"", "UNKNOWN_NAME the book has no customer \"nobody\"");
            assertThat(refused(book.write(transaction -> transaction.register().change(circle))))
                    .containsExactly("NOT_ALLOWED customer \"oven-group\" would be a parent of itself");
            assertThat(refused(book.write(transaction -> transaction.register().add(Entered.machine()))))
                    .containsExactly("ALREADY_EXISTS the book has a machine at crumb-lane-bakery \"flaker\" already");
            assertThat(refused(book.write(transaction -> transaction.register().record(Entered.visit()))))
                    .containsExactly("ALREADY_EXISTS the book has a visit \"spring-cleaning\" already");
            assertThat(refused(book.write(transaction -> transaction.register().add(agreement)
                    .then(done -> transaction.register().add(agreement)))))
                    .contains("ALREADY_EXISTS the book has an agreement \"crumb-lane-plan\" already");
        }
    }

    @ParameterizedTest
    @EnumSource
    void billedVisit_isNotRecordedAnew(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);
            assertThat(book.write(transaction -> transaction.register().change(Entered.visit())).problems()).isEmpty();
            Books.issue(book, Books.INVOICES,
                    Origin.ofVisit("crumb-lane", "crumb-lane-bakery", "spring-cleaning"), 1).orElseThrow();

            assertThat(refused(book.write(transaction -> transaction.register().change(Entered.visit()))))
                    .containsExactly("NOT_ALLOWED visit \"spring-cleaning\" was billed as INV-2026-00001");
            assertThat(Books.read(book, reading -> reading.papers().ofVisit("spring-cleaning")))
                    .extracting(IssuedPaper::number).containsExactly("INV-2026-00001");
        }
    }

    @ParameterizedTest
    @EnumSource
    void forgottenCustomer_leavesNothingPersonalButHisPapers(Database database) {
        LocalDate day = LocalDate.of(2026, 8, 1);
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            Entered.all(book);
            Books.issue(book, Books.INVOICES,
                    Origin.ofVisit("crumb-lane", "crumb-lane-bakery", "spring-cleaning"), 1).orElseThrow();
            book.write(transaction -> transaction.register().record(callback())
                    .then(done -> transaction.register().withdraw("callback", "Mrs. Baker of Crumb Lane says no")))
                    .orElseThrow();
            book.write(transaction -> {
                transaction.formDrafts().keep("begun", "visit", Optional.of("crumb-lane-bakery"), "",
                        "{\"askedBy\":[\"Baker\"]}");
                return Validated.valid(true);
            }).orElseThrow();
            Entered.accepted(book, 1);
            assertThat(Books.read(book, reading -> reading.entries().drafts("visit"))).hasSize(1);
            Withdrawal before = withdrawal(book);
            book.write(transaction -> transaction.erasure().forget("crumb-lane", day)).orElseThrow();

            assertThat(withdrawal(book)).isEqualTo(new Withdrawal(before.at(), ""));
            assertThat(refused(book.write(transaction -> transaction.register().change(callback()))))
                    .containsExactly("NOT_ALLOWED visit \"callback\" was withdrawn: its customer was forgotten, and the"
                            + " reason with him");
            CustomerEntry forgotten = book.read(reading -> reading.entries().customer("crumb-lane")).orElseThrow();
            assertThat(forgotten.forgotten()).contains(day);
            String left = connections.reader().withHandle(handle -> {
                StringBuilder all = new StringBuilder();
                for (String table : List.of("customer", "customer_bill_to", "customer_certificate", "customer_contact",
                        "site", "machine",
                        "visit", "visit_withdrawn", "form_draft", "life_step")) {
                    handle.createQuery("SELECT * FROM " + table).mapToMap().forEach(row -> {
                        if (!row.containsValue("oven-group")) {
                            all.append(row.values());
                        }
                    });
                }
                return all.toString();
            });
            assertThat(left).doesNotContain("Bakery", "Crumb Lane", "Millbrook", "ap@", "V-3310", "RC-1", "Baker",
                    "555", "after a call",
                    "rear",
                    "4711");
            assertThat(Books.found(book, "crumb millbrook")).extracting(IssuedPaper::number)
                    .containsExactly("INV-2026-00001");
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    private static VisitEntry callback() {
        VisitEntry visit = Entered.visit();
        return new VisitEntry("callback", visit.site(), visit.began().plusDays(1), visit.ended().plusDays(1),
                Optional.empty(), false, "{}");
    }

    private static Withdrawal withdrawal(Book book) {
        return book.read(reading -> Validated.valid(reading.entries().withdrawal("callback").orElseThrow()))
                .orElseThrow();
    }

    private static List<String> refused(Validated<?> result) {
        return result.problems().stream().map(problem -> problem.code() + " " + problem.message()).toList();
    }
}
