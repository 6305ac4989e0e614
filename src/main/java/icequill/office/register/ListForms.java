package icequill.office.register;

import icequill.files.disk.CsvFile;
import icequill.files.form.Form;
import icequill.files.form.StoredForms;
import icequill.files.yaml.Column;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.office.billing.PaymentOffice;
import icequill.party.Customer;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.shop.ExistingEntries;
import icequill.shop.ShopFolder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Makes forms of the rows of lists: what the book holds of each, with the cells laid over it. */
final class ListForms {

    private ListForms() {
    }

    /** Each customer, then each site with its machines, then payments; what is wrong with a row is reported, with line and column. */
    static List<Form> of(ShopFolder shop, ExistingEntries before, ImportLists lists, LocalDate today,
            Problems problems) {
        Map<String, CustomerEntry> customers = customers(shop, before, lists, today, problems);
        Set<String> sites = new LinkedHashSet<>(lists.sites().keySet());
        lists.machines().values().forEach(row -> row.cell(ImportLists.SITE)
                .filter(site -> isKnown(row, ImportLists.SITE, site, lists.sites().keySet(), before.sites().keySet(),
                        problems))
                .ifPresent(sites::add));
        SiteRows rows = new SiteRows(shop, before, lists, customers, machines(lists), problems);
        List<Form> forms = new ArrayList<>();
        customers.values().forEach(entry -> forms.add(EntryForms.of(entry)));
        sites.forEach(site -> rows.site(site, today).ifPresent(forms::add));
        lists.payments().forEach((id, row) -> forms.add(PaymentOffice.form(id,
                ImportLists.values(row, Column.LISTED_PAYMENT), row.place("payment"))));
        return forms;
    }

    private static Map<String, List<StoredForms.Given>> machines(ImportLists lists) {
        Map<String, List<StoredForms.Given>> machines = new HashMap<>();
        lists.machines().values().forEach(row -> machines
                .computeIfAbsent(row.cell(ImportLists.SITE).orElseThrow(), site -> new ArrayList<>())
                .add(new StoredForms.Given(row.cell(ImportLists.MACHINE).orElseThrow(),
                        ImportLists.values(row, Column.MACHINE), row.place(ImportLists.MACHINE))));
        return machines;
    }

    private static Map<String, CustomerEntry> customers(ShopFolder shop, ExistingEntries before, ImportLists lists,
            LocalDate today, Problems problems) {
        Map<String, CustomerEntry> customers = new LinkedHashMap<>();
        lists.customers().forEach((id, row) -> {
            Optional<CustomerEntry> old = Optional.ofNullable(before.customers().get(id));
            Optional<String> parent = row.cell(ImportLists.PARENT)
                    .filter(account -> isKnown(row, ImportLists.PARENT, account, lists.customers().keySet(),
                            before.customers().keySet(), problems))
                    .or(() -> old.flatMap(CustomerEntry::parent));
            old.flatMap(CustomerEntry::forgotten).ifPresent(day -> problems.add(Code.NOT_ALLOWED,
                    row.place(ImportLists.CUSTOMER), "customer \"" + id + "\" was forgotten on " + day, "another id"));
            shop.customers().customer(ImportLists.values(row, Column.CUSTOMER), row.place(ImportLists.CUSTOMER),
                    old.map(CustomerEntry::customer), Optional.empty(), today,
                    row.cell(ImportLists.PARENT).isPresent() || parent.isPresent())
                    .filter(customer -> parent.isPresent() || row.cell(ImportLists.PARENT).isEmpty())
                    .ifPresent(customer -> customers.put(id,
                            new CustomerEntry(id, customer, parent, Optional.empty())));
        });
        return customers;
    }

    private static boolean isKnown(CsvFile.Row row, String column, String id, Collection<String> listed,
            Collection<String> stored, Problems problems) {
        if (listed.contains(id) || stored.contains(id)) {
            return true;
        }
        List<String> all = Stream.concat(listed.stream(), stored.stream()).toList();
        problems.add(new Problem(Code.UNKNOWN_NAME, row.place(column),
                "neither the book nor the list has \"" + id + "\"",
                Problem.nearest(id, all).map(near -> "did you mean \"" + near + "\"?").orElse("a row for it")));
        return false;
    }

    /** The rows of sites and of their machines. */
    private record SiteRows(ShopFolder shop, ExistingEntries before, ImportLists lists,
            Map<String, CustomerEntry> customers, Map<String, List<StoredForms.Given>> machinesOfSites,
            Problems problems) {

        Optional<Form> site(String id, LocalDate today) {
            Optional<CsvFile.Row> row = Optional.ofNullable(lists.sites().get(id));
            List<StoredForms.Given> machines = machinesOfSites.getOrDefault(id, List.of());
            Place place = row.map(found -> found.place(ImportLists.SITE))
                    .orElseGet(() -> machines.getFirst().place());
            Optional<SiteEntry> old = Optional.ofNullable(before.sites().get(id));
            Optional<String> payer = row.flatMap(found -> payer(found, old))
                    .or(() -> old.map(SiteEntry::customer));
            Optional<StoredForms.Whole> whole = shop.forms().site(id, payer.flatMap(this::customer),
                    row.map(found -> ImportLists.values(found, Column.SITE)).orElse(Map.of()), place,
                    old.map(SiteEntry::data), before.machines().getOrDefault(id, Map.of()), machines);
            row.ifPresent(cells -> cells.cell("taxPlace").flatMap(
                    named -> RegisterOffice.taxPlace(shop, named, cells.place("taxPlace"), today))
                    .ifPresent(problems::add));
            return payer.flatMap(customer -> whole.map(found -> EntryForms.of(customer, found)));
        }

        private Optional<String> payer(CsvFile.Row row, Optional<SiteEntry> old) {
            Optional<String> named = row.cell(ImportLists.CUSTOMER);
            if (named.isEmpty() && old.isEmpty()) {
                problems.add(Code.MISSING, row.place(ImportLists.CUSTOMER), "who pays is missing",
                        "the id of a customer");
            }
            return named.filter(id -> isKnown(row, ImportLists.CUSTOMER, id, lists.customers().keySet(),
                    before.customers().keySet(), problems));
        }

        private Optional<Customer> customer(String id) {
            return Optional.ofNullable(customers.get(id)).or(() -> Optional.ofNullable(before.customers().get(id)))
                    .map(CustomerEntry::customer);
        }
    }
}
