package icequill.einvoice;

import icequill.document.InvoiceLine;
import icequill.document.PricedPaper;
import icequill.party.Address;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.money.CurrencyUnit;

/** What the rules ask for and a bill may lack. All that is missing is reported at once. */
record RequiredFields(PricedPaper bill, TaxScheme taxing, Problems problems) {

    private static final Set<String> COUNTRIES = Set.of(Locale.getISOCountries());

    /** Prefixes of VAT identifiers that are no countries: Greece, and Northern Ireland (BR-CO-09). */
    private static final Set<String> OTHER_PREFIXES = Set.of("EL", "XI");

    private static final int MOST_DECIMALS = 2;

    static Problems of(PricedPaper bill, List<InvoiceLine> billed, TaxScheme taxing) {
        Problems problems = new Problems();
        RequiredFields needs = new RequiredFields(bill, taxing, problems);
        if (bill.isDraft()) {
            problems.add(Code.MISSING, Place.NOWHERE, "a draft has no number",
                    "only an issued paper can be sent as an electronic invoice");
        }
        if (billed.isEmpty()) {
            problems.add(Code.MISSING, Place.NOWHERE, "nothing is billed", "an electronic invoice needs a line");
        }
        needs.countries();
        if (taxing.followsEn16931()) {
            needs.currency();
            needs.numbers();
        }
        return problems;
    }

    private void countries() {
        country(bill.shop().address(), bill.shop().name(), shop("address.country"));
        country(bill.billTo().address(), bill.billTo().name(), Place.NOWHERE);
        country(bill.served().address(), bill.served().site(), Place.NOWHERE);
    }

    private void country(Address address, String whose, Place place) {
        if (!COUNTRIES.contains(address.country())) {
            problems.add(Code.NOT_ALLOWED, place,
                    "the address of " + whose + " is in \"" + address.country() + "\", which is no country",
                    "a code of ISO 3166-1, such as US");
        }
    }

    private void currency() {
        CurrencyUnit currency = bill.totals().net().getCurrency();
        if (currency.getDefaultFractionDigits() > MOST_DECIMALS) {
            problems.add(Code.NOT_ALLOWED, shop("currency"),
                    "amounts in " + currency.getCurrencyCode() + " have " + currency.getDefaultFractionDigits()
                            + " decimals, and an electronic invoice by EN 16931 has no more than " + MOST_DECIMALS,
                    "send the paper itself");
        }
    }

    /** Without VAT any number by which the seller is known will do; with it, it must be that for VAT. */
    private void numbers() {
        if (!taxing.namesVat()) {
            if (SellerNumbers.of(bill, taxing).isEmpty()) {
                problems.add(Code.MISSING, shop("registrations"),
                        "an electronic invoice by EN 16931 needs a number by which the shop is known",
                        "add registrations, with the name and value of a tax number or license");
            }
            return;
        }
        bill.shop().vatId().ifPresentOrElse(id -> prefix(id, bill.shop().name(), shop("vatId")),
                () -> problems.add(Code.MISSING, shop("vatId"), "an invoice with VAT needs the shop's VAT identifier",
                        "add vatId, such as DE123456789"));
        bill.billTo().vatId().ifPresent(id -> prefix(id, bill.billTo().name(), Place.NOWHERE));
        if (bill.billTo().vatId().isEmpty() && bill.totals().taxes().stream()
                .anyMatch(total -> total.rate().category().isOwedByCustomer())) {
            problems.add(Code.MISSING, Place.NOWHERE,
                    bill.billTo().name() + " owes the tax, so the invoice needs the customer's VAT identifier",
                    "add vatId to billTo, such as DE123456789");
        }
    }

    private void prefix(String vatId, String whose, Place place) {
        String prefix = vatId.substring(0, Math.min(2, vatId.length()));
        if (!COUNTRIES.contains(prefix) && !OTHER_PREFIXES.contains(prefix)) {
            problems.add(Code.NOT_ALLOWED, place,
                    "the VAT identifier \"" + vatId + "\" of " + whose + " does not begin with a country",
                    "two letters of ISO 3166-1, or EL for Greece, such as DE123456789");
        }
    }

    private static Place shop(String path) {
        return new Place("shop.yaml", 0, path);
    }
}
