package icequill.office.register;

import icequill.files.answer.AnswerMapper;
import icequill.files.form.CustomerForm;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.StoredForms;
import icequill.files.yaml.Tree;
import icequill.files.yaml.TreeJson;
import icequill.ledger.Reading;
import icequill.ledger.entries.AccountEntry;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What stands in the book, as the forms by which it can be handed over. */
final class EntryForms {

    private EntryForms() {
    }

    static Form of(CustomerEntry entry) {
        return new Form(Optional.of(FormKind.CUSTOMER), entry.id(), customer(entry));
    }

    static Form of(String customer, StoredForms.Whole site) {
        String id = site.site().id();
        return new Form(Optional.of(FormKind.SITE), id, site(id, customer, site.data(), site.machines().values()));
    }

    static Tree.Branch customer(CustomerEntry entry) {
        return form(FormKind.CUSTOMER, entry.id(), CustomerForm.of(entry.parent(), entry.customer()).json());
    }

    /** With its machines. */
    static Tree.Branch site(SiteEntry entry, Reading book) {
        return site(entry.id(), entry.customer(), entry.data(),
                book.entries().machinesOf(entry.id()).stream().map(MachineEntry::data).toList());
    }

    /** A part of its site's form. */
    static Tree.Branch machine(MachineEntry entry) {
        return TreeJson.branch(entry.data(), "the book's machine " + entry.id());
    }

    static Tree.Branch agreement(AgreementEntry entry) {
        return form(FormKind.AGREEMENT, entry.id(), entry.data());
    }

    static Tree.Branch request(RequestEntry entry) {
        return form(FormKind.of(entry.kind()).orElseThrow(), entry.id(), entry.data());
    }

    static Tree.Branch visit(VisitEntry entry) {
        Tree.Branch matter = TreeJson.branch(entry.data(), "the book's visit " + entry.id());
        return headed(FormKind.ofVisit(matter, entry.isPlanned()), entry.id(), matter);
    }

    static Tree.Branch account(AccountEntry entry) {
        return form(FormKind.ACCOUNT, entry.customer(), entry.data());
    }

    static Tree.Branch payment(PaymentEntry entry) {
        return form(FormKind.PAYMENT, entry.id(), AnswerMapper.text(PaymentForm.of(entry)));
    }

    private static Tree.Branch site(String id, String customer, String data, Collection<String> machines) {
        Tree.Branch own = TreeJson.branch(data, "the book's site " + id);
        Map<String, Tree> entries = new LinkedHashMap<>();
        entries.put(StoredForms.CUSTOMER_KEY, text(customer, own));
        entries.putAll(own.entries());
        entries.put(StoredForms.MACHINES_KEY, new Tree.Row(machines.stream()
                .<Tree>map(machine -> TreeJson.branch(machine, "the book's machine at " + id)).toList(), own.place()));
        return headed(FormKind.SITE, id, new Tree.Branch(entries, own.keys(), own.place()));
    }

    private static Tree.Branch form(FormKind kind, String id, String data) {
        return headed(kind, id, TreeJson.branch(data, "the book's " + kind.words() + " " + id));
    }

    private static Tree.Branch headed(FormKind kind, String id, Tree.Branch matter) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        entries.put("format", Tree.Leaf.of("1", Tree.Leaf.Kind.NUMBER, matter.place()));
        entries.put(Form.KIND_KEY, text(kind.key(), matter));
        entries.put(Form.ID_KEY, text(id, matter));
        entries.putAll(matter.entries());
        return new Tree.Branch(entries, matter.keys(), matter.place());
    }

    private static Tree text(String text, Tree.Branch in) {
        return Tree.Leaf.of(text, Tree.Leaf.Kind.TEXT, in.place());
    }
}
