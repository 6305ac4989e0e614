package icequill.shop;

import icequill.files.yaml.Tree;
import icequill.problem.Place;
import java.util.ArrayList;
import java.util.List;

/** The texts of a shop that were read so far. For one thread. */
final class ShopTexts {

    private final List<ShopText> read;

    ShopTexts(List<ShopText> before) {
        read = new ArrayList<>(before);
    }

    void add(Tree tree) {
        read.addAll(ShopText.all(tree));
    }

    void addAll(List<ShopText> texts) {
        read.addAll(texts);
    }

    List<ShopText> list() {
        return List.copyOf(read);
    }

    /** Where a text stands that was read from a file; the file alone when there is none. */
    Place place(String file, String path) {
        return read.stream().map(ShopText::place)
                .filter(place -> place.file().equals(file) && place.path().equals(path))
                .findFirst().orElseGet(() -> Place.ofFile(file));
    }
}
