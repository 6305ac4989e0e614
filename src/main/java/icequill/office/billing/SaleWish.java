package icequill.office.billing;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.YamlWriter;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A sale without a visit, as somebody tells it.
 *
 * @param site whose it is, by id
 * @param things how much of each material, by id
 * @param way shipped or fetched
 * @param shipping what sending costs the customer
 */
public record SaleWish(String site, Map<String, BigDecimal> things, LocalDate day, String way,
        Optional<BigDecimal> shipping, Optional<String> purchaseOrder) {

    /** So much of a site's id begins that of a sale, which must not be too long. */
    private static final int SITE_PART = 40;

    public SaleWish {
        things = new LinkedHashMap<>(things);
    }

    /** How much of each, as it was typed. */
    public static Validated<Map<String, BigDecimal>> amounts(Map<String, String> typed) {
        Problems problems = new Problems();
        Map<String, BigDecimal> amounts = new LinkedHashMap<>();
        typed.forEach((material, text) -> {
            if (text.matches("\\d{1,9}([.]\\d{1,9})?")) {
                amounts.put(material, new BigDecimal(text));
            } else {
                problems.add(Code.NOT_ALLOWED, Place.NOWHERE, material + "=" + text + " is no amount",
                        "a number above 0, such as " + material + "=2");
            }
        });
        return problems.or(() -> amounts);
    }

    /** The form that somebody might have written, under a name that the book does not have yet. */
    FormName form(ShopBook book) {
        String id = new FreeVisitId(book)
                .like(site.substring(0, Math.min(SITE_PART, site.length())) + "-sale-" + day);
        Map<String, Object> sold = new LinkedHashMap<>();
        sold.put("on", day.toString());
        sold.put("way", way);
        shipping.ifPresent(price -> sold.put("shipping", Map.of("price", price)));
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("format", 1);
        form.put(Form.KIND_KEY, FormKind.SALE.key());
        form.put(Form.ID_KEY, id);
        form.put("site", site);
        purchaseOrder.ifPresent(number -> form.put("order", Map.of("purchaseOrder", number)));
        form.put("sold", sold);
        form.put("lines", things.entrySet().stream()
                .map(thing -> Map.of("material", thing.getKey(), "amount", thing.getValue())).toList());
        return new FormName.InHand(id, YamlWriter.text(List.of(form)));
    }
}
