package icequill.office.care;

import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.office.register.RegisterOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.UnknownName;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where visits are looked for.
 *
 * @param sites by id; empty for everywhere
 * @param machine by id, at the one site
 */
public record VisitScope(Optional<Set<String>> sites, Optional<String> machine) {

    /** All visits of the book. */
    static final VisitScope ALL = new VisitScope(Optional.empty(), Optional.empty());

    private static final String SLASH = "/";

    /** Whether a site, by id, is among them. */
    public boolean contains(String site) {
        return sites.isEmpty() || sites.get().contains(site);
    }

    /** What names of a site, a customer and a machine mean together, or all that is wrong with them. */
    public static Validated<VisitScope> of(Reading open, Optional<String> site, Optional<String> customer,
            Optional<String> machine) {
        Problems problems = new Problems();
        Optional<SiteEntry> asked = site.flatMap(id -> problems.take(RegisterOffice.found(open, id)));
        Optional<CustomerEntry> payer = customer
                .flatMap(id -> problems.take(RegisterOffice.payer(open, Optional.of(id))));
        Optional<Set<String>> paid = payer.map(found -> sitesOf(open, found.id(), new HashSet<>()));
        asked.filter(found -> paid.filter(sites -> !sites.contains(found.id())).isPresent())
                .ifPresent(found -> problems.add(Code.NOT_ALLOWED, Place.NOWHERE, "site \"" + found.id()
                        + "\" belongs to customer \"" + found.customer() + "\", not to \"" + customer.orElse("") + "\"",
                        "one of the two"));
        if (machine.isEmpty() || !problems.isEmpty()) {
            return problems.or(() -> new VisitScope(asked.map(found -> Set.of(found.id())).or(() -> paid),
                    Optional.empty()));
        }
        return machine(open, machine.get(), asked.map(found -> Set.of(found.id())).or(() -> paid))
                .map(found -> new VisitScope(Optional.of(Set.of(found.site())), Optional.of(found.id())));
    }

    /** Of a customer and of the accounts below him. */
    private static Set<String> sitesOf(Reading open, String customer, Set<String> seen) {
        if (!seen.add(customer)) {
            return Set.of();
        }
        return Stream.concat(open.entries().sitesOf(customer).stream().map(SiteEntry::id),
                open.entries().customers().stream()
                        .filter(other -> other.parent().filter(customer::equals).isPresent())
                        .flatMap(other -> sitesOf(open, other.id(), seen).stream()))
                .collect(Collectors.toSet());
    }

    private static Validated<MachineEntry> machine(Reading open, String name, Optional<Set<String>> sites) {
        List<MachineEntry> there = open.entries().machines().stream()
                .filter(machine -> sites.isEmpty() || sites.get().contains(machine.site())).toList();
        boolean isWhole = name.contains(SLASH);
        List<MachineEntry> found = there.stream()
                .filter(machine -> name.equals(isWhole ? whole(machine) : machine.id())).toList();
        if (found.isEmpty()) {
            return Validated.invalid(UnknownName.name(
                    sites.filter(some -> some.size() == 1).map(some -> "machine at " + some.iterator().next())
                            .orElse("machine"),
                    name, there.stream().map(machine -> isWhole ? whole(machine) : machine.id()).distinct().toList(),
                    "see: icequill machine list"));
        }
        return found.size() == 1
                ? Validated.valid(found.getFirst())
                : Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "several sites have a machine \"" + name + "\"",
                        "one of: " + found.stream().map(VisitScope::whole).collect(Collectors.joining(", "))));
    }

    private static String whole(MachineEntry machine) {
        return machine.site() + SLASH + machine.id();
    }
}
