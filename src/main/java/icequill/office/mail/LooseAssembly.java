package icequill.office.mail;

import icequill.files.form.MailSettings;
import icequill.ledger.Reading;
import icequill.ledger.entries.MailFile;
import icequill.life.mail.MailLetter;
import icequill.life.mail.MailMatter.Loose;
import icequill.mail.Enclosure;
import icequill.mail.MailAddress;
import icequill.mail.MailParties;
import icequill.office.mail.WrittenMail.Along;
import icequill.party.Contact;
import icequill.party.Contacts;
import icequill.party.Customer;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.life.MailLife;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Writes mails about papers without a number: to those whom the book names now, with the file and the words that were kept.
 *
 * @param now where the shop is
 */
record LooseAssembly(ShopBook book, MailSettings settings, ZonedDateTime now) {

    Validated<WrittenMail> of(Reading open, MailLife mail, Loose matter) {
        ShopFolder folder = BookForms.shop(book);
        return matter.letter().map(Validated::valid).orElseGet(LooseAssembly::forgotten)
                .then(letter -> open.entries().customer(mail.customer()).then(entry -> written(mail, matter, letter,
                        new Known(folder.shop().orElseThrow(), contacts(folder, mail, matter, entry.customer()),
                                open.entries().mailFiles(mail.id())))));
    }

    /** What an address and a text need. */
    private record Known(Shop shop, Contacts contacts, List<MailFile> files) {}

    private static <T> Validated<T> forgotten() {
        return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE,
                "the customer was forgotten, and what the mail brought with him", "nothing; withdraw the mail"));
    }

    /** Those of the site come first where somebody is to be told of a visit. */
    private static Contacts contacts(ShopFolder folder, MailLife mail, Loose matter, Customer customer) {
        return mail.site().filter(site -> matter.purpose() == Contact.Purpose.VISITS)
                .flatMap(site -> folder.site(site, Place.NOWHERE)).map(Site::contacts)
                .filter(there -> there.people().stream().anyMatch(
                        one -> one.purposes().contains(Contact.Purpose.VISITS) && one.email().isPresent()))
                .orElse(customer.contacts());
    }

    private Validated<WrittenMail> written(MailLife mail, Loose matter, MailLetter letter, Known known) {
        Problems problems = new Problems();
        Optional<List<MailAddress>> to = problems.take(Recipients.of(mail.customer(), known.contacts(),
                matter.purpose(), letter.printed()));
        Optional<MailAddress> from = problems.take(Sender.of(settings, known.shop()));
        List<Enclosure> files = known.files().stream().filter(file -> file.hash().equals(matter.hash()))
                .flatMap(file -> problems.take(Enclosure.of(file.name(), file.mediaType(), file.bytes(), Place.NOWHERE))
                        .stream())
                .toList();
        if (files.isEmpty()) {
            problems.add(Code.BOOK_DAMAGED, Place.NOWHERE, "the file that goes along is not the one that was kept",
                    "the row from a backup");
        }
        return problems.or(() -> new MailParties(from.orElseThrow(), Optional.empty(), to.orElseThrow()))
                .then(parties -> WrittenMail.of(mail, MailText.of(known.shop(), matter.language(), letter), parties,
                        new Along(files, List.of(), matter.purpose() == Contact.Purpose.BILLS), now));
    }
}
