package icequill.answer;

import icequill.agreement.UsualTerms;
import icequill.explain.ConstantKey;
import icequill.party.Address;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.party.TaxBasis;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;

/**
 * How a shop is set up.
 *
 * @param zone of its days and hours, as the IANA calls it
 * @param accent the one color of its papers, as {@code #rrggbb}
 * @param logo a file in the shop folder
 * @param agreed what agreements say that were made of quotes, unless something else is said
 * @param isShared whether several offices share its book
 */
public record ShopFacts(String name, Address address, String phone, String email, String zone, CurrencyUnit currency,
        Language language, PaperSize paper, String accent, Optional<String> logo, TaxBasis taxBasis,
        Optional<String> taxPlace, int paymentDays, UsualTerms agreed, Path folder, boolean isShared) {

    /** For a screen. */
    public Stream<String> lines() {
        return Stream.of(name, String.join(", ", address.lines()), phone, email,
                "language " + language.tag() + ", paper " + ConstantKey.of(paper) + ", " + currency.getCurrencyCode()
                        + ", "
                        + zone + ", to be paid within " + paymentDays + " days",
                "agreements: " + agreed.cancelDays() + " days of notice within the term, refused " + agreed.refuseDays()
                        + " days before its end, renewed for "
                        + agreed.renewalMonths().map(months -> months + " months").orElse("as long as the term"),
                "accent " + accent + logo.map(file -> ", logo " + file).orElse(""));
    }

    public static ShopFacts of(Shop shop, UsualTerms agreed, Path folder, boolean isShared) {
        return new ShopFacts(shop.name(), shop.address(), shop.phone(), shop.email(), shop.zone().getId(),
                shop.currency(),
                shop.language(), shop.paper(), shop.accent(), shop.logo(), shop.taxBasis(), shop.taxPlace(),
                shop.paymentDays(), agreed, folder, isShared);
    }
}
