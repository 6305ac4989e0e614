package icequill.office.mail;

import icequill.answer.mail.MailRecipients;
import icequill.answer.mail.MailRecipients.Person;
import icequill.answer.mail.MailRecipients.StandingPaper;
import icequill.answer.mail.MailRecipients.Wishes;
import icequill.explain.ConstantKey;
import icequill.files.form.MailSettings;
import icequill.ledger.entries.CustomerEntry;
import icequill.mail.MailAddress;
import icequill.office.register.ContactChange;
import icequill.office.register.EntryChange;
import icequill.office.register.RegisterOffice;
import icequill.office.writing.MailDesk;
import icequill.party.BillTo;
import icequill.party.Contact;
import icequill.party.MailWishes;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The office that knows who gets which papers by mail. */
public final class RecipientsOffice {

    private final ShopBook book;

    private RecipientsOffice(ShopBook book) {
        this.book = book;
    }

    public static RecipientsOffice of(ShopBook book) {
        return new RecipientsOffice(book);
    }

    /** Those of a customer, by id. */
    public Validated<MailRecipients> of(String customer) {
        LocalDate today = new MailDesk(book).today();
        List<StandingPaper> standing = MailSettings.of(book.folder()).standing().stream()
                .map(paper -> new StandingPaper(paper.name(), paper.title(), paper.expires(),
                        paper.expires().filter(today::isAfter).isPresent()))
                .toList();
        return book.read(open -> open.entries().customer(customer).map(entry -> new MailRecipients(entry.id(),
                entry.customer().name(), entry.customer().contacts().people().stream().map(Person::of).toList(),
                printed(entry, today), Wishes.of(entry.customer().mail()), standing)));
    }

    private static Optional<String> printed(CustomerEntry entry, LocalDate day) {
        return entry.customer().billTo().at(day).flatMap(BillTo::email);
    }

    /** Changes them: all that is wished, or nothing. */
    public Validated<MailRecipients> change(String customer, RecipientsWish wish) {
        Problems problems = new Problems();
        for (int row = 0; row < wish.people().size(); row++) {
            String email = wish.people().get(row).email();
            if (!email.isBlank()) {
                problems.take(MailAddress.read(email, new Place("", 0, "email-" + row)));
            }
        }
        return problems.or(() -> wish).then(valid -> book.atOnce(shop -> changed(shop, customer, wish)));
    }

    private static Validated<MailRecipients> changed(ShopBook shop, String customer, RecipientsWish wish) {
        RegisterOffice register = RegisterOffice.of(shop);
        Problems problems = new Problems();
        Set<String> known = RecipientsOffice.of(shop).of(customer).found().stream()
                .flatMap(all -> all.people().stream()).map(Person::name).collect(Collectors.toSet());
        problems.take(register.customer(new EntryChange(customer, false, flags(wish.wishes())), Optional.empty(),
                Optional.empty()));
        wish.people().forEach(person -> problems.take(register.customerContact(customer,
                new ContactChange(known.contains(person.name()) ? ContactChange.Kind.CHANGE : ContactChange.Kind.ADD,
                        person.name(), Map.of("email", person.email(), "for", keys(person.purposes(), ", "))))));
        return problems.or(() -> customer).then(RecipientsOffice.of(shop)::of);
    }

    private static Map<String, String> flags(MailWishes wishes) {
        Map<String, String> flags = new LinkedHashMap<>();
        flags.put("--mail-at-once", keys(wishes.atOnce(), "; "));
        flags.put("--mail-bare", wishes.bare() ? "yes" : "");
        flags.put("--mail-data", wishes.data() ? "yes" : "");
        flags.put("--mail-enclosed", String.join("; ", wishes.enclosed()));
        return flags;
    }

    private static String keys(Collection<Contact.Purpose> purposes, String between) {
        return purposes.stream().sorted().map(ConstantKey::of).collect(Collectors.joining(between));
    }
}
