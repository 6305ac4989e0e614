package icequill.ledger;

import icequill.ledger.entries.Accounts;
import icequill.ledger.entries.Entries;
import icequill.ledger.entries.PastEntries;
import icequill.ledger.papers.KeptPdfs;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.Papers;
import icequill.ledger.papers.StoredRates;
import icequill.ledger.store.Dialect;
import icequill.ledger.trail.Past;
import icequill.ledger.trail.TrailSearch;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The book at one moment. Usable only within the call that it was given to. */
public sealed class Reading permits Transaction {

    private final Handle handle;
    private final Entries entries;
    private final Accounts accounts;
    private final Papers papers;
    private final KeptPdfs kept;
    private final StoredRates rates;
    private final TrailSearch trail;

    Reading(Handle handle, PaperFiles files, Dialect dialect) {
        this.handle = handle;
        this.entries = new Entries(handle);
        this.accounts = new Accounts(handle);
        this.papers = new Papers(handle, files);
        this.kept = new KeptPdfs(handle, dialect);
        this.rates = new StoredRates(handle);
        this.trail = new TrailSearch(handle);
    }

    public Entries entries() {
        return entries;
    }

    public Accounts accounts() {
        return accounts;
    }

    public Papers papers() {
        return papers;
    }

    /** The files of papers that the book itself has. */
    public KeptPdfs keptPdfs() {
        return kept;
    }

    public StoredRates rates() {
        return rates;
    }

    /** The entries as they were when a paper was issued; empty where the trail does not know of the paper. */
    public Optional<PastEntries> past(String number) {
        return Past.whenIssued(handle, number).map(PastEntries::new);
    }

    public TrailSearch trail() {
        return trail;
    }
}
