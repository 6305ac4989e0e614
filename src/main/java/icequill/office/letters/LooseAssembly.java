package icequill.office.letters;

import icequill.files.form.MailSettings;
import icequill.ledger.Reading;
import icequill.ledger.entries.MailFile;
import icequill.life.mail.MailLetter;
import icequill.life.mail.MailMatter.Loose;
import icequill.mail.Enclosure;
import icequill.mail.MailAddress;
import icequill.mail.MailParties;
import icequill.office.letters.WrittenMail.Along;
import icequill.party.Contact;
import icequill.party.Contacts;
import icequill.party.Customer;
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
 * Puts mails about papers without a number into words: to those whom the book names now, with the file and the words that were kept.
 *
 * @param now where the shop is
 */
public record LooseAssembly(ShopBook book, MailSettings settings, ZonedDateTime now) {

    /** A mail as it would go out now. */
    public Validated<WrittenMail> of(Reading open, MailLife mail, Loose matter) {
        return of(open, mail, matter, open.entries().mailFiles(mail.id()));
    }

    /** @param kept what goes along, of which the mail knows the hash */
    Validated<WrittenMail> of(Reading open, MailLife mail, Loose matter, List<MailFile> kept) {
        return matter.letter().map(Validated::valid).orElseGet(LooseAssembly::forgotten)
                .then(letter -> written(open, mail, matter, letter, kept));
    }

    private static <T> Validated<T> forgotten() {
        return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE,
                "the customer was forgotten, and what the mail brought with him", "nothing; withdraw the mail"));
    }

    private Validated<WrittenMail> written(Reading open, MailLife mail, Loose matter, MailLetter letter,
            List<MailFile> kept) {
        Problems problems = new Problems();
        Optional<MailParties> parties = problems
                .take(parties(open, mail.customer(), mail.site(), matter.purpose(), letter.printed()));
        List<Enclosure> files = kept.stream().filter(file -> file.hash().equals(matter.hash()))
                .flatMap(file -> problems.take(Enclosure.of(file.name(), file.mediaType(), file.bytes(), Place.NOWHERE))
                        .stream())
                .toList();
        if (files.isEmpty()) {
            problems.add(Code.BOOK_DAMAGED, Place.NOWHERE, "the file that goes along is not the one that was kept",
                    "the row from a backup");
        }
        return problems.or(parties::orElseThrow).then(known -> WrittenMail.of(mail,
                MailText.of(BookForms.shop(book).shop().orElseThrow(), matter.language(), letter), known,
                new Along(files, List.of(), matter.purpose() == Contact.Purpose.BILLS), now));
    }

    /**
     * From whom to whom.
     *
     * @param customer by id; who was merged is written to as whom he is now
     * @param printed the address on the paper
     */
    Validated<MailParties> parties(Reading open, String customer, Optional<String> site, Contact.Purpose purpose,
            Optional<String> printed) {
        ShopFolder folder = BookForms.shop(book);
        Problems problems = new Problems();
        Optional<List<MailAddress>> to = problems.take(open.entries().customerNow(customer).then(entry -> Recipients
                .of(entry.id(), contacts(folder, site, purpose, entry.customer()), purpose, printed)));
        Optional<MailAddress> from = folder.shop().flatMap(shop -> problems.take(Sender.of(settings, shop)));
        problems.addAll(folder.problems());
        return problems.or(() -> new MailParties(from.orElseThrow(), Optional.empty(), to.orElseThrow()));
    }

    /** Those of the site come first where somebody is to be told of a visit. */
    private static Contacts contacts(ShopFolder folder, Optional<String> site, Contact.Purpose purpose,
            Customer customer) {
        return site.filter(known -> purpose == Contact.Purpose.VISITS)
                .flatMap(known -> folder.site(known, Place.NOWHERE)).map(Site::contacts)
                .filter(there -> there.people().stream().anyMatch(
                        one -> one.purposes().contains(Contact.Purpose.VISITS) && one.email().isPresent()))
                .orElse(customer.contacts());
    }
}
