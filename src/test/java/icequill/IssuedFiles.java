package icequill;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The files of papers that a shop issued, as somebody sees them who watches its folder. */
public final class IssuedFiles {

    private IssuedFiles() {
    }

    /** Until something of the next paper after so many lies on the disk: then that is under way, or done. */
    public static void await(Path shop, int issued, Process writer) throws IOException, InterruptedException {
        while (count(shop.resolve("papers")) <= issued) {
            if (writer.waitFor(1, TimeUnit.MILLISECONDS)) {
                throw new AssertionError("it ended before that, with " + writer.exitValue());
            }
        }
    }

    private static long count(Path papers) throws IOException {
        if (!Files.isDirectory(papers)) {
            return 0;
        }
        try (Stream<Path> files = Files.walk(papers)) {
            return files.filter(Files::isRegularFile).count();
        }
    }
}
