package icequill.web.door;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DoorkeeperTest {

    /** RFC 9110, 4.2.3: the port of the scheme is left out. */
    @Test
    void ownHosts_atThePortOfTheWeb_haveNone() {
        assertThat(Doorkeeper.ownHosts(80)).containsExactly("127.0.0.1", "localhost", "[::1]");
        assertThat(Doorkeeper.ownHosts(8123)).containsExactly("127.0.0.1:8123", "localhost:8123", "[::1]:8123");
    }
}
