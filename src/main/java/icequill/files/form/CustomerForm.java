package icequill.files.form;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import icequill.files.answer.AnswerMapper;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Certificate;
import icequill.party.Contact;
import icequill.party.Customer;
import icequill.party.Language;
import icequill.party.MailWishes;
import icequill.party.Timeline;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A customer by the keys of his form, in their order.
 *
 * @param claimsExemption true, or not there
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record CustomerForm(Optional<String> parent, String name, Optional<String> language, Optional<String> telephone,
        List<Person> contacts, Optional<String> vendorNumber, Optional<Integer> paymentDays,
        Optional<Boolean> claimsExemption, List<Exemption> certificates, Optional<Accepted> accepted,
        List<Billed> billTo, Optional<String> notes, Optional<Mail> mail) {

    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    record Person(String name, Optional<String> role, @JsonProperty("for") List<Contact.Purpose> purposes,
            Optional<String> telephone, Optional<String> email) {}

    record Exemption(Certificate.Kind kind, String number, String state, String reason, LocalDate signed,
            Optional<LocalDate> expires) {}

    record Accepted(LocalDate date, String paper) {}

    record Billed(Optional<LocalDate> from, Optional<LocalDate> until, String name, Optional<String> attention,
            Lines address, Optional<String> email, Optional<String> vatId) {}

    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    record Mail(List<Contact.Purpose> atOnce, Optional<Boolean> bare, Optional<Boolean> data, List<String> enclosed) {}

    record Lines(List<String> street, String city, Optional<String> region, String postalCode, String country) {}

    /**
     * The form of a customer.
     *
     * @param parent the account that he belongs to
     */
    public static CustomerForm of(Optional<String> parent, Customer customer) {
        return new CustomerForm(parent, customer.name(), customer.language().map(Language::tag),
                customer.contacts().telephone(),
                customer.contacts().people().stream().map(CustomerForm::person).toList(), customer.vendorNumber(),
                customer.paymentDays(), Optional.of(true).filter(claimed -> customer.claimsExemption()),
                customer.certificates().stream().map(CustomerForm::exemption).toList(),
                customer.accepted().map(accepted -> new Accepted(accepted.date(), accepted.paper())),
                customer.billTo().entries().stream().map(CustomerForm::billed).toList(), customer.notes(),
                Optional.of(customer.mail()).filter(mail -> !mail.equals(MailWishes.USUAL)).map(CustomerForm::mail));
    }

    /** As JSON, which is as good as a file. */
    public String json() {
        return AnswerMapper.text(this);
    }

    private static Person person(Contact contact) {
        return new Person(contact.name(), contact.role(), contact.purposes().stream().sorted().toList(),
                contact.telephone(), contact.email());
    }

    private static Mail mail(MailWishes mail) {
        return new Mail(mail.atOnce().stream().sorted().toList(), Optional.of(true).filter(bare -> mail.bare()),
                Optional.of(true).filter(data -> mail.data()), mail.enclosed());
    }

    private static Exemption exemption(Certificate certificate) {
        return new Exemption(certificate.kind(), certificate.number(), certificate.state(), certificate.reason(),
                certificate.signed(), certificate.expires());
    }

    private static Billed billed(Timeline.Entry<BillTo> entry) {
        return new Billed(Optional.of(entry.period().first()).filter(first -> !first.equals(LocalDate.MIN)),
                entry.period().end(), entry.value().name(), entry.value().attention(), lines(entry.value().address()),
                entry.value().email(), entry.value().vatId());
    }

    private static Lines lines(Address address) {
        return new Lines(address.street(), address.city(),
                Optional.of(address.region()).filter(region -> !region.isEmpty()), address.postalCode(),
                address.country());
    }
}
