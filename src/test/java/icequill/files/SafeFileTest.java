package icequill.files;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Code;
import icequill.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
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

    /** A colleague who may read the folder may read the paper. */
    @Test
    void write_newFile_hasTheFoldersUsualPermissions() throws IOException {
        Path usual = Files.createFile(folder.resolve("usual"));
        Path written = SafeFile.write(folder.resolve("written"), new byte[]{1}, false).orElseThrow();

        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            assertThat(Files.getPosixFilePermissions(written)).isEqualTo(Files.getPosixFilePermissions(usual))
                    .contains(PosixFilePermission.OWNER_READ);
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
