package icequill.ledger.papers;

import icequill.files.pricing.RatesVersion;
import icequill.ledger.trail.Subject;
import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailEvent;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Puts versions of the rates into force, within one transaction. */
public record Adopting(Handle handle, Trail trail) {

    /** Puts a version into force, unless it is; it is stored when it is new. */
    public Adoption adopt(RatesVersion version) {
        StoredRates rates = new StoredRates(handle);
        Optional<Adoption> now = rates.inForce();
        if (now.filter(adoption -> adoption.version().equals(version.id())).isPresent()) {
            return now.get();
        }
        Adoption next = new Adoption(now.map(Adoption::number).orElse(0L) + 1, version.id(), trail.now(),
                trail.author().name(), trail.author().office());
        trail.note(Subject.RATES, version.id(), TrailEvent.ADOPTED, () -> store(version, next));
        return next;
    }

    private void store(RatesVersion version, Adoption adoption) {
        int isNew = handle.createUpdate("INSERT INTO rates_version (id, hash) VALUES (:id, :hash)"
                + " ON CONFLICT DO NOTHING").bind("id", version.id()).bind("hash", version.hash()).execute();
        if (isNew > 0) {
            PreparedBatch batch = handle.prepareBatch("INSERT INTO rates_file (version_id, name, encoding, content)"
                    + " VALUES (:id, :name, :encoding, :content)");
            version.files().forEach((name, bytes) -> {
                StoredRates.Content content = StoredRates.Content.of(bytes);
                batch.bind("id", version.id()).bind("name", name).bind("encoding", content.encoding().word())
                        .bind("content", content.text()).add();
            });
            batch.execute();
        }
        handle.createUpdate("INSERT INTO rates_adopted (number, version_id, adopted_at, who, office)"
                + " VALUES (:number, :version, :at, :who, :office)").bindMethods(adoption).execute();
    }
}
