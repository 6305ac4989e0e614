package icequill.files.form;

import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.party.Shop;
import icequill.request.BrushingRequest;
import java.util.Optional;

/** Makes a request for a brushing sheet from its file. */
public final class BrushingReader {

    private BrushingReader() {
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    public static Optional<BrushingRequest> read(Fields fields, Shop shop) {
        Optional<String> site = fields.id("site");
        Optional<Integer> minutes = fields.integer("minutes");
        return site.flatMap(id -> minutes.flatMap(own -> Prices.charged(fields, "wage", shop.currency())
                .flatMap(wage -> Prices.charged(fields, "brush", shop.currency())
                        .map(brush -> new BrushingRequest(id, own, wage, brush,
                                fields.integer("bought").filter(number -> number >= 0).orElse(0),
                                fields.day("lastBrushed"),
                                fields.leaves("reachable").stream()
                                        .map(leaf -> new BrushingRequest.Named(leaf.text(), leaf.place())).toList(),
                                fields.place("site"))))));
    }
}
