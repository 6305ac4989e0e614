package icequill.ledger.entries;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.ledger.Book;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Entered;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.trail.Subject;
import icequill.ledger.trail.TrailRow;
import icequill.ledger.trail.TrailRows;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("wide")
class LifeStepsTest {

    @TempDir
    private Path shop;

    @ParameterizedTest
    @EnumSource
    void steps_comeBackInTheirOrderAndLeaveATrail(Database database) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            Entered.all(book);
            Entered.accepted(book, 1);
            Entered.accepted(book, 2);

            assertThat(Books.read(book, reading -> reading.entries().steps("QUOTE", "MQ-2026-00001")))
                    .containsExactly(Entered.step(1), Entered.step(2));
            assertThat(Books.read(book, reading -> reading.entries().steps("CALL", "MQ-2026-00001"))).isEmpty();
            assertThat(trail(connections)).containsExactly("QUOTE/MQ-2026-00001/1", "QUOTE/MQ-2026-00001/2");
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void stepOutOfItsOrder_isRefused(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);
            assertThatThrownBy(() -> Entered.accepted(book, 2)).hasMessageContaining("a step follows the last one");
            assertThat(Books.read(book, reading -> reading.entries().steps("QUOTE", "MQ-2026-00001"))).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void stepOnceNoted_isNeitherChangedNorTakenAway(Database database) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            Entered.all(book);
            Entered.accepted(book, 1);
            for (String change : List.of("UPDATE life_step SET dated = '2026-05-15'",
                    "UPDATE life_step SET said = '{}'", "UPDATE life_step SET personal = '{}'",
                    "DELETE FROM life_step")) {
                assertThatThrownBy(() -> connections.writer().useHandle(handle -> handle.execute(change)))
                        .as(change).hasMessageContaining("a step never");
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void mergedSite_takesItsStepsAlong(Database database) {
        SiteEntry site = Entered.site();
        SiteEntry other = new SiteEntry("rear-door", site.customer(), "Rear door", Optional.empty(), site.address(),
                site.taxPlace(), site.data());
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);
            Entered.accepted(book, 1);
            book.write(open -> open.register().add(other)).orElseThrow();
            book.write(open -> open.merging().sites(site.id(), other, Entered.step(1).dated())).orElseThrow();

            assertThat(Books.read(book, reading -> reading.entries().stepsAt("rear-door"))).hasSize(1);
            assertThat(Books.read(book, reading -> reading.entries().stepsAt(site.id()))).isEmpty();
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void forgottenCustomer_leavesStepsWithoutPeople(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Entered.all(book);
            Entered.accepted(book, 1);
            book.write(open -> open.erasure().forget("crumb-lane", Entered.step(1).dated())).orElseThrow();

            LifeStep left = Books.read(book, reading -> reading.entries().steps("QUOTE", "MQ-2026-00001")).getFirst();
            assertThat(left.personal()).isEmpty();
            assertThat(left.said()).isEqualTo(Map.of("plan", "quarterly"));
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    private static List<String> trail(Connections connections) {
        return connections.reader().withHandle(LifeStepsTest::entries);
    }

    private static List<String> entries(Handle handle) {
        List<String> entries = new ArrayList<>();
        TrailRows.each(handle, sealed -> {
            TrailRow row = sealed.row();
            if (row.kind().equals(Subject.STEP.name())) {
                entries.add(row.entry());
            }
        });
        return entries;
    }
}
