package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Somebody makes the whole book anew, papers, seals and all, so that it fits itself: what was kept elsewhere tells. */
@Tag("wide")
class AuditAgainstAttackTest {

    @TempDir
    private Path other;

    @ParameterizedTest
    @EnumSource(Database.class)
    void bookMadeAnew_isFoundByWhateverWasKeptElsewhere(Database database) throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), database);
        shop.issue("late-call", "2026-05-14");
        shop.issue("ten-minute-brushing", "2026-05-14");
        Path backup = other.resolve("kept.zip");
        shop.json("backup", backup.toString());
        Path pdf = Files.copy(shop.folder().resolve("papers/issued/INV-2026/INV-2026-00001.pdf"),
                other.resolve("in.pdf"));
        String line = shop.run("audit", "--seal").out().strip();
        Path note = Files.writeString(other.resolve("note.txt"),
                "Kept in May:\n" + line.replace(" INV", "\nINV") + "\n");
        assertThat(line).matches("icequill-seal INV-2026-00002 trail-[0-9]+ [0-9a-f]{64}");
        shop.issue("goodwill-clinic", "2026-05-15");
        String[] all = {"audit", "--json", "--against", backup.toString(), pdf.toString(), note.toString(), line};
        assertThat(shop.run(all).status()).as(shop.run(all).out()).isZero();

        BookShop forged = BookShop.in(other.resolve("forged"), database);
        forged.issue("ten-minute-brushing", "2026-05-14");
        forged.issue("late-call", "2026-05-14");

        assertThat(forged.run("audit").status()).as("it fits itself").isZero();
        assertThat(findings(forged, backup.toString())).hasSize(2)
                .anyMatch(finding -> finding.contains("INV-2026-00002 bears another seal than in the backup"))
                .anyMatch(finding -> finding.contains("the trail bears another seal at row "));
        assertThat(findings(forged, pdf.toString())).singleElement().asString()
                .contains("this is another INV-2026-00001 than the book's");
        for (String kept : List.of(note.toString(), line)) {
            assertThat(findings(forged, kept)).singleElement().asString()
                    .contains("the seals up to INV-2026-00002, trail-", " are others than were noted");
        }
        assertThat(findings(forged, other.resolve("none.txt").toString())).singleElement().asString()
                .contains("there is no such file, and it is no seal");
    }

    private static List<String> findings(BookShop shop, String kept) {
        Run run = shop.run("audit", "--json", "--against", kept);
        assertThat(run.status()).as(run.out() + run.err()).isEqualTo(3);
        return Stream.of(run.json()).flatMap(json -> json.path("findings").valueStream()).map(BookShop::finding)
                .toList();
    }
}
