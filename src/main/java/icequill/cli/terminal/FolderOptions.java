package icequill.cli.terminal;

import icequill.shop.FormName;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which shop folder a command works on, and how it answers. */
final class FolderOptions {

    @Option(names = "--shop", paramLabel = "DIR", defaultValue = "${env:ICEQUILL_SHOP}", description = "The shop folder. Default: what ICEQUILL_SHOP names in the environment; else the nearest folder, upward from FILE or from here, that holds a shop.yaml.")
    private @Nullable Path shop;

    @Option(names = "--json", description = "Print the result, or the problems, as JSON.")
    private boolean json;

    boolean json() {
        return json;
    }

    /** Where the command works that is given no file. */
    Path folder() {
        return folderOf(Path.of("shop.yaml"));
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

    /** A form as given; a file is looked for in the shop folder too. */
    FormName form(String name) {
        FormName named = FormName.of(name);
        return named instanceof FormName.InFile(Path file) ? FormName.file(file(file)) : named;
    }

    /** The file as given, or within the shop folder when it is not found from here. */
    Path file(Path file) {
        Path inside = folderOf(file).resolve(file);
        return !Files.exists(file) && Files.exists(inside) ? inside : file;
    }
}
