package icequill;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** What a process printed, and its exit status. */
record Ran(int status, String out, String err) {

    /**
     * Runs it to its end.
     *
     * @param environment all that it sees of one; that of the tests if empty
     */
    static Ran of(Path folder, Map<String, String> environment, String... command) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        if (!environment.isEmpty()) {
            builder.environment().clear();
            builder.environment().putAll(environment);
        }
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        int status = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start().waitFor();
        return new Ran(status, Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }
}
