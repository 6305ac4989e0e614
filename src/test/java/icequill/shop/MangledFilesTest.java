package icequill.shop;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.files.yaml.FolderFiles;
import icequill.problem.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is cut out of a file or turned over in it, reading ends with a value or problems, never with a fault. */
class MangledFilesTest {

    private static final List<String> JUNK = List.of("", "{", "]", ": ", "- ", "\n", "null", "99999999999", "\"", "&a ",
            "2026-13-40", "-1", "1e99", "~", "!x ", "'", "\u00e9", "24:00", "0.00001", "[]", "{}", "true");

    @TempDir
    Path shop;

    @Test
    void read_mangledCopies_valueOrProblems() throws IOException {
        mangle(new Random(20260513), 60);
    }

    @Tag("long")
    @Test
    void read_manyMangledCopies_valueOrProblems() throws IOException {
        mangle(new Random(20260514), 3000);
    }

    private void mangle(Random random, int copies) throws IOException {
        DemoShop.files(shop);
        List<String> names = Stream.of("demo", "demo-forms", "pricing").flatMap(set -> ShippedFiles.names(set).stream())
                .filter(name -> name.endsWith(".yaml")).toList();
        for (int i = 0; i < copies; i++) {
            String name = names.get(random.nextInt(names.size()));
            String text = Files.readString(shop.resolve(name));
            String mangled = mangled(text, random);
            Files.writeString(shop.resolve(name), mangled);

            ShopFolder folder = DemoShop.read(shop);
            List<Boolean> read = Stream
                    .concat(DemoShop.files(shop, "sites").stream().map(FolderFiles::nameOf)
                            .map(id -> folder.site(id, Place.NOWHERE).isPresent()),
                            DemoShop.files(shop, "visits").stream()
                                    .map(file -> DemoShop.visit(folder, file).isPresent()))
                    .toList();
            boolean complete = !read.contains(false);

            assertThat(complete || !folder.problems().isEmpty()).as(name + " lost without a word:\n" + mangled)
                    .isTrue();
            Files.writeString(shop.resolve(name), text);
        }
    }

    private static String mangled(String text, Random random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        int line = random.nextInt(lines.size());
        switch (random.nextInt(4)) {
        case 0 -> lines.remove(line);
        case 1 -> lines.add(line, lines.get(random.nextInt(lines.size())));
        case 2 -> lines.set(line, swapped(lines.get(line), random));
        default -> lines.set(line, replaced(lines.get(line), random));
        }
        return String.join("\n", lines) + "\n";
    }

    private static String swapped(String line, Random random) {
        if (line.length() < 2) {
            return line;
        }
        int at = random.nextInt(line.length() - 1);
        return line.substring(0, at) + line.charAt(at + 1) + line.charAt(at) + line.substring(at + 2);
    }

    /** One word of the line by junk. */
    private static String replaced(String line, Random random) {
        String[] words = line.split("(?<= )", -1);
        words[random.nextInt(words.length)] = JUNK.get(random.nextInt(JUNK.size()));
        return String.join("", words);
    }
}
