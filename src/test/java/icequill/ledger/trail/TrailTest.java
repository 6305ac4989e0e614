package icequill.ledger.trail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.ledger.Book;
import icequill.ledger.BookChild;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Entered;
import icequill.ledger.Opening;
import icequill.ledger.Transaction;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.Origin;
import icequill.ledger.store.Author;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.store.Step;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever changes the book leaves a row of the trail, in the same transaction. */
@Tag("wide")
class TrailTest {

    private static final LocalDate DAY = LocalDate.of(2026, 8, 1);
    private static final List<String> ENTERED = List.of("BOOK book TAKEN_OVER", "CUSTOMER oven-group ADDED",
            "CUSTOMER crumb-lane ADDED", "SITE crumb-lane-bakery ADDED", "MACHINE crumb-lane-bakery/flaker ADDED",
            "VISIT spring-cleaning RECORDED");

    @TempDir
    private Path shop;

    @ParameterizedTest
    @EnumSource
    void eachKindOfChange_leavesItsRow(Database database) {
        try (Book book = Opening.open(database.place(shop), Books.CLOCK, new Author("ann", "north")).orElseThrow()) {
            Entered.all(book);
            assertThat(told(book)).isEqualTo(ENTERED);

            book.write(transaction -> transaction.register().change(Entered.group(30))).orElseThrow();
            book.write(transaction -> transaction.register().change(renamed())).orElseThrow();
            book.write(transaction -> transaction.register().change(descaled())).orElseThrow();
            book.write(transaction -> transaction.register().change(longer())).orElseThrow();
            Books.issue(book, Books.INVOICES, Origin.ofVisit("crumb-lane", "crumb-lane-bakery", "spring-cleaning"), 1)
                    .orElseThrow();
            done(book, transaction -> transaction.register().backdated("INV-2026-00001", "left in the van"));
            book.write(transaction -> transaction.register().record(callback())
                    .then(recorded -> transaction.register().withdraw("callback", "twice recorded"))).orElseThrow();
            book.write(transaction -> transaction.erasure().forget("crumb-lane", DAY)).orElseThrow();

            assertThat(told(book).subList(6, 19)).containsExactly("CUSTOMER oven-group CHANGED",
                    "SITE crumb-lane-bakery CHANGED", "MACHINE crumb-lane-bakery/flaker CHANGED",
                    "VISIT spring-cleaning CHANGED", "PAPER INV-2026-00001 ISSUED", "PAPER INV-2026-00001 BACKDATED",
                    "VISIT callback RECORDED", "VISIT callback WITHDRAWN", "CUSTOMER crumb-lane FORGOTTEN",
                    "SITE crumb-lane-bakery FORGOTTEN", "MACHINE crumb-lane-bakery/flaker FORGOTTEN",
                    "VISIT spring-cleaning FORGOTTEN", "VISIT callback FORGOTTEN");
            assertThat(rows(book)).allSatisfy(row -> assertThat(List.of(row.who(), row.office(), row.at()))
                    .containsExactly("ann", "north", Instant.parse("2026-05-14T16:00:00Z")));
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void change_isToldBeforeAndAfter(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);
            book.write(transaction -> transaction.register().change(Entered.group(30))).orElseThrow();

            TrailRow row = rows(book).getLast();
            assertThat(row.before().data().orElseThrow()).contains("\"paymentDays\":20", "\"name\":\"Oven Group\"",
                    "\"certificates\":[{");
            assertThat(row.after().data().orElseThrow())
                    .isEqualTo(row.before().data().orElseThrow().replace("\"paymentDays\":20", "\"paymentDays\":30"));
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatChangesNothingOrIsRefused_leavesNoRow(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);

            book.write(transaction -> transaction.register().change(Entered.group())).orElseThrow();
            assertThat(book.write(transaction -> transaction.register().add(Entered.group())).problems()).hasSize(1);
            assertThat(book.write(transaction -> transaction.register().change(Entered.group(30))
                    .then(changed -> Validated.<Boolean>invalid(new Problem(Code.MISSING, Place.NOWHERE, "no", "yes"))))
                    .problems()).hasSize(1);

            assertThat(told(book)).isEqualTo(ENTERED);
        }
    }

    @ParameterizedTest
    @EnumSource
    void forgottenCustomer_goesFromTheTrailWhoseSealsStay(Database database) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            Entered.all(book);
            book.write(transaction -> transaction.register().change(renamed())).orElseThrow();
            book.write(transaction -> transaction.register().record(callback())
                    .then(recorded -> transaction.register().withdraw("callback", "Mrs. Baker says no"))).orElseThrow();
            book.write(transaction -> transaction.register().change(longer())).orElseThrow();
            TrailHead before = Books.audit(book).trail();

            book.write(transaction -> transaction.erasure().forget("crumb-lane", DAY)).orElseThrow();

            List<String> left = connections.reader().withHandle(handle -> handle
                    .createQuery("SELECT v.data FROM trail_value v JOIN trail t ON t.number = v.trail_number"
                            + " WHERE t.entry <> 'oven-group'")
                    .mapTo(String.class).list());
            assertThat(String.join("\n", left)).doesNotContain("Bakery", "Café", "Crumb Lane", "Millbrook", "ap@",
                    "V-3310", "RC-1", "Baker", "rear", "4711");
            assertThat(left).hasSize(6);
            assertThat(rows(book)).filteredOn(row -> row.before().isGone() || row.after().isGone())
                    .extracting(TrailRow::number).containsExactly(3L, 4L, 5L, 6L, 7L, 8L, 9L, 10L, 11L, 12L, 13L, 14L,
                            15L);
            assertThat(rows(book).get((int) before.rows() - 1).seal()).isEqualTo(before.seal());
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    /** His site went to another customer, who is not forgotten. */
    @ParameterizedTest
    @EnumSource
    void siteThatMoved_isToldAsItIsNow(Database database) {
        SiteEntry site = Entered.site();
        SiteEntry moved = new SiteEntry(site.id(), "oven-group", "Roastery", site.storeNumber(), Entered.OFFICE,
                site.taxPlace(), "{}");
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);
            book.write(transaction -> transaction.register().change(moved)).orElseThrow();

            book.write(transaction -> transaction.erasure().forget("crumb-lane", DAY)).orElseThrow();

            TrailRow row = rows(book).get(6);
            assertThat(row.before().isGone()).isTrue();
            assertThat(row.after().data().orElseThrow()).contains("Roastery");
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            UPDATE trail SET who = 'bea' | the trail never
            DELETE FROM trail            | the trail never
            UPDATE trail_value SET data = '' | the trail never changes
            DELETE FROM trail_value      | goes only when its customer is forgotten
            """)
    void database_letsNothingOfItChange(String statement, String refusal) {
        for (Database database : Database.values()) {
            BookPlace place = database.place(shop.resolve(database.name()));
            try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
                Entered.all(book);

                assertThatThrownBy(() -> connections.writer().useHandle(handle -> handle.execute(statement)))
                        .hasStackTraceContaining(refusal);
            }
        }
    }

    /** What it is by now stays in the trail, and so does what was of others. */
    @ParameterizedTest
    @ValueSource(strings = {"SELECT max(number) FROM trail", "SELECT number FROM trail WHERE entry = 'oven-group'"})
    void database_letsNothingGoButOfTheForgotten(String rows) {
        for (Database database : Database.values()) {
            BookPlace place = database.place(shop.resolve(database.name()));
            try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
                Entered.all(book);
                book.write(transaction -> transaction.erasure().forget("crumb-lane", DAY)).orElseThrow();

                assertThatThrownBy(() -> connections.writer().useHandle(
                        handle -> handle.execute("DELETE FROM trail_value WHERE trail_number IN (" + rows + ")")))
                        .hasStackTraceContaining("goes only when its customer is forgotten");
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void rows_areFoundByEntryDayAndUser(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);

            assertThat(found(book, Optional.of("crumb-lane-bakery"), Optional.empty(), Optional.empty()))
                    .containsExactly("crumb-lane-bakery/flaker", "crumb-lane-bakery");
            assertThat(found(book, Optional.of("crumb-lane-bakery/flaker"), Optional.empty(), Optional.empty()))
                    .containsExactly("crumb-lane-bakery/flaker");
            assertThat(found(book, Optional.of("crumb_lane-bakery"), Optional.empty(), Optional.empty())).isEmpty();
            assertThat(found(book, Optional.empty(), Optional.of("2026-05-14T16:00:00Z"),
                    Optional.of("2026-05-14T16:00:01Z"))).hasSize(6);
            assertThat(found(book, Optional.empty(), Optional.of("2026-05-14T16:00:01Z"), Optional.empty())).isEmpty();
            assertThat(found(book, Optional.empty(), Optional.empty(), Optional.of("2026-05-14T16:00:00Z"))).isEmpty();
            assertThat(Books.read(book, reading -> reading.trail().find(new TrailQuestion(Optional.empty(),
                    Optional.empty(), Optional.empty(), Optional.of("bea"), 9)))).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"SQLITE, BEFORE_COMMIT", "POSTGRESQL, COMMITTED"})
    void haltedProcess_leavesRowAndTrailAlike(Database database, Step step) throws Exception {
        assertAlike(database, step);
    }

    @Tag("long")
    @ParameterizedTest
    @CsvSource({"SQLITE, COMMITTED", "POSTGRESQL, BEFORE_COMMIT"})
    void haltedProcessElsewhere_leavesRowAndTrailAlike(Database database, Step step) throws Exception {
        assertAlike(database, step);
    }

    private void assertAlike(Database database, Step step) throws Exception {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            Entered.all(book);
        }

        assertThat(BookChild.start(place, "change", step.name()).waitFor()).isEqualTo(7);

        try (Book book = Books.open(place)) {
            boolean isStored = step == Step.COMMITTED;
            assertThat(book.read(reading -> reading.entries().customer("oven-group")).orElseThrow())
                    .isEqualTo(isStored ? Entered.group(45) : Entered.group());
            assertThat(told(book)).hasSize(isStored ? 7 : 6);
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void twoProcessesAtOnce_leaveOneTrail(Database database) throws Exception {
        assertOneTrail(database);
    }

    @Tag("long")
    @ParameterizedTest
    @EnumSource(names = "POSTGRESQL")
    void twoProcessesAtOnceOnAServer_leaveOneTrail(Database database) throws Exception {
        assertOneTrail(database);
    }

    private void assertOneTrail(Database database) throws Exception {
        BookPlace place = database.place(shop);
        Books.open(place).close();

        Process one = BookChild.start(place, "add", "ann", "20");
        Process other = BookChild.start(place, "add", "bea", "20");
        assertThat(List.of(one.waitFor(), other.waitFor())).containsExactly(0, 0);

        try (Book book = Books.open(place)) {
            List<TrailRow> rows = rows(book);
            assertThat(rows).filteredOn(row -> row.kind().equals("CUSTOMER")).extracting(TrailRow::who)
                    .hasSize(40).filteredOn("ann"::equals).hasSize(20);
            assertThat(rows).extracting(TrailRow::number).isSorted().hasSize(41).endsWith(41L);
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    private static void done(Book book, Consumer<Transaction> work) {
        book.write(transaction -> {
            work.accept(transaction);
            return Validated.valid(true);
        }).orElseThrow();
    }

    private static List<String> found(Book book, Optional<String> entry, Optional<String> from,
            Optional<String> until) {
        return Books.read(book, reading -> reading.trail().find(new TrailQuestion(entry, from.map(Instant::parse),
                until.map(Instant::parse), Optional.empty(), 9))).stream().map(TrailRow::entry).toList();
    }

    /** The oldest first. */
    private static List<TrailRow> rows(Book book) {
        return Books.read(book, reading -> reading.trail().find(new TrailQuestion(Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), 100))).reversed();
    }

    private static List<String> told(Book book) {
        return rows(book).stream().map(row -> row.kind() + " " + row.entry() + " " + row.event()).toList();
    }

    private static SiteEntry renamed() {
        SiteEntry site = Entered.site();
        return new SiteEntry(site.id(), site.customer(), "Bakery and Café", site.storeNumber(), site.address(),
                site.taxPlace(), site.data());
    }

    private static MachineEntry descaled() {
        MachineEntry machine = Entered.machine();
        return new MachineEntry(machine.site(), machine.id(), machine.model(), machine.serial(), machine.installed(), 0,
                "{\"condition\":\"clean\"}");
    }

    private static VisitEntry longer() {
        VisitEntry visit = Entered.visit();
        return new VisitEntry(visit.id(), visit.site(), visit.began(), visit.ended().plusMinutes(10),
                visit.purchaseOrder(), false, visit.data());
    }

    private static VisitEntry callback() {
        VisitEntry visit = Entered.visit();
        return new VisitEntry("callback", visit.site(), visit.began().plusDays(1), visit.ended().plusDays(1),
                Optional.empty(), false, "{}");
    }
}
