package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Tree;
import icequill.money.Currencies;
import icequill.party.Address;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Remittance;
import icequill.party.SalesTaxEncoding;
import icequill.party.Shop;
import icequill.party.Sourcing;
import icequill.party.TaxBasis;
import icequill.problem.Code;
import icequill.problem.Problem;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.money.CurrencyUnit;

/** Makes the shop from shop.yaml. */
public final class ShopReader {

    private ShopReader() {
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    public static Optional<Shop> read(Fields fields) {
        fields.text("accent").filter(color -> color.matches("#[0-9a-fA-F]{6}")).map(Contrast::onWhite)
                .filter(contrast -> contrast < Contrast.LEAST)
                .ifPresent(contrast -> fields.problems().add(Code.NOT_ALLOWED, fields.place("accent"),
                        String.format(Locale.ROOT, "the color has a contrast of %.2f:1 on white paper", contrast),
                        "a darker one, of " + Contrast.LEAST + ":1 or more, such as \"#1f4e5f\""));
        Optional<CurrencyUnit> currency = currency(fields);
        Optional<ZoneId> zone = zone(fields);
        Optional<Address> address = fields.child("address").flatMap(ShopReader::address);
        Optional<Remittance> remittance = fields.child("remittance")
                .flatMap(entry -> remittance(entry, fields.child("reminders")));
        if (currency.isEmpty() || zone.isEmpty() || address.isEmpty() || remittance.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Shop(fields.text("name").orElse(""), address.get(), fields.text("phone").orElse(""),
                fields.text("email").orElse(""), details(fields, "registrations"), fields.text("vatId"),
                remittance.get(), zone.get(),
                currency.get(), fields.language("language").orElse(Language.ENGLISH),
                fields.constant("paper", PaperSize.class).orElse(PaperSize.LETTER),
                fields.text("accent").orElse("#000000"), fields.text("logo"),
                fields.constant("taxBasis", TaxBasis.class).orElse(TaxBasis.INVOICE),
                fields.constant("sourcing", Sourcing.class).orElse(Sourcing.MACHINE), fields.text("taxPlace"),
                fields.integer("paymentDays").orElse(0),
                fields.constant("salesTaxEncoding", SalesTaxEncoding.class).orElse(SalesTaxEncoding.PLAIN)));
    }

    static Optional<Address> address(Fields fields) {
        List<String> street = fields.leaves("street").stream().map(Tree.Leaf::text).toList();
        Optional<String> city = fields.text("city");
        Optional<String> country = fields.text("country");
        return city.isEmpty() || country.isEmpty()
                ? Optional.empty()
                : Optional.of(new Address(street, city.get(), fields.text("region").orElse(""),
                        fields.text("postalCode").orElse(""), country.get()));
    }

    /** @param reminders whom payers ask, as the shop's reminders say it */
    private static Optional<Remittance> remittance(Fields fields, Optional<Fields> reminders) {
        return fields.child("address").flatMap(ShopReader::address)
                .map(address -> new Remittance(fields.text("payee").orElse(""), address, details(fields, "bank"),
                        fields.text("account"), reminders.flatMap(entry -> entry.text("contact")),
                        reminders.flatMap(entry -> entry.text("phone"))));
    }

    private static List<Remittance.Detail> details(Fields fields, String key) {
        return fields.children(key).stream().map(
                detail -> new Remittance.Detail(detail.text("name").orElse(""), detail.text("value").orElse("")))
                .toList();
    }

    private static Optional<CurrencyUnit> currency(Fields fields) {
        Optional<String> code = fields.text("currency");
        Optional<CurrencyUnit> currency = code.flatMap(Currencies::find);
        if (code.isPresent() && currency.isEmpty()) {
            fields.problems().add(Code.UNKNOWN_CURRENCY, fields.place("currency"),
                    "there is no currency \"" + code.get() + "\" with minor units", "a code of ISO 4217, such as USD");
        }
        return currency;
    }

    private static Optional<ZoneId> zone(Fields fields) {
        return fields.text("zone").flatMap(id -> {
            try {
                return Optional.of(ZoneId.of(id));
            } catch (DateTimeException unknown) {
                fields.problems().add(Code.UNKNOWN_NAME, fields.place("zone"), "there is no time zone \"" + id + "\"",
                        Problem.nearest(id, ZoneId.getAvailableZoneIds())
                                .map(name -> "did you mean \"" + name + "\"?")
                                .orElse("a name of the time zone database, such as America/New_York"));
                return Optional.empty();
            }
        });
    }
}
