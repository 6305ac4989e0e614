package icequill.office.mail;

import icequill.files.form.MailSettings;
import icequill.mail.MailAddress;
import icequill.party.Shop;
import icequill.problem.Place;
import icequill.problem.Validated;

/** Whom a shop's mails come from. */
final class Sender {

    private static final Place FROM = new Place("shop.yaml", 0, "mail.from");

    private Sender() {
    }

    static Validated<MailAddress> of(MailSettings settings, Shop shop) {
        return MailAddress.read(settings.from().orElse(shop.email()), FROM)
                .then(address -> address.named(shop.name(), FROM));
    }
}
