package icequill.ledger;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Changes backups as somebody might who knows what a ZIP file is. */
final class ArchiveEdit {

    private ArchiveEdit() {
    }

    /** A copy in which a text of one entry is another. */
    static Path replaced(Path file, String name, String text, String by) throws IOException {
        Path copy = file.resolveSibling(file.getFileName() + ".changed");
        try (ZipFile zip = new ZipFile(file.toFile());
                OutputStream out = Files.newOutputStream(copy);
                ZipOutputStream changed = new ZipOutputStream(out)) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                byte[] bytes = zip.getInputStream(entry).readAllBytes();
                changed.putNextEntry(new ZipEntry(entry.getName()));
                changed.write(entry.getName().equals(name)
                        ? new String(bytes, StandardCharsets.UTF_8).replace(text, by).getBytes(StandardCharsets.UTF_8)
                        : bytes);
            }
        }
        return copy;
    }
}
