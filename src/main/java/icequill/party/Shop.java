package icequill.party;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;

/**
 * The service firm that runs the program.
 *
 * @param currency of all its prices and papers
 * @param registrations tax numbers and licences to print, as name and number
 * @param vatId the VAT identifier, for places with VAT
 * @param logo a PNG or JPEG file in the shop folder
 * @param accent the one color of its papers, as {@code #rrggbb}
 * @param taxPlace where the shop is, as the tax rules name it; used when sourcing says so
 * @param salesTaxEncoding of electronic invoices
 * @param paymentDays from the date of an invoice to the day it is due, unless the customer has other terms
 */
public record Shop(String name, Address address, String phone, String email, List<Remittance.Detail> registrations,
        Optional<String> vatId, Remittance remittance, ZoneId zone, CurrencyUnit currency, Language language,
        PaperSize paper, String accent,
        Optional<String> logo, TaxBasis taxBasis, Sourcing sourcing, Optional<String> taxPlace, int paymentDays,
        SalesTaxEncoding salesTaxEncoding) {

    public Shop {
        registrations = List.copyOf(registrations);
    }
}
