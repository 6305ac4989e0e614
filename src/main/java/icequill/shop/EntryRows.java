package icequill.shop;

import icequill.files.form.StoredForms;
import icequill.ledger.Transaction;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.party.Customer;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.List;
import java.util.Optional;

/** Puts customers, sites and machines into the book, in place of what it holds of them. */
public record EntryRows(Transaction book) {

    /**
     * A customer, new or in place of what is known of him.
     *
     * @param parent empty to keep the one he has
     */
    public Validated<CustomerEntry> customer(String id, Customer customer, Optional<String> parent) {
        Optional<CustomerEntry> before = book.entries().customer(id).found();
        Optional<String> forgotten = before.flatMap(CustomerEntry::forgotten).map(Object::toString);
        if (forgotten.isPresent()) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "customer \"" + id + "\" was forgotten on " + forgotten.get(), "another id"));
        }
        CustomerEntry entry = new CustomerEntry(id, customer,
                parent.or(() -> before.flatMap(CustomerEntry::parent)), Optional.empty());
        return before.isPresent() ? book.register().change(entry) : book.register().add(entry);
    }

    /** A site with its machines, new or in place of what is known of it. */
    public Validated<SiteEntry> site(String customer, StoredForms.Whole whole) {
        SiteEntry entry = entry(customer, whole);
        Validated<SiteEntry> stored = book.entries().site(entry.id()).found().isPresent()
                ? book.register().change(entry)
                : book.register().add(entry);
        return stored.then(done -> machines(whole).or(() -> done));
    }

    /** The site's own row. */
    public static SiteEntry entry(String customer, StoredForms.Whole whole) {
        Site site = whole.site();
        return new SiteEntry(site.id(), customer, site.name(), site.storeNumber(), site.address(), site.taxPlace(),
                whole.data());
    }

    private Problems machines(StoredForms.Whole whole) {
        Problems problems = new Problems();
        String site = whole.site().id();
        List<String> known = book.entries().machinesOf(site).stream().map(MachineEntry::id).toList();
        List<Machine> machines = whole.site().machines();
        for (int i = 0; i < machines.size(); i++) {
            Machine machine = machines.get(i);
            String data = whole.machines().getOrDefault(machine.id(), "");
            MachineEntry entry = new MachineEntry(site, machine.id(), machine.model(), machine.serial(),
                    machine.installed(), i, data);
            problems.take(known.contains(machine.id())
                    ? book.register().change(entry)
                    : book.register().add(entry));
        }
        return problems;
    }
}
