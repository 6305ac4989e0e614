package icequill.office.letters;

import icequill.files.form.MailSettings;
import icequill.mail.MailAddress;
import icequill.party.Shop;
import icequill.problem.Place;
import icequill.problem.Validated;

/** Whom a shop's mails come from. */
public final class Sender {

    private static final Place FROM = new Place("shop.yaml", 0, "mail.from");

    private Sender() {
    }

    public static Validated<MailAddress> of(MailSettings settings, Shop shop) {
        return MailAddress.read(settings.from().orElse(shop.email()), FROM)
                .then(address -> address.named(shop.name(), FROM));
    }
}
