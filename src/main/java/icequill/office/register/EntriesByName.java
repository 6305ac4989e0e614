package icequill.office.register;

import icequill.answer.EntrySheet;
import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import icequill.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** What the book calls by one name: a customer and his only site are often called the same. */
public record EntriesByName(Reading open) {

    private static final String SLASH = "/";

    /** Customer, site, machines, agreement and requests of the name; without visits, which are told in words of their own. */
    public List<EntrySheet> of(String name) {
        EntrySheets sheets = new EntrySheets(open);
        return Stream.of(
                open.entries().customer(name).found().map(sheets::of).stream(),
                open.entries().site(name).found().map(sheets::of).stream(), machines(name).map(sheets::of),
                open.entries().agreement(name).map(sheets::of).stream(),
                open.entries().requests().stream().filter(entry -> entry.id().equals(name)).map(sheets::of))
                .flatMap(found -> found).toList();
    }

    /** What is said of a customer or a site that was merged into another. */
    public Optional<Problem> merged(String name) {
        return Stream.of("customer", "site").flatMap(kind -> open.entries().merged(kind, name).stream()).findFirst();
    }

    private Stream<MachineEntry> machines(String name) {
        return open.entries().machines().stream()
                .filter(machine -> name.equals(machine.id()) || name.equals(machine.site() + SLASH + machine.id()));
    }

    /**
     * The names that there are, but for numbers of papers.
     *
     * @param kinds which kinds of entries, as sheets name them
     */
    public List<String> known(Predicate<String> kinds, boolean visits) {
        return Stream.of(ids("customer", kinds, () -> open.entries().customers().stream().map(CustomerEntry::id)),
                ids("site", kinds, () -> open.entries().sites().stream().map(SiteEntry::id)),
                ids("machine", kinds, () -> open.entries().machines().stream().map(MachineEntry::id)),
                ids("agreement", kinds,
                        () -> open.entries().agreements().stream()
                                .flatMap(entry -> Stream.of(entry.id(), entry.number()))),
                ids("request", kinds, () -> open.entries().requests().stream().map(RequestEntry::id)),
                visits ? open.entries().visits(VisitQuestion.ALL).stream().map(VisitEntry::id) : Stream.<String>of())
                .flatMap(names -> names).distinct().toList();
    }

    private static Stream<String> ids(String kind, Predicate<String> kinds, Supplier<Stream<String>> ids) {
        return kinds.test(kind) ? ids.get() : Stream.of();
    }
}
