package icequill.ledger.papers;

import icequill.files.pricing.RatesVersion;
import icequill.ledger.store.DamagedRow;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** The versions of rates, templates and settings that a book holds. */
public record StoredRates(Handle handle) {

    private static final String ADOPTED = "SELECT number, version_id, adopted_at, who, office FROM rates_adopted ";

    /** How a file stands in its row: texts as they are, all else in 64 letters (RFC 4648). */
    public enum Encoding {
        TEXT, BASE64;

        String word() {
            return this == TEXT ? "text" : "base64";
        }
    }

    /** A file as its row says it. */
    public record Content(Encoding encoding, String text) {

        static Content of(byte[] bytes) {
            try {
                String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
                if (text.indexOf('\0') < 0) {
                    return new Content(Encoding.TEXT, text);
                }
            } catch (CharacterCodingException noText) {
                // It stands in letters that say its bytes.
            }
            return new Content(Encoding.BASE64, Base64.getEncoder().encodeToString(bytes));
        }

        /** @throws DamagedRow when it says no bytes */
        static byte[] bytes(String encoding, String text) {
            return encoding.equals(Encoding.TEXT.word())
                    ? text.getBytes(StandardCharsets.UTF_8)
                    : DamagedRow.made("content", () -> Base64.getDecoder().decode(text));
        }
    }

    private record StoredFile(String name, String encoding, String content) {}

    private record Count(String ratesVersion, long papers) {}

    /** All that came into force, the newest first. */
    public List<Adoption> adoptions() {
        return handle.createQuery(ADOPTED + "ORDER BY number DESC").mapTo(Adoption.class).list();
    }

    /** The one in force; empty where none was adopted yet. */
    public Optional<Adoption> inForce() {
        return handle.createQuery(ADOPTED + "ORDER BY number DESC LIMIT 1").mapTo(Adoption.class).findOne();
    }

    /** The files of a version; empty where the book has none of that id. */
    public Optional<RatesVersion> version(String id) {
        Map<String, byte[]> files = handle
                .createQuery("SELECT name, encoding, content FROM rates_file WHERE version_id = :id").bind("id", id)
                .mapTo(StoredFile.class).stream()
                .collect(Collectors.toMap(StoredFile::name, file -> Content.bytes(file.encoding(), file.content())));
        return files.isEmpty() ? Optional.empty() : Optional.of(RatesVersion.of(files));
    }

    /** How many papers were issued by each version, by its id; those of earlier books may name ids that the book has no files of. */
    public Map<String, Long> papers() {
        return handle.createQuery("SELECT rates_version, count(*) AS papers FROM paper GROUP BY rates_version")
                .mapTo(Count.class).stream()
                .collect(Collectors.toMap(Count::ratesVersion, Count::papers, Long::sum, TreeMap::new));
    }
}
