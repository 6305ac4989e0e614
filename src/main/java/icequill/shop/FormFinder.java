package icequill.shop;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.FolderFiles;
import icequill.files.yaml.Tree;
import icequill.files.yaml.YamlReader;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds forms: those that were handed over, before those that the book keeps, or a file holds. Whatever is wrong is collected. */
record FormFinder(FolderFiles files, FormSource book, List<Form> given, Problems problems, Consumer<Tree> note) {

    private static final String NUMBER = "number";

    FormFinder {
        given = List.copyOf(given);
    }

    /** One that was handed over; an agreement by its number too. */
    Optional<Form> given(FormKind kind, String name) {
        return given.stream().filter(form -> form.kind().filter(kind::equals).isPresent())
                .filter(form -> form.id().equals(name) || form.text(NUMBER).filter(name::equals).isPresent())
                .findFirst();
    }

    /** Nothing, which is reported with what is near. */
    <T> Optional<T> unknown(List<FormKind> kinds, String id, Place asked) {
        List<String> known = new ArrayList<>(given.stream()
                .filter(form -> form.kind().filter(kinds::contains).isPresent()).map(Form::id).toList());
        kinds.forEach(kind -> problems.take(book.ids(kind)).ifPresent(known::addAll));
        problems.add(Problem.unknownName(asked,
                kinds.stream().map(FormKind::words).collect(Collectors.joining(" or ")), id, known));
        return Optional.empty();
    }

    /**
     * Finds a form by its name; whether it says what its kind must say is not looked at yet.
     *
     * @param kinds that will do; a file that does not say its kind is taken for the first
     */
    Optional<Form> form(FormName name, List<FormKind> kinds) {
        return switch (name) {
        case FormName.InFile(Path file) -> tree(file).map(tree -> Form.of(tree, FolderFiles.nameOf(file)))
                .flatMap(form -> ofKind(form, kinds));
        case FormName.InHand(String id, String yaml) -> noted(YamlReader.parse(yaml, id, problems))
                .map(tree -> Form.of(tree, id)).flatMap(form -> ofKind(form, kinds));
        case FormName.InBook(String id) -> form(id, kinds, Place.NOWHERE);
        };
    }

    /** @param asked where it is named */
    Optional<Form> form(String id, List<FormKind> kinds, Place asked) {
        return kinds.stream().flatMap(kind -> given(kind, id).stream()).findFirst()
                .or(() -> stored(id, kinds))
                .or(() -> unknown(kinds, id, asked));
    }

    private Optional<Form> stored(String id, List<FormKind> kinds) {
        Optional<Form> form = kinds.stream()
                .flatMap(kind -> problems.take(book.form(kind, id)).flatMap(Function.identity())
                        .stream())
                .findFirst();
        form.ifPresent(found -> note.accept(found.tree()));
        return form;
    }

    private Optional<Form> ofKind(Form form, List<FormKind> kinds) {
        Optional<String> said = form.text(Form.KIND_KEY);
        if (said.isEmpty()) {
            return Optional.of(new Form(Optional.of(kinds.getFirst()), form.id(), form.tree()));
        }
        if (form.kind().filter(kind -> kinds.contains(kind) || kinds.contains(kind.storedAs())).isPresent()) {
            return Optional.of(form);
        }
        problems.add(Code.NOT_ALLOWED, form.tree().place(), "this form tells of: " + said.get(),
                "a form of: " + kinds.stream().map(FormKind::key).collect(Collectors.joining(" or ")));
        return Optional.empty();
    }

    /** The agreements for a site: those that were given, and those of the book that they do not take the place of. */
    List<Form> agreementsAt(String site) {
        List<Form> forms = new ArrayList<>(given.stream()
                .filter(form -> form.kind().filter(kind -> kind == FormKind.AGREEMENT).isPresent())
                .filter(form -> form.isForSite(site)).toList());
        Set<String> laidOver = given.stream().map(Form::id).collect(Collectors.toSet());
        problems.take(book.agreementsAt(site)).ifPresent(stored -> stored.stream()
                .filter(form -> !laidOver.contains(form.id())).forEach(forms::add));
        return forms;
    }

    /** All forms of a file, which may hold several; one that does not say its kind is reported and left out. */
    List<Form> forms(Path file) {
        List<Tree> trees = YamlReader.readAll(file, files.shown(file), problems);
        trees.forEach(note);
        List<Form> forms = trees.stream().map(tree -> Form.of(tree, FolderFiles.nameOf(file))).toList();
        forms.stream().filter(form -> form.kind().isEmpty()).forEach(form -> problems.add(form.text(Form.KIND_KEY)
                .map(said -> Problem.unknownName(form.tree().place(), "form", said, FormKind.keys()))
                .orElseGet(() -> new Problem(Code.MISSING, form.tree().place(), "it does not say what it tells of",
                        "form: with one of " + String.join(", ", FormKind.keys())))));
        return forms.stream().filter(form -> form.kind().isPresent()).toList();
    }

    private Optional<Tree> tree(Path file) {
        return noted(YamlReader.read(file, files.shown(file), problems));
    }

    private Optional<Tree> noted(Optional<Tree> tree) {
        tree.ifPresent(note);
        return tree;
    }
}
