package icequill.ledger.entries;

import icequill.ledger.store.AddressColumns;
import icequill.ledger.store.Column;
import icequill.ledger.trail.PastRow;
import icequill.party.Acceptance;
import icequill.party.BillTo;
import icequill.party.Certificate;
import icequill.party.Contact;
import icequill.party.Contacts;
import icequill.party.Customer;
import icequill.party.Language;
import icequill.party.Period;
import icequill.party.Timeline;
import icequill.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.RowView;
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

    Optional<CustomerEntry> find(String id) {
        return handle.createQuery(SELECT + "WHERE id = :id").bind("id", id).map(this::read)
                .findOne();
    }

    List<CustomerEntry> all() {
        return handle.createQuery(SELECT + "WHERE id NOT IN (SELECT customer_id FROM customer_merged) ORDER BY id")
                .map(this::read).list();
    }

    public void insert(CustomerEntry entry) {
        bound(handle.createUpdate(
                """
                        INSERT INTO customer (id, name, parent_id, language, vendor_number, payment_days, claims_exemption,
                            accepted_on, accepted_paper, forgotten_on, telephone, notes)
                        VALUES (:id, :name, :parent, :language, :vendorNumber, :paymentDays, :claims, :acceptedOn, :acceptedPaper,
                            :forgotten, :telephone, :notes)"""),
                entry).execute();
        insertDetails(entry);
    }

    void update(CustomerEntry entry) {
        bound(handle.createUpdate(
                """
                        UPDATE customer SET name = :name, parent_id = :parent, language = :language, vendor_number = :vendorNumber,
                            payment_days = :paymentDays, claims_exemption = :claims, accepted_on = :acceptedOn,
                            accepted_paper = :acceptedPaper, forgotten_on = :forgotten, telephone = :telephone, notes = :notes WHERE id = :id"""),
                entry).execute();
        handle.execute("DELETE FROM customer_bill_to WHERE customer_id = ?", entry.id());
        handle.execute("DELETE FROM customer_certificate WHERE customer_id = ?", entry.id());
        handle.execute("DELETE FROM customer_contact WHERE customer_id = ?", entry.id());
        insertDetails(entry);
    }

    private static Update bound(Update statement, CustomerEntry entry) {
        Customer customer = entry.customer();
        return statement.bind("id", entry.id()).bind("name", customer.name()).bind("parent", entry.parent())
                .bind("language", customer.language().map(Language::tag))
                .bind("vendorNumber", customer.vendorNumber()).bind("paymentDays", customer.paymentDays())
                .bind("claims", customer.claimsExemption() ? 1 : 0)
                .bind("acceptedOn", customer.accepted().map(Acceptance::date).map(Object::toString))
                .bind("acceptedPaper", customer.accepted().map(Acceptance::paper))
                .bind("forgotten", entry.forgotten().map(Object::toString))
                .bind("telephone", customer.contacts().telephone()).bind("notes", customer.notes());
    }

    private void insertDetails(CustomerEntry entry) {
        entry.customer().billTo().entries().forEach(dated -> insert(entry.id(), dated));
        List<Certificate> certificates = entry.customer().certificates();
        for (int i = 0; i < certificates.size(); i++) {
            insert(entry.id(), i, certificates.get(i));
        }
        List<Contact> people = entry.customer().contacts().people();
        for (int i = 0; i < people.size(); i++) {
            insert(entry.id(), i, people.get(i));
        }
    }

    private void insert(String customer, Timeline.Entry<BillTo> dated) {
        BillTo billTo = dated.value();
        LocalDate first = dated.period().first();
        AddressColumns.bind(handle.createUpdate("INSERT INTO customer_bill_to (customer_id, valid_from, valid_to, name,"
                + " attention, email, vat_id, " + AddressColumns.NAMES + ") VALUES (:customer, :from, :to, :name,"
                + " :attention, :email, :vatId, " + AddressColumns.VALUES + ")"), billTo.address())
                .bind("customer", customer).bind("from", first.equals(LocalDate.MIN) ? "" : first.toString())
                .bind("to", dated.period().end().map(Object::toString)).bind("name", billTo.name())
                .bind("attention", billTo.attention()).bind("email", billTo.email()).bind("vatId", billTo.vatId())
                .execute();
    }

    private void insert(String customer, int position, Certificate certificate) {
        handle.createUpdate("INSERT INTO customer_certificate (customer_id, position, kind, number, state, reason,"
                + " signed_on, expires_on) VALUES (:customer, :position, :kind, :number, :state, :reason, :signed, :expires)")
                .bind("customer", customer).bind("position", position).bind("kind", certificate.kind().name())
                .bind("number", certificate.number()).bind("state", certificate.state())
                .bind("reason", certificate.reason()).bind("signed", certificate.signed().toString())
                .bind("expires", certificate.expires().map(Object::toString)).execute();
    }

    private void insert(String customer, int position, Contact contact) {
        handle.createUpdate(
                "INSERT INTO customer_contact (customer_id, position, name, role, purposes, telephone, email)"
                        + " VALUES (:customer, :position, :name, :role, :purposes, :telephone, :email)")
                .bind("customer", customer).bind("position", position).bind("name", contact.name())
                .bind("role", contact.role())
                .bind("purposes",
                        contact.purposes().stream().sorted().map(Enum::name).collect(Collectors.joining(" ")))
                .bind("telephone", contact.telephone()).bind("email", contact.email()).execute();
    }

    private CustomerEntry read(RowView row) {
        String id = Column.text(row, "id");
        return entry(row, billTo(id), certificates(id), contacts(id));
    }

    /** As the trail says that he was. */
    static CustomerEntry past(PastRow row) {
        return entry(row, new Timeline<>(row.parts("billTo").stream().map(CustomerRows::datedBillTo).toList()),
                row.parts("certificates").stream().map(CustomerRows::certificate).toList(),
                row.parts("contacts").stream().map(CustomerRows::contact).toList());
    }

    private static CustomerEntry entry(RowView row, Timeline<BillTo> billTo, List<Certificate> certificates,
            List<Contact> contacts) {
        Optional<Acceptance> accepted = Column.day(row, "accepted_on")
                .map(day -> new Acceptance(day, Column.text(row, "accepted_paper")));
        Customer customer = new Customer(Column.text(row, "name"),
                Column.mayBe(row, "language").flatMap(Language::ofTag), billTo, Column.mayBe(row, "vendor_number"),
                Column.mayBe(row, "payment_days").map(days -> Column.whole("payment_days", days)),
                Column.whole(row, "claims_exemption") == 1, certificates, accepted,
                new Contacts(Column.mayBe(row, "telephone"), contacts), Column.mayBe(row, "notes"));
        return new CustomerEntry(Column.text(row, "id"), customer, Column.mayBe(row, "parent_id"),
                Column.day(row, "forgotten_on"));
    }

    private Timeline<BillTo> billTo(String customer) {
        return new Timeline<>(handle.createQuery("SELECT valid_from, valid_to, name, attention, email, vat_id, "
                + AddressColumns.NAMES + " FROM customer_bill_to WHERE customer_id = :customer")
                .bind("customer", customer).map(CustomerRows::datedBillTo).list());
    }

    private static Timeline.Entry<BillTo> datedBillTo(RowView row) {
        String from = Column.text(row, "valid_from");
        Period period = Column.made("bill-to from " + from, () -> new Period(
                from.isEmpty() ? LocalDate.MIN : Column.day("valid_from", from), Column.day(row, "valid_to")));
        return new Timeline.Entry<>(period, new BillTo(Column.text(row, "name"), Column.mayBe(row, "attention"),
                AddressColumns.read(row), Column.mayBe(row, "email"), Column.mayBe(row, "vat_id")), Place.NOWHERE);
    }

    private List<Certificate> certificates(String customer) {
        return handle.createQuery("SELECT kind, number, state, reason, signed_on, expires_on FROM customer_certificate"
                + " WHERE customer_id = :customer ORDER BY position").bind("customer", customer)
                .map(CustomerRows::certificate).list();
    }

    private static Certificate certificate(RowView row) {
        return new Certificate(
                Column.made("certificate", () -> Certificate.Kind.valueOf(Column.text(row, "kind"))),
                Column.text(row, "number"), Column.text(row, "state"), Column.text(row, "reason"),
                Column.day("signed_on", Column.text(row, "signed_on")), Column.day(row, "expires_on"), Place.NOWHERE);
    }

    private List<Contact> contacts(String customer) {
        return handle.createQuery("SELECT name, role, purposes, telephone, email FROM customer_contact"
                + " WHERE customer_id = :customer ORDER BY position").bind("customer", customer)
                .map(CustomerRows::contact).list();
    }

    private static Contact contact(RowView row) {
        return new Contact(Column.text(row, "name"), Column.mayBe(row, "role"),
                purposes(Column.text(row, "purposes")), Column.mayBe(row, "telephone"), Column.mayBe(row, "email"));
    }

    private static Set<Contact.Purpose> purposes(String words) {
        return Column.made("purposes", () -> Stream.of(words.split(" ", -1)).filter(word -> !word.isEmpty())
                .map(Contact.Purpose::valueOf).collect(Collectors.toSet()));
    }
}
