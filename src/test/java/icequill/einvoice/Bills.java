package icequill.einvoice;

import static icequill.einvoice.BillBuilder.EXEMPT;
import static icequill.einvoice.BillBuilder.EXPORT;
import static icequill.einvoice.BillBuilder.OUTSIDE;
import static icequill.einvoice.BillBuilder.REDUCED;
import static icequill.einvoice.BillBuilder.REVERSE;
import static icequill.einvoice.BillBuilder.SALES;
import static icequill.einvoice.BillBuilder.STANDARD;
import static icequill.einvoice.BillBuilder.WITHIN_EU;
import static icequill.einvoice.BillBuilder.ZERO;
import static icequill.einvoice.BillBuilder.salesTax;
import static icequill.einvoice.BillBuilder.vat;

import icequill.document.Bill;
import icequill.work.Outcome;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Every kind of bill, by name. Sums and taxes were worked out with pencil and paper. */
final class Bills {

    private Bills() {
    }

    /** 45 min at 98.00 an hour, two filters at 42.15; 19 % of 73.50 is 13.965, 7 % of 84.30 is 5.901. */
    static Bill twoRates() {
        return twoRatesLines().invoice("157.80", "157.80", "19.87", "177.67");
    }

    static BillBuilder twoRatesLines() {
        return vat().labor(45, "98", "73.50", STANDARD).item("water filter", "2", Unit.EACH, "42.15", "84.30", REDUCED)
                .tax(STANDARD, "73.50", "13.97").tax(REDUCED, "84.30", "5.90");
    }

    /** 10.00 shared over three categories; 19 % of 120.53 is 22.9007, 7 % of 83.80 is 5.866. */
    static Bill discountOverRates() {
        return vat().single("service call", "125.50", "120.53", Optional.of(STANDARD))
                .single("water filter", "87.25", "83.80", Optional.of(REDUCED))
                .single("disposal", "40", "38.42", Optional.of(EXEMPT)).discount("10")
                .tax(STANDARD, "120.53", "22.90").tax(REDUCED, "83.80", "5.87").tax(EXEMPT, "38.42", "0")
                .invoice("252.75", "242.75", "28.77", "271.52");
    }

    /** 40 min at 98.00 and 65 min at 147.00 an hour: 65.333 and 159.25; 19 % of 276.58 is 52.5502. */
    static Bill laborAcrossBands() {
        return vat().unpriced("service call", Unit.VISIT, "52", STANDARD).labor(40, "98", "65.33", STANDARD)
                .labor(65, "147", "159.25", STANDARD).tax(STANDARD, "276.58", "52.55")
                .invoice("276.58", "276.58", "52.55", "329.13");
    }

    /** Only the labor is paid, at 10 % off; 19 % of 88.20 is 16.758. */
    static Bill includedAndWarranty() {
        return vat().notCharged("service call", "52", Outcome.INCLUDED, STANDARD)
                .notCharged("water valve", "64.30", Outcome.WARRANTY, STANDARD)
                .notCharged("second flush", "18", Outcome.CALLBACK, REDUCED)
                .notCharged("ice scoop", "9.95", Outcome.GOODWILL, REDUCED)
                .notCharged("new float", "39", Outcome.DECLINED, ZERO)
                .line("Labor", Quantity.of(60, Unit.MINUTE), vat().price("98", Unit.HOUR), "98", "9.80", "88.20",
                        "88.20", Optional.of(STANDARD), Outcome.CHARGED)
                .tax(STANDARD, "88.20", "16.76").tax(REDUCED, "0", "0").tax(ZERO, "0", "0")
                .invoice("88.20", "88.20", "16.76", "104.96");
    }

    /** Nothing is left to pay. */
    static Bill allUnderWarranty() {
        return vat().notCharged("water valve", "64.30", Outcome.WARRANTY, STANDARD).tax(STANDARD, "0", "0").invoice("0",
                "0", "0", "0");
    }

    /** 13.5 x 3.9219 is 52.94565; a service call beyond the last zone and a surcharge have no price for one; 19 % of 127.90 is 24.301. */
    static Bill doseAndSurcharge() {
        return vat().nights(1).item("descaler", "13.5", Unit.FLUID_OUNCE, "3.9219", "52.95", STANDARD)
                .unpriced("service call beyond", Unit.VISIT, "68.32", STANDARD)
                .unpriced("surcharge", Unit.EACH, "6.63", STANDARD).tax(STANDARD, "127.90", "24.30")
                .invoice("127.90", "127.90", "24.30", "152.20");
    }

    static Bill zeroRated() {
        return vat().item("descaler", "10", Unit.GALLON, "3.25", "32.50", ZERO).tax(ZERO, "32.50", "0").invoice("32.50",
                "32.50", "0", "32.50");
    }

    static Bill exempt() {
        return vat().single("disposal", "40", "40", Optional.of(EXEMPT)).tax(EXEMPT, "40", "0").invoice("40", "40", "0",
                "40");
    }

    /** Work for a business in another state, which owes the tax itself. */
    static Bill reverseCharge() {
        return vat().labor(45, "98", "73.50", REVERSE).tax(REVERSE, "73.50", "0").invoice("73.50", "73.50", "0",
                "73.50");
    }

    static Bill withinTheUnion() {
        return vat().single("water filter", "87.25", "87.25", Optional.of(WITHIN_EU)).tax(WITHIN_EU, "87.25", "0")
                .invoice("87.25", "87.25", "0", "87.25");
    }

    static Bill export() {
        return vat().single("water filter", "87.25", "87.25", Optional.of(EXPORT)).tax(EXPORT, "87.25", "0")
                .invoice("87.25", "87.25", "0", "87.25");
    }

    static Bill outsideScope() {
        return vat().single("membership", "40", "36", Optional.of(OUTSIDE)).discount("4").tax(OUTSIDE, "36", "0")
                .invoice("40", "36", "0", "36");
    }

    /** What is outside the scope of VAT, exempt and without any rate beside what is taxed; 19 % of 100.00. */
    static Bill outsideScopeBesideOthers() {
        return vat().single("service call", "100", "100", Optional.of(STANDARD))
                .single("membership", "40", "40", Optional.of(OUTSIDE))
                .single("disposal", "30", "30", Optional.of(EXEMPT))
                .single("chemicals", "20", "20", Optional.empty()).tax(STANDARD, "100", "19").tax(OUTSIDE, "40", "0")
                .tax(EXEMPT, "30", "0").invoice("190", "190", "19", "209");
    }

    /** Yen have no decimals; 10 % would be usual, but the rate is not what is looked at: 19 % of 12,345 is 2,345.55. */
    static Bill yen() {
        return vat().currency("JPY").single("service call", "12345", "12345", Optional.of(STANDARD))
                .tax(STANDARD, "12345", "2346").invoice("12345", "12345", "2346", "14691");
    }

    /** 50 min at 9,815 an hour are 8,179.17, which is billed as whole yen. */
    static Bill yenOfLabor() {
        return vat().currency("JPY").labor(50, "9815", "8179", STANDARD).tax(STANDARD, "8179", "1554")
                .invoice("8179", "8179", "1554", "9733");
    }

    static Bill wholeCredit() {
        return twoRatesLines().creditNote("157.80", "157.80", "19.87", "177.67");
    }

    /** Half of the labor; a first half would have had 6.98 of tax, so this last one has what is left of 13.97. */
    static Bill lastHalfCredit() {
        return vat().line("Labor", Quantity.of(45, Unit.MINUTE), vat().price("98", Unit.HOUR), "36.75", "0", "36.75",
                "36.75", Optional.of(STANDARD), Outcome.CHARGED).tax(STANDARD, "36.75", "6.99")
                .creditNote("36.75", "36.75", "6.99", "43.74");
    }

    /** 10.00 off 125.50, 87.25 and 40.00, only the middle one taxed: 8.875 % of 83.80 is 7.43725. */
    static Bill salesTaxOnOneLine() {
        return salesTax().single("service call", "125.50", "120.53", Optional.empty())
                .single("water filter", "87.25", "83.80", Optional.of(SALES))
                .single("cleaning", "40", "38.42", Optional.empty()).discount("10")
                .tax(SALES, "83.80", "7.44", "3.35", "3.77", "0.32")
                .invoice("252.75", "242.75", "7.44", "250.19");
    }

    /** Labor and a warranty part, all taxed: 8.875 % of 276.58 is 24.546. */
    static Bill salesTaxOnAll() {
        return salesTax().unpriced("service call", Unit.VISIT, "52", SALES).labor(40, "98", "65.33", SALES)
                .labor(65, "147", "159.25", SALES).notCharged("water valve", "64.30", Outcome.WARRANTY, SALES)
                .tax(SALES, "276.58", "24.55", "11.06", "12.45", "1.04")
                .invoice("276.58", "276.58", "24.55", "301.13");
    }

    static Bill noSalesTax() {
        return salesTax().single("service call", "52", "52", Optional.empty()).invoice("52", "52", "0", "52");
    }

    /** A second half of 150.00 at 8.875 %: 6.66 of 13.31 went back with the first. */
    static Bill salesTaxCredit() {
        return salesTax().single("service call", "75", "75", Optional.of(SALES))
                .tax(SALES, "75", "6.65", "3", "3.37", "0.28").creditNote("75", "75", "6.65", "81.65");
    }

    static Map<String, Bill> withVat() {
        Map<String, Bill> bills = new LinkedHashMap<>();
        bills.put("two rates", twoRates());
        bills.put("discount over rates", discountOverRates());
        bills.put("labor across bands", laborAcrossBands());
        bills.put("included and warranty", includedAndWarranty());
        bills.put("all under warranty", allUnderWarranty());
        bills.put("dose and surcharge", doseAndSurcharge());
        bills.put("zero rated", zeroRated());
        bills.put("exempt", exempt());
        bills.put("reverse charge", reverseCharge());
        bills.put("within the union", withinTheUnion());
        bills.put("export", export());
        bills.put("outside the scope", outsideScope());
        bills.put("outside the scope beside others", outsideScopeBesideOthers());
        bills.put("yen", yen());
        bills.put("yen of labor", yenOfLabor());
        bills.put("whole credit", wholeCredit());
        bills.put("last half credit", lastHalfCredit());
        return bills;
    }

    static Map<String, Bill> withSalesTax() {
        Map<String, Bill> bills = new LinkedHashMap<>();
        bills.put("sales tax on one line", salesTaxOnOneLine());
        bills.put("sales tax on all", salesTaxOnAll());
        bills.put("no sales tax", noSalesTax());
        bills.put("sales tax credit", salesTaxCredit());
        return bills;
    }

    static Map<String, Bill> all() {
        Map<String, Bill> bills = new LinkedHashMap<>(withVat());
        bills.putAll(withSalesTax());
        return bills;
    }
}
