package icequill.ledger;

import icequill.ledger.entries.Accounts;
import icequill.ledger.entries.Entries;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.Papers;
import icequill.ledger.papers.StoredRates;
import icequill.ledger.trail.TrailSearch;
import org.jdbi.v3.core.Handle;

/** The book at one moment. Usable only within the call that it was given to. */
public sealed class Reading permits Transaction {

    private final Entries entries;
    private final Accounts accounts;
    private final Papers papers;
    private final StoredRates rates;
    private final TrailSearch trail;

    Reading(Handle handle, PaperFiles files) {
        this.entries = new Entries(handle);
        this.accounts = new Accounts(handle);
        this.papers = new Papers(handle, files);
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

    public StoredRates rates() {
        return rates;
    }

    public TrailSearch trail() {
        return trail;
    }
}
