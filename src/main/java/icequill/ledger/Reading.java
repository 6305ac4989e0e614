package icequill.ledger;

import icequill.ledger.entries.Entries;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.Papers;
import icequill.ledger.trail.TrailSearch;
import org.jdbi.v3.core.Handle;

/** The book at one moment. Usable only within the call that it was given to. */
public sealed class Reading permits Transaction {

    private final Entries entries;
    private final Papers papers;
    private final TrailSearch trail;

    Reading(Handle handle, PaperFiles files) {
        this.entries = new Entries(handle);
        this.papers = new Papers(handle, files);
        this.trail = new TrailSearch(handle);
    }

    public Entries entries() {
        return entries;
    }

    public Papers papers() {
        return papers;
    }

    public TrailSearch trail() {
        return trail;
    }
}
