package icequill.office.register;

import icequill.answer.EntrySheet;
import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import icequill.ledger.papers.IssuedPaper;
import icequill.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the book calls by one name: a customer and his only site are often called the same. */
public record EntriesByName(Reading open) {

    private static final String SLASH = "/";

    /** Customer, site, machines, agreement and requests of the name; without visits, which are told in words of their own. */
    public List<EntrySheet> of(String name) {
        return Stream.of(
                open.entries().customer(name).found().map(entry -> customer(open, entry)).stream(),
                open.entries().site(name).found().map(entry -> RegisterOffice.sheet(open, entry)).stream(),
                machines(name),
                open.entries().agreement(name)
                        .map(entry -> new EntrySheet("agreement", entry.id(),
                                with(EntryForms.agreement(entry), open.papers().ofAgreement(entry.number()))))
                        .stream(),
                open.entries().requests().stream().filter(entry -> entry.id().equals(name))
                        .map(entry -> new EntrySheet(entry.kind(), name, EntryForms.request(entry))))
                .flatMap(sheets -> sheets).toList();
    }

    /** What is said of a customer or a site that was merged into another. */
    public Optional<Problem> merged(String name) {
        return Stream.of("customer", "site").flatMap(kind -> open.entries().merged(kind, name).stream()).findFirst();
    }

    private Stream<EntrySheet> machines(String name) {
        return open.entries().machines().stream()
                .filter(machine -> name.equals(machine.id()) || name.equals(machine.site() + SLASH + machine.id()))
                .map(machine -> new EntrySheet("machine", machine.id(), Export.machine(machine)));
    }

    /** All names that there are, but for numbers of papers. */
    public List<String> known() {
        return Stream.of(open.entries().customers().stream().map(CustomerEntry::id),
                open.entries().sites().stream().map(SiteEntry::id),
                open.entries().machines().stream().map(MachineEntry::id),
                open.entries().agreements().stream().flatMap(entry -> Stream.of(entry.id(), entry.number())),
                open.entries().requests().stream().map(entry -> entry.id()),
                open.entries().visits(VisitQuestion.ALL).stream().map(VisitEntry::id))
                .flatMap(names -> names).distinct().toList();
    }

    /** With his sites, those who were merged into him, and his papers. */
    static EntrySheet customer(Reading open, CustomerEntry entry) {
        Map<String, Object> values = new LinkedHashMap<>(Export.customer(entry));
        values.put("sites", open.entries().sitesOf(entry.id()).stream().map(SiteEntry::id).toList());
        List<String> merged = open.entries().mergedInto(entry.id()).stream().map(CustomerEntry::id).toList();
        if (!merged.isEmpty()) {
            values.put("merged", merged);
        }
        return new EntrySheet("customer", entry.id(), with(values, open.papers().ofCustomer(entry.id())));
    }

    private static Map<String, Object> with(Map<String, Object> values, List<IssuedPaper> papers) {
        if (!papers.isEmpty()) {
            values.put("papers", papers.stream().map(IssuedPaper::number).toList());
        }
        return values;
    }
}
