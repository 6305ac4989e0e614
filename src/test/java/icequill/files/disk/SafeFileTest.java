package icequill.files.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import icequill.problem.Code;
import icequill.problem.Problem;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files are written whole or not at all. */
class SafeFileTest {

    @TempDir
    Path folder;

    @Test
    void write_targetExists_keptUnlessReplacingIsAsked() throws IOException {
        Path file = folder.resolve("papers/x.txt");
        SafeFile.write(file, new byte[]{1}, false).orElseThrow();

        assertThat(SafeFile.write(file, new byte[]{2}, false).problems()).extracting(Problem::code)
                .containsExactly(Code.ALREADY_EXISTS);
        assertThat(Files.readAllBytes(file)).containsExactly(1);
        SafeFile.write(file, new byte[]{2, 3}, true).orElseThrow();
        assertThat(Files.readAllBytes(file)).containsExactly(2, 3);
        assertThat(names(folder.resolve("papers"))).containsExactly("x.txt");
    }

    @Test
    void write_folderIsAFile_cannotWriteAndFileKept() throws IOException {
        Path file = Files.writeString(folder.resolve("shop.yaml"), "mine");

        assertThat(SafeFile.write(file.resolve("x.txt"), new byte[]{1}, false).problems()).extracting(Problem::code)
                .containsExactly(Code.CANNOT_WRITE);
        assertThat(file).hasContent("mine");
    }

    /** The move into place fails, after all bytes were written. */
    @Test
    void write_interruptedBeforeTheEnd_oldTargetWholeAndNothingLeftBehind() throws IOException {
        Path target = Files.createDirectories(folder.resolve("paper.pdf"));
        Files.writeString(target.resolve("old"), "old");

        assertThat(SafeFile.write(target, new byte[]{1}, true).problems()).extracting(Problem::code)
                .containsExactly(Code.CANNOT_WRITE);

        assertThat(target.resolve("old")).hasContent("old");
        assertThat(names(folder)).containsExactly("paper.pdf");
    }

    /** What a writer that lives is at work on stays; what a killed one left goes with the next file of that name. */
    @Test
    void write_othersBegan_theDeadAreClearedAwayAndTheLivingGoOn() throws IOException {
        Path file = folder.resolve("list.csv");
        Path dead = Files
                .writeString(folder.resolve(".list.csv.0f8fad5b-d9cb-469f-a165-70867728950e.unfinished"), "ha");
        Path other = Files
                .writeString(folder.resolve(".other.csv.0f8fad5b-d9cb-469f-a165-70867728950e.unfinished"), "ha");
        try (Unfinished living = Unfinished.of(file)) {
            assertThat(dead).doesNotExist();
            try (OutputStream out = living.out()) {
                out.write(1);
            }
            SafeFile.write(file, new byte[]{2}, true).orElseThrow();
            assertThat(names(folder)).hasSize(3);

            living.finish();
        }

        assertThat(file).hasBinaryContent(new byte[]{1});
        assertThat(names(folder)).containsExactlyInAnyOrder("list.csv", String.valueOf(other.getFileName()));
    }

    /** Papers hold names and sums: in a folder that others may read, they may not read what is written there. */
    @Test
    void write_newFile_isTheOwnersAlone() throws IOException {
        assumeTrue(knowsModes());

        Path written = SafeFile.write(folder.resolve("papers/2026/written"), new byte[]{1}, false).orElseThrow();

        assertThat(mode(written)).isEqualTo("rw-------");
        assertThat(mode(folder.resolve("papers/2026"))).isEqualTo("rwx------");
        assertThat(mode(folder.resolve("papers"))).isEqualTo("rwx------");
    }

    private boolean knowsModes() throws IOException {
        return Files.getFileStore(folder).supportsFileAttributeView(PosixFileAttributeView.class);
    }

    private static String mode(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
