package icequill.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Code;
import icequill.problem.Problem;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A book that is a file is only kept on a disk of the machine. */
class PlaceCheckTest {

    private static final Path DATABASE = Path.of("book.sqlite");

    @ParameterizedTest
    @ValueSource(strings = {"nfs4", "cifs", "fuse.sshfs", "SMB3", "9p"})
    void networkDrive_isRefused(String kind) {
        Problem problem = PlaceCheck.remote(DATABASE, kind).orElseThrow();

        assertThat(problem.code()).isEqualTo(Code.NOT_ALLOWED);
        assertThat(problem.message()).contains("network drive (" + kind + ")");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ext4", "xfs", "NTFS", "tmpfs", "apfs", "overlay"})
    void diskOfThisMachine_isTaken(String kind) {
        assertThat(PlaceCheck.remote(DATABASE, kind)).isEmpty();
    }
}
