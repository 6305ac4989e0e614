package icequill.ledger.care;

import icequill.files.pricing.RatesVersion;
import icequill.ledger.papers.StoredRates;
import icequill.ledger.store.DamagedRow;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Checks that the files of each version of the rates are those that its hash says; that there is such a version is the trail's to tell. */
record RatesCheck(Handle handle, Problems findings) {

    void check() {
        List<Version> versions = handle.createQuery("SELECT id, hash FROM rates_version ORDER BY id")
                .mapTo(Version.class).list();
        versions.forEach(this::check);
        handle.createQuery("SELECT DISTINCT version_id FROM rates_file ORDER BY version_id").mapTo(String.class).list()
                .stream().filter(id -> versions.stream().noneMatch(version -> version.id().equals(id)))
                .forEach(id -> damaged("files of version " + id + " of the rates belong to none"));
    }

    /** As its row says it. */
    private record Version(String id, String hash) {}

    private void check(Version version) {
        if (!version.id().equals(RatesVersion.idOf(version.hash())) || !hash(version.id()).equals(version.hash())) {
            damaged("version " + version.id() + " of the rates is not as it was adopted");
        }
    }

    private String hash(String id) {
        try {
            Optional<RatesVersion> files = new StoredRates(handle).version(id);
            return files.map(RatesVersion::hash).orElse("none");
        } catch (DamagedRow none) {
            return none.toString();
        }
    }

    private void damaged(String message) {
        findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, message, "the row from a backup");
    }
}
