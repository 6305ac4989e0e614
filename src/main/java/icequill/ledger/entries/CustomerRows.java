package icequill.ledger.entries;

import icequill.ledger.store.AddressColumns;
import icequill.ledger.store.DamagedRow;
import icequill.ledger.trail.PastRow;
import icequill.party.Acceptance;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Certificate;
import icequill.party.Contact;
import icequill.party.Contacts;
import icequill.party.Customer;
import icequill.party.Language;
import icequill.party.MailWishes;
import icequill.party.Period;
import icequill.party.Timeline;
import icequill.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Update;

/** Customers as rows, with their bill-to, certificates and contacts. */
public final class CustomerRows {

    private static final String SELECT = """
            SELECT id, name, parent_id, language, vendor_number, payment_days, claims_exemption, accepted_on,
                accepted_paper, forgotten_on, telephone, notes FROM customer
            """;

    private final Handle handle;

    public CustomerRows(Handle handle) {
        this.handle = handle;
    }

    /** Without what stands in other tables. */
    public record Row(String id, String name, Optional<String> parentId, Optional<String> language,
            Optional<String> vendorNumber, Optional<Integer> paymentDays, boolean claimsExemption,
            Optional<Accepted> accepted, Optional<LocalDate> forgottenOn, Optional<String> telephone,
            Optional<String> notes) {

        static Row of(CustomerEntry entry) {
            Customer customer = entry.customer();
            return new Row(entry.id(), customer.name(), entry.parent(), customer.language().map(Language::tag),
                    customer.vendorNumber(), customer.paymentDays(), customer.claimsExemption(),
                    customer.accepted().map(accepted -> new Accepted(accepted.date(), accepted.paper())),
                    entry.forgotten(), customer.contacts().telephone(), customer.notes());
        }

        CustomerEntry entry(List<Billed> billTo, List<Exemption> certificates, List<Person> contacts,
                List<Mail> mail) {
            return new CustomerEntry(id, new Customer(name, language.flatMap(Language::ofTag),
                    new Timeline<>(billTo.stream().map(Billed::dated).toList()), vendorNumber, paymentDays,
                    claimsExemption, certificates.stream().map(Exemption::certificate).toList(),
                    accepted.map(known -> new Acceptance(known.acceptedOn(), known.acceptedPaper())),
                    new Contacts(telephone, contacts.stream().map(Person::contact).toList()), notes,
                    mail.stream().map(Mail::wishes).findFirst().orElse(MailWishes.USUAL)), parentId,
                    forgottenOn);
        }
    }

    /** In which paper he accepted prices, and when. */
    public record Accepted(LocalDate acceptedOn, String acceptedPaper) {}

    /**
     * Who is billed.
     *
     * @param validFrom empty where it holds from ever
     */
    public record Billed(String validFrom, Optional<LocalDate> validTo, String name, Optional<String> attention,
            Optional<String> email, Optional<String> vatId, Address address) {

        static Billed of(Timeline.Entry<BillTo> entry) {
            LocalDate first = entry.period().first();
            BillTo billTo = entry.value();
            return new Billed(first.equals(LocalDate.MIN) ? "" : first.toString(), entry.period().end(), billTo.name(),
                    billTo.attention(), billTo.email(), billTo.vatId(), billTo.address());
        }

        private Timeline.Entry<BillTo> dated() {
            Period period = DamagedRow.made("bill-to from " + validFrom, () -> new Period(
                    validFrom.isEmpty() ? LocalDate.MIN : LocalDate.parse(validFrom), validTo));
            return new Timeline.Entry<>(period, new BillTo(name, attention, address, email, vatId), Place.NOWHERE);
        }
    }

    /** A certificate. */
    public record Exemption(Certificate.Kind kind, String number, String state, String reason, LocalDate signedOn,
            Optional<LocalDate> expiresOn) {

        static Exemption of(Certificate certificate) {
            return new Exemption(certificate.kind(), certificate.number(), certificate.state(), certificate.reason(),
                    certificate.signed(), certificate.expires());
        }

        private Certificate certificate() {
            return new Certificate(kind, number, state, reason, signedOn, expiresOn, Place.NOWHERE);
        }
    }

    /** A contact. */
    public record Person(String name, Optional<String> role, List<Contact.Purpose> purposes,
            Optional<String> telephone, Optional<String> email) {

        static Person of(Contact contact) {
            return new Person(contact.name(), contact.role(), contact.purposes().stream().sorted().toList(),
                    contact.telephone(), contact.email());
        }

        private Contact contact() {
            return new Contact(name, role, Set.copyOf(purposes), telephone, email);
        }
    }

    /**
     * How papers are mailed.
     *
     * @param enclosed names, each in a line of its own
     */
    public record Mail(List<Contact.Purpose> atOnce, boolean bare, boolean data, String enclosed) {

        static Mail of(MailWishes wishes) {
            return new Mail(wishes.atOnce().stream().sorted().toList(), wishes.bare(), wishes.data(),
                    String.join("\n", wishes.enclosed()));
        }

        private MailWishes wishes() {
            return new MailWishes(Set.copyOf(atOnce), bare, data, enclosed.lines().toList());
        }
    }

    Optional<CustomerEntry> find(String id) {
        return handle.createQuery(SELECT + "WHERE id = :id").bind("id", id).mapTo(Row.class).findOne()
                .map(this::entry);
    }

    List<CustomerEntry> all() {
        return handle.createQuery(SELECT + "WHERE id NOT IN (SELECT customer_id FROM customer_merged) ORDER BY id")
                .mapTo(Row.class).list().stream().map(this::entry).toList();
    }

    /** As the trail says that he was. */
    static CustomerEntry past(PastRow row) {
        return row.as(Row.class).entry(row.parts("billTo", Billed.class), row.parts("certificates", Exemption.class),
                row.parts("contacts", Person.class), row.parts("mail", Mail.class));
    }

    private CustomerEntry entry(Row row) {
        return row.entry(
                parts(row, Billed.class, "SELECT valid_from, valid_to, name, attention, email, vat_id, "
                        + AddressColumns.NAMES + " FROM customer_bill_to WHERE customer_id = :id"),
                parts(row, Exemption.class, "SELECT kind, number, state, reason, signed_on, expires_on"
                        + " FROM customer_certificate WHERE customer_id = :id ORDER BY position"),
                parts(row, Person.class, "SELECT name, role, purposes, telephone, email FROM customer_contact"
                        + " WHERE customer_id = :id ORDER BY position"),
                parts(row, Mail.class, "SELECT at_once, bare, data, enclosed FROM customer_mail"
                        + " WHERE customer_id = :id"));
    }

    private <T> List<T> parts(Row row, Class<T> part, String query) {
        return handle.createQuery(query).bind("id", row.id()).mapTo(part).list();
    }

    public void insert(CustomerEntry entry) {
        bound(handle.createUpdate(
                """
                        INSERT INTO customer (id, name, parent_id, language, vendor_number, payment_days, claims_exemption,
                            accepted_on, accepted_paper, forgotten_on, telephone, notes)
                        VALUES (:id, :name, :parentId, :language, :vendorNumber, :paymentDays, :claimsExemption, :acceptedOn,
                            :acceptedPaper, :forgottenOn, :telephone, :notes)"""),
                entry).execute();
        insertParts(entry);
    }

    void update(CustomerEntry entry) {
        bound(handle.createUpdate(
                """
                        UPDATE customer SET name = :name, parent_id = :parentId, language = :language,
                            vendor_number = :vendorNumber, payment_days = :paymentDays, claims_exemption = :claimsExemption,
                            accepted_on = :acceptedOn, accepted_paper = :acceptedPaper, forgotten_on = :forgottenOn,
                            telephone = :telephone, notes = :notes WHERE id = :id"""),
                entry).execute();
        handle.execute("DELETE FROM customer_bill_to WHERE customer_id = ?", entry.id());
        handle.execute("DELETE FROM customer_certificate WHERE customer_id = ?", entry.id());
        handle.execute("DELETE FROM customer_contact WHERE customer_id = ?", entry.id());
        handle.execute("DELETE FROM customer_mail WHERE customer_id = ?", entry.id());
        insertParts(entry);
    }

    private static Update bound(Update statement, CustomerEntry entry) {
        Optional<Acceptance> accepted = entry.customer().accepted();
        return statement.bindMethods(Row.of(entry))
                .bind("acceptedOn", accepted.map(Acceptance::date).map(Object::toString))
                .bind("acceptedPaper", accepted.map(Acceptance::paper));
    }

    private void insertParts(CustomerEntry entry) {
        Customer customer = entry.customer();
        insert(entry, customer.billTo().entries().stream().map(Billed::of).toList(), "INSERT INTO customer_bill_to"
                + " (customer_id, valid_from, valid_to, name, attention, email, vat_id, " + AddressColumns.NAMES
                + ") VALUES (:customer, :validFrom, :validTo, :name, :attention, :email, :vatId, "
                + AddressColumns.VALUES + ")");
        insert(entry, customer.certificates().stream().map(Exemption::of).toList(), "INSERT INTO customer_certificate"
                + " (customer_id, position, kind, number, state, reason, signed_on, expires_on) VALUES (:customer,"
                + " :position, :kind, :number, :state, :reason, :signedOn, :expiresOn)");
        insert(entry, customer.contacts().people().stream().map(Person::of).toList(), "INSERT INTO customer_contact"
                + " (customer_id, position, name, role, purposes, telephone, email) VALUES (:customer, :position, :name,"
                + " :role, :purposes, :telephone, :email)");
        if (!customer.mail().equals(MailWishes.USUAL)) {
            handle.createUpdate("INSERT INTO customer_mail (customer_id, at_once, bare, data, enclosed)"
                    + " VALUES (:customer, :atOnce, :bare, :data, :enclosed)").bindMethods(Mail.of(customer.mail()))
                    .bind("customer", entry.id()).execute();
        }
    }

    private void insert(CustomerEntry entry, List<?> parts, String statement) {
        for (int i = 0; i < parts.size(); i++) {
            handle.createUpdate(statement).bindMethods(parts.get(i)).bind("customer", entry.id()).bind("position", i)
                    .execute();
        }
    }
}
