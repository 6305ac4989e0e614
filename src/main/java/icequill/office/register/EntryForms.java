package icequill.office.register;

import icequill.files.form.CustomerForm;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.StoredForms;
import icequill.files.yaml.Json;
import icequill.ledger.Reading;
import icequill.ledger.entries.AccountEntry;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.money.MonetaryAmount;

/** What stands in the book, as the forms by which it can be handed over. */
final class EntryForms {

    private EntryForms() {
    }

    static Form of(CustomerEntry entry) {
        return form(FormKind.CUSTOMER, entry.id(), customer(entry));
    }

    static Form of(String customer, StoredForms.Whole site) {
        return form(FormKind.SITE, site.site().id(), site(customer, site.data(), site.machines().values()));
    }

    /** A customer's keys and values. */
    static Map<String, Object> customer(CustomerEntry entry) {
        Map<String, Object> form = head(FormKind.CUSTOMER, entry.id());
        entry.parent().ifPresent(parent -> form.put(StoredForms.PARENT_KEY, parent));
        form.putAll(CustomerForm.of(entry.customer()));
        return form;
    }

    /** The contacts among what the book holds of a customer or a site. */
    static List<Map<String, Object>> contacts(Map<String, Object> values) {
        return values.get("contacts") instanceof List<?> contacts
                ? contacts.stream().map(contact -> {
                    Map<String, Object> parts = new LinkedHashMap<>();
                    ((Map<?, ?>) contact).forEach((key, value) -> parts.put(String.valueOf(key), value));
                    return parts;
                }).toList()
                : List.of();
    }

    /** A site's keys and values, with its machines. */
    static Map<String, Object> site(SiteEntry entry, Reading book) {
        Map<String, Object> form = head(FormKind.SITE, entry.id());
        form.putAll(site(entry.customer(), entry.data(),
                book.entries().machinesOf(entry.id()).stream().map(MachineEntry::data).toList()));
        return form;
    }

    static Map<String, Object> agreement(AgreementEntry entry) {
        return stored(FormKind.AGREEMENT, entry.id(), entry.data());
    }

    static Map<String, Object> request(RequestEntry entry) {
        return stored(FormKind.of(entry.kind()).orElseThrow(), entry.id(), entry.data());
    }

    static Map<String, Object> visit(VisitEntry entry) {
        return stored(entry.isPlanned() ? FormKind.PLANNED_VISIT : FormKind.VISIT, entry.id(), entry.data());
    }

    static Map<String, Object> account(AccountEntry entry) {
        return stored(FormKind.ACCOUNT, entry.customer(), entry.data());
    }

    static Map<String, Object> payment(PaymentEntry entry) {
        Map<String, Object> form = head(FormKind.PAYMENT, entry.id());
        form.put("customer", entry.customer());
        form.put("date", entry.day().toString());
        form.put("amount", number(entry.amount()));
        form.put("currency", entry.amount().getCurrency().getCurrencyCode());
        form.put("way", entry.way().toLowerCase(Locale.ROOT).replace('_', '-'));
        entry.reference().ifPresent(text -> form.put("reference", text));
        if (entry.isBack()) {
            form.put("back", true);
        }
        if (entry.shares().isEmpty()) {
            form.put("onAccount", true);
        } else {
            form.put("for", entry.shares().stream().map(EntryForms::share).toList());
        }
        return form;
    }

    private static Map<String, Object> share(PaymentEntry.Share share) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("number", share.bill());
        form.put("amount", number(share.amount()));
        form.put("from", share.day().toString());
        return form;
    }

    private static BigDecimal number(MonetaryAmount amount) {
        return new BigDecimal(Amounts.plain(amount));
    }

    private static Map<String, Object> site(String customer, String data, Collection<String> machines) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put(StoredForms.CUSTOMER_KEY, customer);
        form.putAll(Json.map(data));
        if (!machines.isEmpty()) {
            form.put(StoredForms.MACHINES_KEY, machines.stream().map(Json::map).toList());
        }
        return form;
    }

    private static Map<String, Object> stored(FormKind kind, String id, String data) {
        Map<String, Object> form = head(kind, id);
        form.putAll(Json.map(data));
        return form;
    }

    private static Map<String, Object> head(FormKind kind, String id) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("format", 1);
        form.put(Form.KIND_KEY, kind.key());
        form.put(Form.ID_KEY, id);
        return form;
    }

    private static Form form(FormKind kind, String id, Map<String, Object> matter) {
        Map<String, Object> whole = head(kind, id);
        whole.putAll(matter);
        return Form.stored(kind, id, Json.line(whole));
    }
}
