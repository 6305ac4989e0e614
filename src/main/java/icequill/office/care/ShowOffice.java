package icequill.office.care;

import icequill.answer.EntrySheet;
import icequill.answer.mail.MailTelling;
import icequill.answer.shown.PaperSheet;
import icequill.answer.shown.Shown;
import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.office.register.EntriesByName;
import icequill.office.writing.PaperNumbers;
import icequill.party.Language;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.shop.UnknownName;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** The office that shows whatever has a name in the book. */
public final class ShowOffice {

    private final ShopBook book;
    private final HistoryOffice histories;

    private ShowOffice(ShopBook book, HistoryOffice histories) {
        this.book = book;
        this.histories = histories;
    }

    public static ShowOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static ShowOffice of(ShopBook book) {
        return new ShowOffice(book, HistoryOffice.of(book));
    }

    /** What was found, of which a visit is still to be told. */
    private record Found(Shown shown, Optional<String> visit) {}

    /**
     * All that has a name: the number of a paper, however it is typed, or its PDF; an id; a file with a form.
     *
     * @param what else what bears the name is not found
     * @param language of visits; empty for the shop's
     */
    public Validated<Shown> show(FormName name, Shows what, Optional<Language> language) {
        return book.read(open -> found(open, name, what)).then(found -> found.visit()
                .map(id -> histories.visit(id, language).map(visit -> new Shown(found.shown().paper(),
                        found.shown().entries(), Optional.of(visit))))
                .orElseGet(() -> Validated.valid(found.shown())));
    }

    private Validated<Found> found(Reading open, FormName asked, Shows what) {
        String name = asked.id();
        Optional<IssuedPaper> exact = open.papers().show(name).found()
                .filter(paper -> what.has(paper.series().kind()));
        if (exact.isPresent()) {
            return Validated.valid(paper(open, exact.get()));
        }
        EntriesByName entries = new EntriesByName(open);
        List<EntrySheet> named = what == Shows.ANYTHING ? entries.of(name) : List.of();
        Optional<String> visit = open.entries().visit(name).found().map(VisitEntry::id)
                .filter(id -> what.hasVisits());
        if (!named.isEmpty() || visit.isPresent()) {
            return Validated.valid(new Found(new Shown(Optional.empty(), named, Optional.empty()), visit));
        }
        List<IssuedPaper> meant = PaperNumbers.meant(open, asked.text()).stream()
                .filter(paper -> what.has(paper.series().kind())).toList();
        return meant.size() == 1
                ? Validated.valid(paper(open, meant.getFirst()))
                : Validated.invalid(unknown(entries, name, what, meant));
    }

    private static Problem unknown(EntriesByName entries, String name, Shows what, List<IssuedPaper> meant) {
        if (!meant.isEmpty()) {
            return PaperNumbers.severalMeant(name, meant);
        }
        Optional<Problem> merged = what == Shows.ANYTHING ? entries.merged(name) : Optional.empty();
        return merged.orElseGet(() -> what.hasEntries()
                ? UnknownName.name(what.words() + (what == Shows.ANYTHING ? " called" : ""), name,
                        entries.known(kind -> what == Shows.ANYTHING, what.hasVisits()), PaperNumbers.FIND)
                : UnknownName.name(what.words(), name, List.of(), PaperNumbers.FIND));
    }

    private Found paper(Reading open, IssuedPaper paper) {
        return new Found(Shown.paper(PaperSheet.of(open, paper, MailTelling.of(book))), Optional.empty());
    }
}
