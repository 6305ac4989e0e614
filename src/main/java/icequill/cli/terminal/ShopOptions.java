package icequill.cli.terminal;

import icequill.office.Office;
import icequill.party.Language;
import icequill.shop.FormName;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options that every command on a shop's files shares. */
public final class ShopOptions {

    @Mixin
    private FolderOptions folders = new FolderOptions();

    @Mixin
    private CustomerLanguage language = new CustomerLanguage();

    @Option(names = "--with", paramLabel = "FILE", description = "Also go by the forms in a file, such as a site's, before those of the book, and store them nowhere.")
    private List<Path> with = new ArrayList<>();

    public boolean json() {
        return folders.json();
    }

    public Optional<Language> language() {
        return language.language();
    }

    public Path folder() {
        return folders.folder();
    }

    public Path folderOf(Path file) {
        return folders.folderOf(file);
    }

    public Path file(Path file) {
        return folders.file(file);
    }

    public FormName form(String name) {
        return folders.form(name);
    }

    /** The office of the shop, with whatever forms are laid over its book. */
    public Office office(Path folder) {
        return Office.of(folder, forms());
    }

    /** Files of forms that are laid over the book. */
    public List<Path> forms() {
        return with.stream().map(folders::file).toList();
    }
}
