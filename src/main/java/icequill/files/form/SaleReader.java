package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.work.ChargeClass;
import icequill.work.Sale;
import java.util.List;
import java.util.Optional;

/** Makes what was sold without a visit from the form that tells of it. */
record SaleReader(Fields form, Shop shop) {

    static final String KEY = "sold";

    /** What only somebody who came could have done. */
    private static final List<String> OF_VISITS = List.of("people", "machines", "serviceCall", "quote", "flat",
            "doneBy", "safeFrom", "nextDue");

    /** Empty where nothing was sold so, or where what is written is wrong, which is then reported. */
    Optional<Sale> read() {
        Optional<Sale> sale = form.child(KEY).flatMap(this::sale);
        if (form.entries().containsKey(KEY)) {
            OF_VISITS.stream().filter(form.entries()::containsKey).forEach(key -> form.problems().add(
                    Code.NOT_ALLOWED, form.place(key), key + " belongs to a visit, and this was sold without one",
                    "either people, or sold"));
            if (form.children("lines").isEmpty()) {
                form.problems().add(Code.MISSING, form.place(KEY), "nothing was sold",
                        "lines, each with a material or text");
            }
        } else if (form.children("people").isEmpty()) {
            form.problems().add(Code.MISSING, form.place(), "\"people\" is missing",
                    "who was there; or sold: for what was shipped or fetched without a visit");
        }
        return sale;
    }

    private Optional<Sale> sale(Fields sold) {
        Optional<Sale.Way> way = sold.constant("way", Sale.Way.class);
        Optional<Sale.Shipping> shipping = sold.child("shipping")
                .flatMap(charge -> new OwnLineReader(charge, shop.currency()).price().map(price -> new Sale.Shipping(
                        price, charge.constant("class", ChargeClass.class), charge.place())));
        if (way.filter(found -> found == Sale.Way.FETCHED).isPresent() && sold.entries().containsKey("shipping")) {
            sold.problems().add(Code.NOT_ALLOWED, sold.place("shipping"), "fetched, and yet shipping is charged",
                    "way: shipped, or no shipping");
        }
        return way.flatMap(how -> sold.day("on").map(day -> new Sale(day.atStartOfDay(shop.zone()), how, shipping)));
    }
}
