package icequill.files.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept in files is given as it was put, or not at all. */
class FolderShelfTest {

    private static final String TEXT = "104 98 4 2\nTASK 0 0 10 0 0\nWAIT 0 10 30 0";

    @TempDir
    private Path shop;

    private FolderShelf shelf;

    @BeforeEach
    void place() {
        shelf = new FolderShelf(shop.resolve("cache/timetables"));
    }

    private List<Path> files() {
        try (Stream<Path> files = Files.list(shelf.folder())) {
            return files.toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Test
    void text_neverPut_isNone() {
        assertThat(shelf.text("a visit")).isEmpty();
        assertThat(shelf.folder()).doesNotExist();
    }

    @Test
    void text_put_isGivenToAnotherWhoAsksTheSame() {
        shelf.put("a visit", TEXT);
        shelf.put("another", "1 1 0 1");

        assertThat(new FolderShelf(shelf.folder()).text("a visit")).contains(TEXT);
        assertThat(shelf.text("another")).contains("1 1 0 1");
        assertThat(shelf.text("a third")).isEmpty();
    }

    private void damage(UnaryOperator<String> how) throws IOException {
        Path file = files().getFirst();
        Files.writeString(file, how.apply(Files.readString(file)));
    }

    /** A digit changed, the end cut off, a line added, nothing left, no text at all: asked for again it is put again. */
    @Test
    void text_damaged_isNoneUntilItIsPutAgain() throws IOException {
        List<UnaryOperator<String>> damages = List.of(text -> text.replace("104", "105"),
                text -> text.substring(0, text.length() - 1), text -> text + "\nTASK 1 30 40 0 0", text -> "",
                text -> text.lines().findFirst().orElseThrow(), text -> text.substring(1));
        for (UnaryOperator<String> how : damages) {
            shelf.put("a visit", TEXT);
            damage(how);

            assertThat(shelf.text("a visit")).isEmpty();
        }
        Files.write(files().getFirst(), new byte[]{(byte) 0xff, 0, 1});
        assertThat(shelf.text("a visit")).isEmpty();

        shelf.put("a visit", TEXT);
        assertThat(shelf.text("a visit")).contains(TEXT);
    }

    /** A file under another's name answers nothing. */
    @Test
    void text_ofAnotherName_isNone() throws IOException {
        shelf.put("a visit", TEXT);
        Path first = files().getFirst();
        shelf.put("another", "1 1 0 1");
        Path second = files().stream().filter(file -> !file.equals(first)).findFirst().orElseThrow();
        Files.move(first, second, StandardCopyOption.REPLACE_EXISTING);

        assertThat(shelf.text("another")).isEmpty();
    }

    /** Where a file lies in the way of the folder nothing is kept, and nothing fails. */
    @Test
    void put_folderCannotBeMade_isNotKept() throws IOException {
        Files.writeString(shop.resolve("cache"), "in the way");
        shelf.put("a visit", TEXT);

        assertThat(shelf.text("a visit")).isEmpty();
        assertThat(shop.resolve("cache")).hasContent("in the way");
    }

    /** Several at once, as processes would. */
    @Test
    void put_byManyAtOnce_isWhole() {
        IntStream.range(0, 40).parallel()
                .forEach(turn -> new FolderShelf(shelf.folder()).put("visit " + turn % 2, TEXT + turn % 2));

        assertThat(shelf.text("visit 0")).contains(TEXT + 0);
        assertThat(shelf.text("visit 1")).contains(TEXT + 1);
        assertThat(files()).hasSize(2);
    }

    @Test
    void put_intoAFullFolder_beginsAnew() throws IOException {
        Files.createDirectories(shelf.folder());
        for (int i = 0; i < 2_000; i++) {
            Files.createFile(shelf.folder().resolve(i + ".txt"));
        }
        shelf.put("a visit", TEXT);

        assertThat(files()).hasSize(1);
        assertThat(shelf.text("a visit")).contains(TEXT);
    }
}
