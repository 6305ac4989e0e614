package icequill.files.pricing;

import icequill.files.yaml.Tree;
import icequill.files.yaml.YamlReader;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The settings that are the same in all offices of a shop: shop.yaml without its part {@code book}, which may hold a password. */
final class SharedSettings {

    private static final String SHOP = "shop.yaml";
    private static final String BOOK = "book";

    private SharedSettings() {
    }

    /** The text without the lines of that part; what cannot be taken apart is a problem. */
    static Validated<String> of(String text) {
        Optional<Tree.Branch> settings = parsed(text);
        String rest = text;
        // A key that stands there twice is a problem elsewhere, and must not be let through here.
        Optional<Place> book = place(settings);
        while (settings.isPresent() && book.isPresent()) {
            Optional<String> shorter = without(rest, settings.get(), book.get().line());
            settings = shorter.flatMap(SharedSettings::parsed);
            rest = shorter.orElse(rest);
            book = place(settings);
        }
        return settings.isPresent()
                ? Validated.valid(rest)
                : Validated.invalid(new Problem(Code.UNREADABLE,
                        Place.ofFile(SHOP), "the part \"book\" cannot be told from the rest",
                        "keys and values, each key at the beginning of a line of its own"));
    }

    private static Optional<Tree.Branch> parsed(String text) {
        return YamlReader.parse(text, SHOP, new Problems())
                .flatMap(tree -> tree instanceof Tree.Branch branch ? Optional.of(branch) : Optional.empty());
    }

    private static Optional<Place> place(Optional<Tree.Branch> settings) {
        return settings.map(branch -> branch.keys().get(BOOK));
    }

    private static Optional<String> without(String text, Tree.Branch settings, int first) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        boolean isAlone = settings.keys().entrySet().stream()
                .noneMatch(key -> !key.getKey().equals(BOOK) && key.getValue().line() == first);
        if (!isAlone || !lines.get(first - 1).startsWith(BOOK)) {
            return Optional.empty();
        }
        int next = settings.keys().values().stream().mapToInt(Place::line).filter(line -> line > first).min()
                .orElse(lines.size() + 1);
        // Comments before the next key belong to that.
        while (next - 1 > first && isComment(lines.get(next - 2))) {
            next--;
        }
        lines.subList(first - 1, next - 1).clear();
        return Optional.of(String.join("\n", lines));
    }

    private static boolean isComment(String line) {
        return line.isBlank() || line.startsWith("#");
    }
}
