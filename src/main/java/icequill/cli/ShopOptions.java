package icequill.cli;

import icequill.party.Language;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that every command on a shop folder shares. */
final class ShopOptions {

    @Option(names = "--shop", paramLabel = "DIR", description = "The shop folder. Default: the nearest folder above FILE that holds a shop.yaml, else this folder.")
    private @Nullable Path shop;

    @Option(names = "--json", description = "Print the result, or the problems, as JSON.")
    private boolean json;

    @Option(names = "--lang", paramLabel = "LANG", description = "Language, en or es. Default: the customer's, else the shop's.")
    private @Nullable LanguageTag language;

    /** The values of --lang, spelled as people write them. */
    enum LanguageTag {
        EN, ES
    }

    boolean json() {
        return json;
    }

    Optional<Language> language() {
        return Optional.ofNullable(language).map(tag -> switch (tag) {
        case EN -> Language.ENGLISH;
        case ES -> Language.SPANISH;
        });
    }

    Path folder() {
        return shop == null ? Path.of("") : shop;
    }

    Path folderOf(Path file) {
        if (shop != null) {
            return shop;
        }
        for (Path folder = file.toAbsolutePath().normalize().getParent(); folder != null; folder = folder.getParent()) {
            if (Files.exists(folder.resolve("shop.yaml"))) {
                return folder;
            }
        }
        return Path.of("");
    }

    /** The file as given, or within the shop folder when it is not found from here. */
    Path file(Path file) {
        Path inside = folderOf(file).resolve(file);
        return !Files.exists(file) && Files.exists(inside) ? inside : file;
    }
}
