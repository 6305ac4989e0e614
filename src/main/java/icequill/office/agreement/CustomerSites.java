package icequill.office.agreement;

import icequill.answer.agreement.AgreementAnswer.KnownMachine;
import icequill.answer.agreement.AgreementAnswer.OfSite;
import icequill.files.yaml.Json;
import icequill.ledger.Reading;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.SiteEntry;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Sites of whoever has an agreement that it is not for, and that may come in. */
record CustomerSites(HeldAgreement held, Reading open) {

    /** By id; those that went out of it are not among them. */
    List<SiteEntry> all() {
        Set<String> known = held.request().sites().stream().map(site -> site.scope().site())
                .collect(Collectors.toSet());
        return open.entries().sitesOf(held.owner(open)).stream().filter(site -> !known.contains(site.id())).toList();
    }

    /** The same with their machines, none of which is looked after yet. */
    List<OfSite> shown() {
        return all().stream().map(site -> new OfSite(site.id(), site.name(), Optional.empty(), Optional.empty(),
                List.of(), open.entries().machinesOf(site.id()).stream().map(CustomerSites::machine).toList(),
                Optional.empty())).toList();
    }

    private static KnownMachine machine(MachineEntry machine) {
        return new KnownMachine(machine.id(),
                Json.map(machine.data()).get("where") instanceof String where ? where : machine.id(), false);
    }
}
