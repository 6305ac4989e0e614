package icequill.files.pricing;

import icequill.files.disk.SafeFile;
import icequill.files.yaml.FolderFiles;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder that holds what papers are made by: shop.yaml, pricing/, and, where it has its own, templates/ and pictures that are named in
 * any of these.
 */
public record RatesFolder(Path folder) {

    private static final String SHOP = "shop.yaml";
    private static final String PRICING = "pricing";
    private static final String TEMPLATES = "templates";
    /** As templates and settings may name them. */
    private static final Pattern PICTURE = Pattern.compile("[A-Za-z0-9_-]+[.](png|jpg|jpeg)");
    /** Far more than any shop has, and still no burden for its book. */
    private static final long MOST_BYTES = 30_000_000;

    /** What it holds now. Nothing is looked at but that the files can be read. */
    public Validated<RatesVersion> version() {
        Problems problems = new Problems();
        Map<String, byte[]> files = new TreeMap<>();
        try {
            read(folder.resolve(SHOP), files, problems);
            for (Path file : listed(PRICING)) {
                read(file, files, problems);
            }
            for (Path file : templates()) {
                read(file, files, problems);
            }
            for (Path picture : pictures(files)) {
                read(picture, files, problems);
            }
        } catch (IOException unreadable) {
            problems.add(Code.UNREADABLE, Place.ofFile(PRICING), "the rates cannot be read: " + unreadable,
                    "a folder that may be read");
        }
        long bytes = files.values().stream().mapToLong(file -> file.length).sum();
        if (bytes > MOST_BYTES) {
            problems.add(Code.TOO_LARGE, Place.ofFile(TEMPLATES),
                    "rates, templates and pictures have " + bytes + " bytes", "at most " + MOST_BYTES);
        }
        return problems.or(() -> files).then(RatesFolder::shared);
    }

    /** Writes the files of a version here, where nothing of the same names may lie. */
    public Validated<Path> write(RatesVersion version) {
        Problems problems = new Problems();
        version.files().keySet().stream().map(folder::resolve)
                .forEach(target -> SafeFile.inTheWay(target).ifPresent(problems::add));
        Validated<Path> written = problems.or(() -> folder);
        for (Map.Entry<String, byte[]> file : version.files().entrySet()) {
            written = written.then(done -> SafeFile.write(folder.resolve(file.getKey()), file.getValue(), false))
                    .map(done -> folder);
        }
        return written;
    }

    private static Validated<RatesVersion> shared(Map<String, byte[]> files) {
        return SharedSettings.of(new String(files.get(SHOP), StandardCharsets.UTF_8)).map(settings -> {
            files.put(SHOP, settings.getBytes(StandardCharsets.UTF_8));
            return RatesVersion.of(files);
        });
    }

    private void read(Path file, Map<String, byte[]> files, Problems problems) throws IOException {
        String name = folder.relativize(file).toString().replace('\\', '/');
        if (FolderFiles.isEndless(file)) {
            problems.add(new Problem(Code.UNREADABLE, Place.ofFile(name), "it is no ordinary file",
                    "a file of text, no pipe and no folder"));
        } else if (Files.exists(file) && Files.size(file) > MOST_BYTES) {
            problems.add(new Problem(Code.TOO_LARGE, Place.ofFile(name), "the file has " + Files.size(file) + " bytes",
                    "at most " + MOST_BYTES));
        } else {
            files.put(name, Files.readAllBytes(file));
        }
    }

    private List<Path> listed(String within) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(within))) {
            return files.filter(file -> file.toString().endsWith(FolderFiles.YAML)).sorted().toList();
        }
    }

    /** What editors leave beside a file is none. */
    private List<Path> templates() throws IOException {
        Path own = folder.resolve(TEMPLATES);
        if (!Files.isDirectory(own)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(own)) {
            return files.filter(file -> !Files.isDirectory(file)).filter(file -> {
                String name = String.valueOf(file.getFileName());
                return !name.startsWith(".") && !name.endsWith("~");
            }).sorted().toList();
        }
    }

    /** Those that a file names; a shop's folder may hold others. */
    private List<Path> pictures(Map<String, byte[]> files) throws IOException {
        String all = String.join("\n", files.values().stream()
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8)).toList());
        try (Stream<Path> beside = Files.list(folder)) {
            return beside.filter(file -> {
                String name = String.valueOf(file.getFileName());
                return PICTURE.matcher(name).matches() && all.contains(name) && Files.isRegularFile(file);
            }).sorted().toList();
        }
    }
}
