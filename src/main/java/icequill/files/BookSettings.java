package icequill.files;

import icequill.problem.Problems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * How the shop's book is kept, as shop.yaml says.
 *
 * @param database a PostgreSQL database, as a JDBC URL; empty for a file in the shop folder
 * @param office its mark in paper numbers; empty where there is only one
 * @param retentionYears from the end of a paper's year, for which it is kept
 */
public record BookSettings(Optional<String> database, Optional<String> office, int retentionYears) {

    /** A file in the shop folder, and seven years (common practice; ask your adviser). */
    public static final BookSettings USUAL = new BookSettings(Optional.empty(), Optional.empty(), 7);

    /** Those of a shop folder, as far as shop.yaml can be read; its faults show when the shop itself is read. */
    public static BookSettings of(Path folder) {
        Path file = folder.resolve("shop.yaml");
        return Files.exists(file)
                ? YamlReader.read(file, "shop.yaml", new Problems())
                        .flatMap(tree -> tree instanceof Tree.Branch branch
                                ? new Fields(branch, new Problems()).child("book")
                                : Optional.empty())
                        .map(BookSettings::read).orElse(USUAL)
                : USUAL;
    }

    private static BookSettings read(Fields fields) {
        return new BookSettings(fields.text("database"), fields.text("office"),
                fields.integer("retentionYears").orElse(USUAL.retentionYears));
    }
}
