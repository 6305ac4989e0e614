package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Tree;
import icequill.files.yaml.YamlReader;
import icequill.problem.Problems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;

/** The time zone of a shop, without the rest of it. */
public final class ShopZone {

    private ShopZone() {
    }

    /** As shop.yaml says; empty where that cannot be understood, which shows when the shop itself is read. */
    public static Optional<ZoneId> of(Path folder) {
        Path file = folder.resolve("shop.yaml");
        return Files.exists(file)
                ? YamlReader.read(file, "shop.yaml", new Problems())
                        .flatMap(tree -> tree instanceof Tree.Branch branch
                                ? new Fields(branch, new Problems()).text("zone")
                                : Optional.empty())
                        .flatMap(ShopZone::known)
                : Optional.empty();
    }

    private static Optional<ZoneId> known(String id) {
        try {
            return Optional.of(ZoneId.of(id));
        } catch (DateTimeException unknown) {
            return Optional.empty();
        }
    }
}
