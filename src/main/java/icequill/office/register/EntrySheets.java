package icequill.office.register;

import icequill.answer.EntrySheet;
import icequill.ledger.Reading;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.papers.IssuedPaper;
import java.util.List;
import java.util.Optional;

/** Tells of entries of the book, with what belongs to them. */
record EntrySheets(Reading open) {

    /** With his sites, those who were merged into him, and his papers. */
    EntrySheet of(CustomerEntry entry) {
        return new EntrySheet("customer", entry.id(), Optional.empty(), entry.forgotten(), EntryForms.customer(entry),
                open.entries().sitesOf(entry.id()).stream().map(SiteEntry::id).toList(),
                open.entries().mergedInto(entry.id()).stream().map(CustomerEntry::id).toList(),
                numbers(open.papers().ofCustomer(entry.id())));
    }

    /** With its machines, and sites that were merged into it. */
    EntrySheet of(SiteEntry entry) {
        return new EntrySheet("site", entry.id(), Optional.empty(), Optional.empty(), EntryForms.site(entry, open),
                List.of(), open.entries().sitesMergedInto(entry.id()), List.of());
    }

    EntrySheet of(MachineEntry entry) {
        return new EntrySheet("machine", entry.id(), Optional.of(entry.site()), Optional.empty(),
                EntryForms.machine(entry), List.of(), List.of(), List.of());
    }

    /** With its papers. */
    EntrySheet of(AgreementEntry entry) {
        return new EntrySheet("agreement", entry.id(), Optional.empty(), Optional.empty(), EntryForms.agreement(entry),
                List.of(), List.of(), numbers(open.papers().ofAgreement(entry.number())));
    }

    EntrySheet of(RequestEntry entry) {
        return EntrySheet.of(entry.kind(), entry.id(), EntryForms.request(entry));
    }

    private static List<String> numbers(List<IssuedPaper> papers) {
        return papers.stream().map(IssuedPaper::number).toList();
    }
}
