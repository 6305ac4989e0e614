package icequill.ledger.care;

import icequill.files.disk.Hash;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.function.Predicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Changes backups as somebody might who knows what a ZIP file is. */
public final class ArchiveEdit {

    private ArchiveEdit() {
    }

    /** A copy in which a text of one entry is another. */
    public static Path replaced(Path file, String name, String text, String by) throws IOException {
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

    /** The same by somebody who also reckons the table's hash anew. */
    public static Path forged(Path file, String table, String text, String by) throws IOException {
        String name = "tables/" + table + ".jsonl";
        byte[] before = entry(file, name);
        Path changed = replaced(file, name, text, by);
        return replaced(changed, Archive.CONTENTS, Hash.of(before), Hash.of(entry(changed, name)));
    }

    /** A copy without an entry. */
    public static Path without(Path file, String name) throws IOException {
        return copied(file, entry -> !entry.equals(name), Map.of());
    }

    /** A copy with one more entry, or one in the place of another. */
    public static Path with(Path file, String name, byte[] content) throws IOException {
        return copied(file, entry -> !entry.equals(name), Map.of(name, content));
    }

    private static Path copied(Path file, Predicate<String> kept, Map<String, byte[]> more) throws IOException {
        Path copy = file.resolveSibling(file.getFileName() + ".changed");
        try (ZipFile zip = new ZipFile(file.toFile());
                OutputStream out = Files.newOutputStream(copy);
                ZipOutputStream changed = new ZipOutputStream(out)) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                if (kept.test(entry.getName())) {
                    changed.putNextEntry(new ZipEntry(entry.getName()));
                    changed.write(zip.getInputStream(entry).readAllBytes());
                }
            }
            for (Map.Entry<String, byte[]> entry : more.entrySet()) {
                changed.putNextEntry(new ZipEntry(entry.getKey()));
                changed.write(entry.getValue());
            }
        }
        return copy;
    }

    private static byte[] entry(Path file, String name) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            return zip.getInputStream(zip.getEntry(name)).readAllBytes();
        }
    }
}
