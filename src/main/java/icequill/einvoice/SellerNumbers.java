package icequill.einvoice;

import icequill.document.PricedPaper;
import icequill.party.Remittance.Detail;
import icequill.party.Shop;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * By which numbers the seller is known.
 *
 * @param assigned the one in the customer's books, BT-29
 * @param vatId BT-31; empty where nothing on the bill is subject to VAT
 * @param registrations of the shop, to be named one by one; EN 16931 takes one without a name (BT-30) where there is no VAT
 *            identifier, and all as a text (BT-33)
 */
record SellerNumbers(Optional<String> assigned, Optional<String> vatId, List<Detail> registrations) {

    SellerNumbers {
        registrations = List.copyOf(registrations);
    }

    static SellerNumbers of(PricedPaper bill, TaxScheme taxing) {
        Shop shop = bill.shop();
        return new SellerNumbers(bill.vendorNumber(), shop.vatId().filter(id -> taxing.namesVat()),
                shop.registrations());
    }

    /** BT-30. */
    Optional<String> legal() {
        return vatId.isPresent() ? Optional.empty() : registrations.stream().map(Detail::value).findFirst();
    }

    /** BT-33. */
    Optional<String> text() {
        return Optional
                .of(registrations.stream().map(entry -> entry.name() + " " + entry.value())
                        .collect(Collectors.joining("; ")))
                .filter(text -> !text.isEmpty());
    }

    boolean isEmpty() {
        return assigned.isEmpty() && vatId.isEmpty() && registrations.isEmpty();
    }
}
