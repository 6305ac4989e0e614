package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names that a terminal would obey, and names that lead out of the shop. */
class TerminalAttackTest {

    private static final String OBEYED = "[\\x00-\\x08\\x0b-\\x1f\\x7f-\\x9f\\u200e\\u200f\\u202a-\\u202e\\u2066-\\u2069]";

    @TempDir
    static Path common;

    private static BookShop shop;

    @BeforeAll
    static void shop() throws IOException {
        shop = BookShop.in(common.resolve("shop"), Database.SQLITE);
        shop.issue("late-call", "2026-05-14");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u001b[2J\u001b[31mRed", "Bell\u0007", "\u009b2K", "Turned \u202e00.1", "a\rAll is well",
            "\u2067x\u2069"})
    void nameOfACustomer_isShownAndNotObeyed(String name) {
        Run added = shop.run("customer", "add", "evil-" + Integer.toHexString(name.hashCode()), "--name", name);
        Run listed = shop.run("customer", "list");
        Run json = shop.run("customer", "list", "--json");

        for (Run run : new Run[]{added, listed, json}) {
            assertThat(run.out() + run.err()).doesNotContainPattern(OBEYED);
        }
    }

    @Test
    void nameWithALineOfItsOwn_staysInItsRow() {
        shop.run("customer", "add", "two-lines", "--name", "Good\nAll is well: nothing to see");

        assertThat(shop.run("customer", "list").out()).doesNotContainPattern("(?m)^All is well");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u001b[31mred", "..", "a b", "-rf", "UPPER", "caf\u00e9", "x\u202ey", "con\n", "a;b",
            "a'b"})
    void fileWhoseNameIsNoName_isNotTakenIntoTheBook(String name) throws IOException {
        Path file = Files.copy(shop.folder().resolve("visits/ten-minute-brushing.yaml"),
                common.resolve(name + ".yaml"));
        Run run = shop.run("visit", "add", file.toString());

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.out() + run.err()).contains("small letters, digits and hyphens").doesNotContainPattern(OBEYED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../out", "INV-2026-00001/../../x", "\u001b[31m", "%", "'"})
    void numberThatIsLookedFor_isOnlyALook(String number) {
        Run run = shop.run("show", number);

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).doesNotContainPattern(OBEYED);
    }
}
