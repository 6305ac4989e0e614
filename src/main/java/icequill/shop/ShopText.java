package icequill.shop;

import icequill.files.yaml.Tree;
import icequill.problem.Place;
import java.util.List;

/** A text of the shop's own, and where it stands. */
public record ShopText(Place place, String text) {

    /** All that stand in a file. */
    static List<ShopText> all(Tree tree) {
        return tree.texts().map(leaf -> new ShopText(leaf.place(), leaf.text())).toList();
    }
}
