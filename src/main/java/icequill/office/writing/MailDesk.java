package icequill.office.writing;

import icequill.files.form.MailSettings;
import icequill.ledger.Transaction;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.life.mail.MailMatter;
import icequill.party.Contact;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.life.MailLife;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes mails into the book, in the transaction of what they are about; they are sent afterwards. */
public final class MailDesk {

    private static final int MARK = 12;

    private final ShopBook book;

    public MailDesk(ShopBook book) {
        this.book = book;
    }

    /** Writes the mail of a paper that was just issued for a customer, where he wants such papers at once. */
    void atOnce(Transaction open, IssuedPaper paper, CustomerEntry customer) {
        if (customer.customer().mail().atOnce().contains(purpose(paper.series().kind()))) {
            open.lifeSteps().add(first(MailLife.idAfter(paper.number(), List.of()),
                    new MailMatter.Numbered(paper.number(), MailMatter.Occasion.ISSUED), customer.id(),
                    paper.origin().site(), paper.seal()));
        }
    }

    /**
     * The first step of a mail, which is stored nowhere yet.
     *
     * @param id of the mail
     * @param customer by id
     * @param mark a hash of what it brings, of which its message's id is made: the same from then on
     */
    public LifeStep first(String id, MailMatter matter, String customer, Optional<String> site, String mark) {
        String message = id.toLowerCase(Locale.ROOT) + "." + mark.substring(0, MARK) + "@" + domain();
        return MailLife.written(id, matter, customer, site, message, now(), today());
    }

    /** The moment, as steps of mails have it. */
    public Instant now() {
        return book.clock().instant().truncatedTo(ChronoUnit.SECONDS);
    }

    public LocalDate today() {
        return ShopDay.today(book.folder(), book.clock());
    }

    private String domain() {
        String address = MailSettings.of(book.folder()).from().orElse("");
        String domain = address.substring(address.lastIndexOf('@') + 1);
        return domain.matches("[A-Za-z0-9-]+([.][A-Za-z0-9-]+)+") ? domain : "shop.invalid";
    }

    /** For what somebody is turned to who gets such papers. */
    public static Contact.Purpose purpose(PaperKind kind) {
        return switch (kind) {
        case INVOICE, CREDIT_NOTE, STATEMENT, REMINDER -> Contact.Purpose.BILLS;
        case MAINTENANCE_QUOTE, REPAIR_QUOTE, SERVICE_AGREEMENT, RENEWAL_NOTICE -> Contact.Purpose.RENEWALS;
        case VISIT_RECORD -> Contact.Purpose.VISITS;
        };
    }
}
