package icequill.ledger.care;

import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PaperRow;
import icequill.ledger.papers.PaperRows;
import icequill.ledger.papers.Pdf;
import icequill.ledger.papers.SealLine;
import icequill.ledger.papers.SeriesHead;
import icequill.ledger.trail.TrailHead;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipException;
import org.jdbi.v3.core.Handle;
import tools.jackson.core.JacksonException;

/** Holds the book against what was kept elsewhere: backups, PDFs that went out, seals that were noted. */
public final class Against {

    private static final int LONGEST_NOTE = 1 << 20;
    private static final int LONGEST_PDF = 100 << 20;
    private static final String WAY = "whichever is older is likely right; ask who had access to the other";

    private final Handle handle;
    private final PaperReader reader;
    private final Problems findings = new Problems();

    public Against(Handle handle, PaperReader reader) {
        this.handle = handle;
        this.reader = reader;
    }

    public List<Problem> findings(List<String> kept) throws IOException {
        for (String each : kept) {
            Path file = Path.of(each);
            Optional<SealLine> line = SealLine.in(each);
            if (line.isPresent()) {
                check(line.get(), Place.NOWHERE);
            } else if (Files.isRegularFile(file)) {
                check(file, Place.ofFile(each));
            } else {
                findings.add(Code.UNREADABLE, Place.ofFile(each), "there is no such file, and it is no seal",
                        "a backup, a PDF, a file with a line of audit --seal, or the line itself");
            }
        }
        return findings.list();
    }

    private void check(Path file, Place place) throws IOException {
        byte[] begin;
        try (InputStream in = Files.newInputStream(file)) {
            begin = in.readNBytes(4);
        }
        String kind = new String(begin, StandardCharsets.ISO_8859_1);
        if (kind.startsWith("PK")) {
            checkBackup(file, place);
        } else if (kind.startsWith("%PDF") && Files.size(file) <= LONGEST_PDF) {
            checkPdf(file, place);
        } else {
            Optional<SealLine> line = Files.size(file) <= LONGEST_NOTE
                    ? SealLine.in(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                    : Optional.empty();
            line.ifPresentOrElse(found -> check(found, place), () -> findings.add(Code.UNREADABLE, place,
                    "there is no seal in this file", "a backup, a PDF, or a line of audit --seal"));
        }
    }

    private void check(SealLine line, Place place) {
        List<Optional<String>> seals = line.papers().stream().map(this::seal).toList();
        for (int i = 0; i < seals.size(); i++) {
            if (seals.get(i).isEmpty()) {
                found(place, line.papers().get(i) + " was sealed, and is not in the book");
            }
        }
        if (seals.stream().allMatch(Optional::isPresent)
                && !line.fits(seals.stream().flatMap(Optional::stream).toList())) {
            found(place, "the seals up to " + String.join(", ", line.papers()) + " are others than were noted");
        }
    }

    private void checkBackup(Path file, Place place) throws IOException {
        try (OpenArchive archive = new OpenArchive(file)) {
            for (SeriesHead head : archive.contents().heads()) {
                String number = head.series().number(head.papers());
                Optional<String> seal = head.papers() == 0 ? Optional.of(head.seal()) : seal(number);
                if (seal.isEmpty()) {
                    found(place, number + " is in the backup, and not in the book");
                } else if (!seal.get().equals(head.seal())) {
                    found(place,
                            number + " bears another seal than in the backup: it, or a paper before it, was changed");
                }
            }
            checkTrail(archive.contents().trailHead(), place);
        } catch (ZipException | JacksonException | BrokenArchive broken) {
            findings.add(Code.UNREADABLE, place, "the backup cannot be read: " + broken.getMessage(), "a backup");
        }
    }

    private void checkTrail(TrailHead head, Place place) {
        if (head.rows() > 0 && !seal(head.name()).equals(Optional.of(head.seal()))) {
            found(place, "the trail bears another seal at row " + head.rows()
                    + " than in the backup: it, or a row before it, was changed or taken out");
        }
    }

    private void checkPdf(Path file, Place place) throws IOException {
        Pdf pdf = Pdf.of(Files.readAllBytes(file));
        Optional<String> number = within(pdf).or(() -> named(file));
        Optional<PaperRow> row = number.flatMap(known -> PaperRows.byNumber(handle, known));
        if (row.isEmpty()) {
            found(place, number.map(known -> known + " is not in the book")
                    .orElse("the PDF does not say which paper it is"));
        } else if (!row.get().pdfHash().equals(pdf.hash())) {
            found(place, "this is another " + row.get().number() + " than the book's");
        }
    }

    /** The number of the paper whose data the file carries. */
    private Optional<String> within(Pdf pdf) {
        Problems unreadable = new Problems();
        return unreadable.take(reader.carried(pdf)).flatMap(PaperReader.Carried::data)
                .flatMap(data -> unreadable.take(reader.read(data))).flatMap(PaperReader.Read::number);
    }

    private static Optional<String> named(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(".pdf")
                ? Optional.of(name.substring(0, name.length() - ".pdf".length()))
                : Optional.empty();
    }

    /** Of a paper, or of a row of the trail. */
    private Optional<String> seal(String number) {
        return TrailHead.seal(handle, number)
                .or(() -> handle.createQuery("SELECT seal FROM paper WHERE number = :number").bind("number", number)
                        .mapTo(String.class).findOne());
    }

    private void found(Place place, String message) {
        findings.add(Code.BOOK_DAMAGED, place, message, WAY);
    }
}
