package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Memory that runs out, or calls without end, at any moment of a command: told as a fault, and nothing half done. */
class ErrorAttackTest {

    @TempDir
    private Path other;

    /** Runs out of memory when it is asked for the n-th time. */
    private static final class Exhausted extends Clock {

        private int left;
        private boolean isTold;

        Exhausted(int times) {
            this.left = times;
        }

        @Override
        public Instant instant() {
            left--;
            if (left == 0) {
                isTold = true;
                throw new OutOfMemoryError("no more");
            }
            return BookShop.CLOCK.instant();
        }

        @Override
        public ZoneId getZone() {
            return BookShop.CLOCK.getZone();
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void errorInACommand_isToldAsAFaultAndBurnsNoNumber(Database database) throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), database);
        shop.json("visit", "add", shop.folder().resolve("visits/late-call.yaml").toString());
        int faults = 0;
        for (int times = 1; times < 100; times++) {
            Exhausted clock = new Exhausted(times);
            Run run = shop.runAt(clock, "invoice", "issue", "late-call", "--date", "2026-05-14");
            if (!clock.isTold) {
                assertThat(run.status()).as(run.err()).isZero();
                assertThat(run.out()).contains("INV-2026-00001");
                break;
            }
            faults++;
            assertThat(run.status()).isEqualTo(1);
            assertThat(run.err()).contains("A fault stopped the program: java.lang.OutOfMemoryError: no more");
        }

        assertThat(faults).isPositive();
        assertThat(shop.json("audit").path("papers").asInt()).isEqualTo(1);
        assertThat(shop.folder().resolve("papers/issued/.unfinished")).isEmptyDirectory();
    }
}
