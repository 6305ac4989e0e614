package icequill.ledger;

import icequill.files.pricing.RatesVersion;
import icequill.ledger.care.FromPapers;
import icequill.ledger.entries.Erasure;
import icequill.ledger.entries.FormDrafts;
import icequill.ledger.entries.LifeSteps;
import icequill.ledger.entries.MailFiles;
import icequill.ledger.entries.Merging;
import icequill.ledger.entries.Receiving;
import icequill.ledger.entries.Register;
import icequill.ledger.entries.SentForms;
import icequill.ledger.papers.Adopting;
import icequill.ledger.papers.Adoption;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Issuing;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.Pdf;
import icequill.ledger.papers.Printing;
import icequill.ledger.papers.Series;
import icequill.ledger.store.Dialect;
import icequill.ledger.trail.Trail;
import icequill.problem.Validated;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;

/** Changes to the book, all or none of which are stored. Usable only within the call that it was given to. */
public final class Transaction extends Reading {

    private final Register register;
    private final Receiving receiving;
    private final Merging merging;
    private final Erasure erasure;
    private final Issuing issuing;
    private final Adopting adopting;
    private final LifeSteps lifeSteps;
    private final MailFiles mailFiles;
    private final SentForms sentForms;
    private final FormDrafts formDrafts;
    private final Trail trail;
    private final Function<PaperReader, FromPapers> fromPapers;

    Transaction(Handle handle, PaperFiles files, Instant now, Trail trail, Issuing issuing,
            Dialect dialect) {
        super(handle, files, dialect);
        this.fromPapers = reader -> new FromPapers(handle, files, reader, now, trail, keptPdfs());
        this.register = new Register(handle, now, trail);
        this.receiving = new Receiving(handle, now, trail);
        this.merging = new Merging(handle, now, trail);
        this.erasure = new Erasure(handle, now, trail);
        this.issuing = issuing;
        this.adopting = new Adopting(handle, trail);
        this.lifeSteps = new LifeSteps(handle, now, trail);
        this.mailFiles = new MailFiles(handle);
        this.sentForms = new SentForms(handle, now);
        this.formDrafts = new FormDrafts(handle, now);
        this.trail = trail;
    }

    public Register register() {
        return register;
    }

    public Receiving receiving() {
        return receiving;
    }

    public Merging merging() {
        return merging;
    }

    public Erasure erasure() {
        return erasure;
    }

    public LifeSteps lifeSteps() {
        return lifeSteps;
    }

    public MailFiles mailFiles() {
        return mailFiles;
    }

    public SentForms sentForms() {
        return sentForms;
    }

    public FormDrafts formDrafts() {
        return formDrafts;
    }

    /** Puts a version of the rates into force, unless it is. */
    public Adoption adopt(RatesVersion version) {
        return adopting.adopt(version);
    }

    /** Puts the file of a paper into the book that came there without it, from an earlier version. */
    public void keepPdf(String number, Pdf pdf) {
        keptPdfs().keep(number, pdf.bytes());
    }

    FromPapers fromPapers(PaperReader reader) {
        return fromPapers.apply(reader);
    }

    /** Notes in the trail all that stood in the book otherwise. */
    Validated<Boolean> takeOver() {
        trail.takeOver();
        return Validated.valid(true);
    }

    /**
     * Issues a paper: takes the next number of the series, has it printed, and stores it with its PDF. Once printing was at fault the
     * whole transaction is undone, and no number is burnt.
     *
     * @param printing prints the paper under the number it is given
     */
    public Validated<IssuedPaper> issue(Series series, Origin origin, Printing printing) {
        return issuing.issue(series, origin, printing);
    }

    /**
     * Does some works one after the other, whose papers are printed by all processors at once. Each issues one paper at most, and changes
     * nothing before; those with problems issue none. They are run twice, the first time only as far as their papers.
     *
     * @return what each came to
     */
    public <T> List<Validated<T>> inTurn(List<Function<Transaction, Validated<T>>> works) {
        return issuing.inTurn(works.stream().<Supplier<Validated<T>>>map(work -> () -> work.apply(this)).toList());
    }
}
