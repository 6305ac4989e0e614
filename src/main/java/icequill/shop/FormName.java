package icequill.shop;

import icequill.files.form.Form;
import icequill.files.yaml.FolderFiles;
import icequill.files.yaml.YamlReader;
import icequill.problem.Problems;
import java.nio.file.Files;
import java.nio.file.Path;

/** Names a form: the file that it stands in, or what the book calls it. */
public sealed interface FormName {

    /** A file, which need not be there. */
    record InFile(Path file) implements FormName {
        @Override
        public String text() {
            return file.toString();
        }
    }

    /** An id, or a number of its own. */
    record InBook(String text) implements FormName {}

    /**
     * A form that stands nowhere yet.
     *
     * @param text what it calls itself
     * @param yaml all of it
     */
    record InHand(String text, String yaml) implements FormName {}

    /** As somebody wrote it. */
    String text();

    /** For the name of a file that is made of it. */
    default String stem() {
        return switch (this) {
        case InFile(Path file) -> FolderFiles.nameOf(file);
        case InBook(String id) -> id;
        case InHand hand -> hand.text();
        };
    }

    /** What the book calls it, or would: a file may say so itself. What is wrong with the file shows when it is read. */
    default String id() {
        return switch (this) {
        case InFile(Path file) -> YamlReader.read(file, text(), new Problems())
                .map(tree -> Form.of(tree, stem()).id()).orElseGet(this::stem);
        case InBook(String id) -> id;
        case InHand hand -> hand.text();
        };
    }

    /** What is there as a file, or is written like one, is one. */
    static FormName of(String text) {
        return text.contains("/") || text.endsWith(FolderFiles.YAML) || Files.isRegularFile(Path.of(text))
                ? file(Path.of(text))
                : new InBook(text);
    }

    /** As a form of a shop names another: a file is looked for from the shop's folder on. */
    static FormName in(Path folder, String text) {
        return of(text) instanceof InFile(Path file) ? file(folder.resolve(file)) : new InBook(text);
    }

    static FormName file(Path file) {
        return new InFile(file);
    }
}
