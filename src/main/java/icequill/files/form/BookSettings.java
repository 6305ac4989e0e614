package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.files.yaml.SchemaCheck;
import icequill.files.yaml.Tree;
import icequill.files.yaml.YamlReader;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How the shop's book is kept, as shop.yaml says.
 *
 * @param database a PostgreSQL database, as a JDBC URL; empty for a file in the shop folder
 * @param passwordFile from the shop folder on, whose first line is the password of the database
 * @param office its mark in paper numbers; empty where there is only one
 * @param retentionYears from the end of a paper's year, for which it is kept
 */
public record BookSettings(Optional<String> database, Optional<String> passwordFile, Optional<String> office,
        int retentionYears) {

    private static final String BOOK = "book";
    private static final Set<String> KEYS = Set.of("database", "office", "retentionYears");

    /** A file in the shop folder, and seven years (common practice; ask your adviser). */
    public static final BookSettings USUAL = new BookSettings(Optional.empty(), Optional.empty(),
            Optional.empty(), 7);

    /** Those of a shop folder, as far as shop.yaml can be read; its faults show when the shop itself is read. */
    public static BookSettings of(Path folder) {
        Path file = folder.resolve("shop.yaml");
        return Files.exists(file)
                ? YamlReader.read(file, "shop.yaml", new Problems())
                        .flatMap(tree -> tree instanceof Tree.Branch branch
                                ? new Fields(branch, new Problems()).child(BOOK)
                                : Optional.empty())
                        .map(BookSettings::read).orElse(USUAL)
                : USUAL;
    }

    /**
     * What is wrong with what shop.yaml says of the book: a misspelled key would quietly mean another book. Rules are only read where
     * a key looks wrong.
     */
    public static List<Problem> problems(Path folder) {
        Problems problems = new Problems();
        Optional<Tree> tree = YamlReader.read(folder.resolve("shop.yaml"), "shop.yaml", problems);
        tree.filter(BookSettings::looksWrong).ifPresent(read -> SchemaCheck
                .check(read, "/icequill/schema/shop.schema.json").stream()
                .filter(found -> found.code() == Code.UNKNOWN_KEY || found.place().path().startsWith(BOOK))
                .forEach(problems::add));
        return problems.list();
    }

    private static boolean looksWrong(Tree tree) {
        return tree instanceof Tree.Branch branch && branch.entries().entrySet().stream()
                .anyMatch(entry -> entry.getKey().equals(BOOK)
                        ? !(entry.getValue() instanceof Tree.Branch book && KEYS.containsAll(book.entries().keySet()))
                        : Problem.nearest(entry.getKey(), List.of(BOOK)).isPresent());
    }

    private static BookSettings read(Fields fields) {
        return new BookSettings(fields.text("database"), fields.text("passwordFile"), fields.text("office"),
                fields.integer("retentionYears").orElse(USUAL.retentionYears));
    }
}
