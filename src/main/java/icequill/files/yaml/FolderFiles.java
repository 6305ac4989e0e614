package icequill.files.yaml;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The YAML files of a shop folder.
 *
 * @param problems what is wrong with them is added here
 */
public record FolderFiles(Path folder, Problems problems) {

    /** How a file's name ends. */
    public static final String YAML = ".yaml";
    private static final String SHOP = "shop.yaml";

    /** Those of a subfolder, by name; none while there is no shop. */
    public List<Path> of(String subfolder) {
        if (!Files.exists(folder.resolve(SHOP))) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder.resolve(subfolder))) {
            List<Path> all = files.sorted().toList();
            all.stream().filter(file -> file.toString().endsWith(".yml")).forEach(file -> problems.add(Code.NOT_ALLOWED,
                    Place.ofFile(shown(file)), "the file is not read", "a name that ends in .yaml"));
            return all.stream().filter(file -> file.toString().endsWith(YAML)).toList();
        } catch (NoSuchFileException missing) {
            problems.add(Code.UNREADABLE, Place.ofFile(subfolder), "there is no folder " + subfolder,
                    "a shop folder, as made by: icequill new DIR");
        } catch (IOException unreadable) {
            problems.add(Code.UNREADABLE, Place.ofFile(subfolder), "the folder cannot be read: " + unreadable,
                    "a folder that may be read");
        }
        return List.of();
    }

    /** As problems show it: from the shop folder on, where the file lies in it. */
    public String shown(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        Path top = folder.toAbsolutePath().normalize();
        return (whole.startsWith(top) ? top.relativize(whole) : file).toString().replace('\\', '/');
    }

    /** Whether reading it may never end, as of a pipe or a device. */
    public static boolean isEndless(Path file) {
        return Files.exists(file) && !Files.isRegularFile(file);
    }

    /** The name of a file without its ending. */
    public static String nameOf(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(YAML) ? name.substring(0, name.length() - YAML.length()) : name;
    }
}
