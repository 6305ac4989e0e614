package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.files.yaml.SchemaCheck;
import icequill.files.yaml.Tree;
import icequill.files.yaml.YamlReader;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How the shop's book is kept, as shop.yaml says.
 *
 * @param database a PostgreSQL database, as a JDBC URL; empty for a file in the shop folder
 * @param passwordFile from the shop folder on, whose first line is the password of the database
 * @param letters that numbers begin with, by kinds of papers such as {@code credit-note}; of the others the usual ones
 * @param lettersPlace where they stand
 * @param office its mark in paper numbers; empty where there is only one
 * @param retentionYears from the end of a paper's year, for which it is kept
 */
public record BookSettings(Optional<String> database, Optional<String> passwordFile, Optional<String> office,
        Map<String, String> letters, Place lettersPlace, int retentionYears) {

    private static final String BOOK = "book";
    private static final String LETTERS = "letters";
    private static final Set<String> KEYS = Set.of("database", "office", LETTERS, "retentionYears");
    private static final Set<String> NUMBERED = Set.of("invoice", "credit-note", "maintenance-quote", "repair-quote");

    /** A file in the shop folder, and seven years (common practice; ask your adviser). */
    public static final BookSettings USUAL = new BookSettings(Optional.empty(), Optional.empty(),
            Optional.empty(), Map.of(), Place.NOWHERE, 7);

    public BookSettings {
        letters = Map.copyOf(letters);
    }

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
                        ? !(entry.getValue() instanceof Tree.Branch book && KEYS.containsAll(book.entries().keySet())
                                && Optional.ofNullable(book.entries().get(LETTERS)).filter(BookSettings::areOddLetters)
                                        .isEmpty())
                        : Problem.nearest(entry.getKey(), List.of(BOOK)).isPresent());
    }

    private static boolean areOddLetters(Tree letters) {
        return !(letters instanceof Tree.Branch branch) || !NUMBERED.containsAll(branch.entries().keySet())
                || !branch.entries().values().stream().allMatch(
                        value -> value instanceof Tree.Leaf leaf && leaf.kind() == Tree.Leaf.Kind.TEXT
                                && leaf.text().matches("[A-Z]{1,6}"));
    }

    private static BookSettings read(Fields fields) {
        return new BookSettings(fields.text("database"), fields.text("passwordFile"), fields.text("office"),
                fields.child(LETTERS).map(BookSettings::letters).orElse(Map.of()), fields.place(LETTERS),
                fields.integer("retentionYears").orElse(USUAL.retentionYears));
    }

    private static Map<String, String> letters(Fields fields) {
        Map<String, String> found = new HashMap<>();
        fields.branch().entries().keySet().forEach(kind -> fields.text(kind).ifPresent(set -> found.put(kind, set)));
        return found;
    }
}
