package icequill.office.care;

import icequill.answer.EntrySheet;
import icequill.answer.shown.PaperSheet;
import icequill.answer.shown.Shown;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.office.register.EntriesByName;
import icequill.office.writing.PaperNumbers;
import icequill.party.Language;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.UnknownName;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The office that shows whatever has a name in the book. */
public final class ShowOffice {

    private static final String FIND = "icequill find, by customer, store, address, purchase order, serial, amount or date";

    private final ShopBook book;
    private final HistoryOffice histories;

    private ShowOffice(ShopBook book, HistoryOffice histories) {
        this.book = book;
        this.histories = histories;
    }

    public static ShowOffice of(Path folder, Clock clock) {
        return new ShowOffice(ShopBook.of(folder, clock), HistoryOffice.of(folder, clock));
    }

    /** What was found, of which a visit is still to be told. */
    private record Found(Shown shown, boolean hasVisit) {}

    /**
     * All that has a name: the number of a paper, however it is typed, or an id.
     *
     * @param language of visits; empty for the shop's
     */
    public Validated<Shown> show(String name, Optional<Language> language) {
        return book.read(open -> found(open, name)).then(found -> found.hasVisit()
                ? histories.visit(name, language)
                        .map(visit -> new Shown(found.shown().paper(), found.shown().entries(), Optional.of(visit)))
                : Validated.valid(found.shown()));
    }

    private static Validated<Found> found(Reading open, String name) {
        Optional<IssuedPaper> exact = open.papers().show(name).found();
        if (exact.isPresent()) {
            return Validated.valid(paper(open, exact.get()));
        }
        EntriesByName entries = new EntriesByName(open);
        List<EntrySheet> named = entries.of(name);
        boolean hasVisit = open.entries().visit(name).found().isPresent();
        if (!named.isEmpty() || hasVisit) {
            return Validated.valid(new Found(new Shown(Optional.empty(), named, Optional.empty()), hasVisit));
        }
        List<IssuedPaper> meant = PaperNumbers.meant(open, name);
        return meant.size() == 1
                ? Validated.valid(paper(open, meant.getFirst()))
                : Validated.invalid(entries.merged(name).orElseGet(() -> meant.isEmpty()
                        ? UnknownName.name("paper, customer, site, machine, visit, agreement or request called", name,
                                entries.known(), FIND)
                        : new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "\"" + name + "\" may be several papers",
                                "one of: " + meant.stream().map(IssuedPaper::number)
                                        .collect(Collectors.joining(", ")))));
    }

    private static Found paper(Reading open, IssuedPaper paper) {
        return new Found(Shown.paper(PaperSheet.of(open, paper)), false);
    }
}
