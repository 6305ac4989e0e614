package icequill.files.form;

import icequill.explain.ConstantKey;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Certificate;
import icequill.party.Contact;
import icequill.party.Customer;
import icequill.party.Timeline;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A customer in the keys of a site's file. */
public final class CustomerForm {

    private CustomerForm() {
    }

    /** Keys and values, in the order of a file. */
    public static Map<String, Object> of(Customer customer) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("name", customer.name());
        customer.language().ifPresent(language -> form.put("language", language.tag()));
        customer.contacts().telephone().ifPresent(number -> form.put("telephone", number));
        if (!customer.contacts().people().isEmpty()) {
            form.put("contacts", customer.contacts().people().stream().map(CustomerForm::contact).toList());
        }
        customer.vendorNumber().ifPresent(number -> form.put("vendorNumber", number));
        customer.paymentDays().ifPresent(days -> form.put("paymentDays", days));
        if (customer.claimsExemption()) {
            form.put("claimsExemption", true);
        }
        if (!customer.certificates().isEmpty()) {
            form.put("certificates", customer.certificates().stream().map(CustomerForm::certificate).toList());
        }
        customer.accepted().ifPresent(accepted -> form.put("accepted",
                Map.of("date", accepted.date().toString(), "paper", accepted.paper())));
        if (!customer.billTo().entries().isEmpty()) {
            form.put("billTo", customer.billTo().entries().stream().map(CustomerForm::dated).toList());
        }
        customer.notes().ifPresent(notes -> form.put("notes", notes));
        return form;
    }

    private static Map<String, Object> contact(Contact contact) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("name", contact.name());
        contact.role().ifPresent(role -> form.put("role", role));
        if (!contact.purposes().isEmpty()) {
            form.put("for", contact.purposes().stream().sorted().map(ConstantKey::of).toList());
        }
        contact.telephone().ifPresent(number -> form.put("telephone", number));
        contact.email().ifPresent(email -> form.put("email", email));
        return form;
    }

    private static Map<String, Object> certificate(Certificate certificate) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("kind", ConstantKey.of(certificate.kind()));
        form.put("number", certificate.number());
        form.put("state", certificate.state());
        form.put("reason", certificate.reason());
        form.put("signed", certificate.signed().toString());
        certificate.expires().ifPresent(day -> form.put("expires", day.toString()));
        return form;
    }

    private static Map<String, Object> dated(Timeline.Entry<BillTo> entry) {
        Map<String, Object> form = new LinkedHashMap<>();
        LocalDate first = entry.period().first();
        if (!first.equals(LocalDate.MIN)) {
            form.put("from", first.toString());
        }
        entry.period().end().ifPresent(day -> form.put("until", day.toString()));
        form.putAll(billTo(entry.value()));
        return form;
    }

    private static Map<String, Object> billTo(BillTo billTo) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("name", billTo.name());
        billTo.attention().ifPresent(person -> form.put("attention", person));
        form.put("address", address(billTo.address()));
        billTo.email().ifPresent(email -> form.put("email", email));
        billTo.vatId().ifPresent(id -> form.put("vatId", id));
        return form;
    }

    private static Map<String, Object> address(Address address) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("street", List.copyOf(address.street()));
        form.put("city", address.city());
        Optional.of(address.region()).filter(region -> !region.isEmpty())
                .ifPresent(region -> form.put("region", region));
        form.put("postalCode", address.postalCode());
        form.put("country", address.country());
        return form;
    }
}
