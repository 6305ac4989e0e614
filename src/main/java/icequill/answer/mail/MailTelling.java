package icequill.answer.mail;

import icequill.ledger.Reading;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.life.MailLife;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;

/**
 * Tells where mails stand.
 *
 * @param now at which moment
 * @param zone of the shop
 */
public record MailTelling(Instant now, ZoneId zone) {

    /** As they stand now. */
    public static MailTelling of(ShopBook book) {
        return new MailTelling(book.clock().instant(), ShopDay.zone(book.folder(), book.clock()));
    }

    /** The moment where the shop is. */
    public ZonedDateTime here() {
        return MailEntry.moment(now, zone);
    }

    /** Where one stands, and whose it is now. */
    public MailEntry entry(Reading open, MailLife mail) {
        return MailEntry.of(mail, open.entries().customerNow(mail.customer()).found(), now, zone);
    }

    /** Where those about a paper stand, in their order. */
    public List<MailEntry> about(Reading open, String paper) {
        return MailLife.about(open, paper).stream().map(mail -> entry(open, mail)).toList();
    }
}
