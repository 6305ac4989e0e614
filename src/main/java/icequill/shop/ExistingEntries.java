package icequill.shop;

import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.SiteEntry;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the book holds before lists are taken in, by id.
 *
 * @param machines by site, then by id
 */
public record ExistingEntries(Map<String, CustomerEntry> customers, Map<String, SiteEntry> sites,
        Map<String, Map<String, String>> machines) {

    /** There is no book. */
    public static final ExistingEntries EMPTY = new ExistingEntries(Map.of(), Map.of(), Map.of());

    public static ExistingEntries of(Reading open) {
        Map<String, CustomerEntry> customers = new LinkedHashMap<>();
        open.entries().customers().forEach(entry -> customers.put(entry.id(), entry));
        Map<String, SiteEntry> sites = new LinkedHashMap<>();
        open.entries().sites().forEach(entry -> sites.put(entry.id(), entry));
        Map<String, Map<String, String>> machines = new LinkedHashMap<>();
        open.entries().machines().forEach(entry -> machines
                .computeIfAbsent(entry.site(), site -> new LinkedHashMap<>()).put(entry.id(), entry.data()));
        return new ExistingEntries(customers, sites, machines);
    }
}
