package icequill.web.run;

import icequill.files.disk.Folder;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.web.page.Upload;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Files that a browser handed over, laid down while they are looked at. */
final class HandedFiles implements AutoCloseable {

    private static final int LONGEST_NAME = 80;

    private final Path folder;
    private final List<Path> files = new ArrayList<>();

    private HandedFiles(Path folder) {
        this.folder = folder;
    }

    /** Each in a folder of its own, since names are the sender's: of them only plain letters are kept, for reports. */
    static HandedFiles of(List<Upload> uploads) {
        try {
            HandedFiles handed = new HandedFiles(Files.createTempDirectory("icequill-handed-"));
            for (Upload upload : uploads) {
                Path own = Files.createDirectory(handed.folder.resolve(String.valueOf(handed.files.size() + 1)));
                handed.files.add(Files.write(own.resolve(name(upload.name())), upload.content()));
            }
            return handed;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static String name(String sent) {
        String plain = sent.replaceAll("[^A-Za-z0-9._-]", "_").replaceFirst("^[.]+", "");
        String end = plain.substring(Math.max(0, plain.length() - LONGEST_NAME));
        return end.isEmpty() ? "file" : end;
    }

    List<Path> files() {
        return List.copyOf(files);
    }

    /** A problem without the folders that the files lie in, of which nobody but us knows. */
    Problem told(Problem problem) {
        Place place = problem.place();
        return new Problem(problem.code(), new Place(told(place.file()), place.line(), place.path()),
                told(problem.message()), told(problem.allowed()));
    }

    private String told(String text) {
        return text.replaceAll(Pattern.quote(folder.toString()) + "/[0-9]+/", "");
    }

    @Override
    public void close() {
        try {
            Folder.delete(folder);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
