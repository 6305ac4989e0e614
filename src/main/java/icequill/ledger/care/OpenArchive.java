package icequill.ledger.care;

import icequill.ledger.papers.Series;
import icequill.ledger.store.Schema;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/**
 * A backup that is read. Nothing in the file is trusted: every name, size and head is looked at before anything is made of it; what is
 * not as a backup writes it is a {@link BrokenArchive}.
 */
final class OpenArchive implements AutoCloseable {

    /** Texts of a book shrink to a tenth, and hardly to a hundredth; more is a trap. */
    private static final long MOST_TIMES = 250;
    private static final long ALWAYS_ALLOWED = 64L << 20;
    private static final long LONGEST_CONTENTS = 16L << 20;
    private static final Pattern PAPER = Pattern
            .compile("papers/(" + Series.FORM + ")/\\1-[0-9]{5,10}\\.pdf");

    private final ZipFile zip;
    private final Archive.Contents contents;

    OpenArchive(Path file) throws IOException {
        this.zip = new ZipFile(file.toFile());
        try {
            checkNames();
            checkSizes(Files.size(file));
            this.contents = Archive.JSON.readValue(stream(entry(Archive.CONTENTS)), Archive.Contents.class);
            checkContents();
        } catch (RuntimeException | IOException broken) {
            zip.close();
            throw broken;
        }
    }

    Archive.Contents contents() {
        return contents;
    }

    InputStream table(Archive.Table table) {
        return stream(entry(table.entry()));
    }

    /** The file of a paper; empty where it is not in the backup. */
    Optional<byte[]> paper(Series series, String number) {
        ZipEntry pdf = zip.getEntry(Archive.entry(series, number));
        if (pdf == null) {
            return Optional.empty();
        }
        try (InputStream in = stream(pdf)) {
            return Optional.of(in.readAllBytes());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    private void checkNames() {
        Set<String> known = Archive.tables(Schema.NEWEST).stream().map(Archive.Table::entry)
                .collect(Collectors.toSet());
        known.add(Archive.CONTENTS);
        Set<String> seen = new HashSet<>();
        for (ZipEntry entry : Collections.list(zip.entries())) {
            if (!known.contains(entry.getName()) && !PAPER.matcher(entry.getName()).matches()) {
                throw new BrokenArchive("it holds \"" + entry.getName() + "\", which no backup does");
            }
            if (!seen.add(entry.getName())) {
                throw new BrokenArchive("it holds " + entry.getName() + " twice");
            }
        }
    }

    private void checkSizes(long length) {
        long total = 0;
        for (ZipEntry entry : Collections.list(zip.entries())) {
            if (entry.getSize() < 0) {
                throw new BrokenArchive(entry.getName() + " does not say how large it is");
            }
            total += entry.getSize();
            if (total < 0 || total > Math.max(ALWAYS_ALLOWED, MOST_TIMES * length)) {
                throw new BrokenArchive("unpacked it would be more than " + MOST_TIMES + " times as large");
            }
        }
        if (entry(Archive.CONTENTS).getSize() > LONGEST_CONTENTS) {
            throw new BrokenArchive(Archive.CONTENTS + " is too large");
        }
    }

    private void checkContents() {
        if (contents.schema() < 1) {
            throw new BrokenArchive("it says it is of schema " + contents.schema());
        }
        List<Archive.Table> expected = Archive.tables(contents.schema());
        expected.forEach(table -> entry(table.entry()));
        Set<String> tables = expected.stream().map(Archive.Table::name).collect(Collectors.toSet());
        if (contents.schema() <= Schema.NEWEST && !contents.hashes().keySet().equals(tables)) {
            throw new BrokenArchive("its contents name other tables than a book has");
        }
        List<String> wrong = contents.missing().stream()
                .filter(number -> contents.heads().stream().noneMatch(head -> head.series().has(number))).toList();
        if (!wrong.isEmpty()) {
            throw new BrokenArchive("it lacks papers that are none: " + String.join(", ", wrong));
        }
    }

    private ZipEntry entry(String name) {
        @Nullable
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw new BrokenArchive("it lacks " + name);
        }
        return entry;
    }

    private InputStream stream(ZipEntry entry) {
        try {
            return new Limited(zip.getInputStream(entry), entry);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** An entry that turns out larger than it says is not read on. */
    private static final class Limited extends FilterInputStream {

        private final String name;
        private long left;

        Limited(InputStream in, ZipEntry entry) {
            super(in);
            this.name = entry.getName();
            this.left = entry.getSize();
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] bytes, int offset, int length) throws IOException {
            int count = super.read(bytes, offset, length);
            left -= Math.max(0, count);
            if (left < 0) {
                throw new BrokenArchive(name + " is larger than it says");
            }
            return count;
        }
    }
}
