package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.files.yaml.Tree;
import icequill.files.yaml.YamlReader;
import icequill.party.Conditions.Air;
import icequill.party.SiteKind;
import icequill.party.SiteKinds;
import icequill.party.Wording;
import icequill.problem.Problems;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Makes the kinds of sites from files of kind site-kinds. */
public final class SiteKindsReader {

    private static final String SHIPPED = "/icequill/pricing/site-kinds.yaml";

    private SiteKindsReader() {
    }

    /**
     * The kinds of all files of pricing/ that list some; those that come with the program where none does.
     *
     * @param files of any kind
     */
    public static SiteKinds read(List<Fields> files) {
        List<Fields> kinds = files.stream().filter(file -> file.text("kind").filter("site-kinds"::equals).isPresent())
                .flatMap(file -> file.children("kinds").stream()).toList();
        return kinds.isEmpty() ? shipped() : new SiteKinds(all(kinds));
    }

    /** One whose name is wrong, which was reported, is known all the same, so that sites of it are not reported too. */
    private static List<SiteKind> all(List<Fields> kinds) {
        return Names.list(kinds, (id, entry) -> Optional.of(new SiteKind(id,
                entry.wording("name").orElseGet(() -> Wording.same(id)),
                Set.copyOf(entry.constants("air", Air.class)))));
    }

    private static SiteKinds shipped() {
        try (InputStream stream = SiteKindsReader.class.getResourceAsStream(SHIPPED)) {
            String text = new String(Objects.requireNonNull(stream, SHIPPED).readAllBytes(), StandardCharsets.UTF_8);
            return new SiteKinds(YamlReader.parse(text, SHIPPED, new Problems()).stream()
                    .filter(Tree.Branch.class::isInstance).map(Tree.Branch.class::cast)
                    .flatMap(tree -> all(new Fields(tree, new Problems()).children("kinds")).stream()).toList());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(SHIPPED, unreadable);
        }
    }
}
