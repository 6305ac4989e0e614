package icequill.shop;

import icequill.files.disk.SafeFile;
import icequill.files.form.FormKind;
import icequill.files.yaml.ShippedMarks;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The files that come with the program, which a new shop folder starts from. */
public final class ShippedFiles {

    private static final String SCHEMAS = "schema";

    private ShippedFiles() {
    }

    /**
     * The rates, a shop.yaml to change, and the schemas of all. What is invented in them is marked as still to be replaced ({@link ShippedMarks}).
     */
    public static Validated<Path> copyStarter(Path folder) {
        return copy(List.of("starter", "pricing", SCHEMAS), folder, ShippedMarks::marked);
    }

    /** An invented shop, the rates, and the schemas of all. */
    public static Validated<Path> copyDemo(Path folder) {
        return copy(List.of("demo", "pricing", SCHEMAS), folder, text -> text);
    }

    /** The forms of the invented shop, and lists and tables that go with them. */
    public static Validated<Path> copyDemoForms(Path folder) {
        return copy(List.of("demo-forms"), folder, text -> text);
    }

    /** A form of a kind to fill in; empty where there is none to begin with. */
    public static Optional<String> form(FormKind kind) {
        String name = "forms/" + kind.key() + ".yaml";
        return names("forms").contains(name)
                ? Optional.of(new String(bytes("/icequill/" + name), StandardCharsets.UTF_8))
                : Optional.empty();
    }

    /** Names of the files of a set, from the folder on; the build checks that the list is complete. */
    public static List<String> names(String set) {
        return new String(bytes("/icequill/shipped/" + set + ".txt"), StandardCharsets.UTF_8).lines().toList();
    }

    /** Nothing is written when any of the files exists already. */
    private static Validated<Path> copy(List<String> sets, Path folder, UnaryOperator<String> change) {
        Problems problems = new Problems();
        sets.stream().flatMap(set -> names(set).stream().map(name -> inShop(set, name)))
                .filter(name -> Files.exists(folder.resolve(name))).forEach(name -> problems
                        .add(Code.ALREADY_EXISTS, Place.ofFile(name), "the file exists already",
                                "a new or empty folder"));
        if (problems.isEmpty()) {
            sets.forEach(set -> names(set).forEach(name -> problems.take(SafeFile
                    .write(folder.resolve(inShop(set, name)), changed(resource(set, name), change), false))));
        }
        return problems.or(() -> folder);
    }

    /** What forms may hold lies with what rates may hold. */
    private static String inShop(String set, String name) {
        return set.equals(SCHEMAS) ? "pricing/" + name : name;
    }

    /** What a shop starts from has a folder of its own among the resources; rates and schemas lie there as in the shop. */
    private static String resource(String set, String name) {
        return "/icequill/" + (name.startsWith(set + "/") ? "" : set + "/") + name;
    }

    private static byte[] changed(String resource, UnaryOperator<String> change) {
        return change.apply(new String(bytes(resource), StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String resource) {
        try (InputStream stream = ShippedFiles.class.getResourceAsStream(resource)) {
            return Objects.requireNonNull(stream, resource).readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(resource, unreadable);
        }
    }
}
