package icequill.web;

import icequill.files.disk.OwnersOnly;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Opens the office's link in the browser of whoever runs this program. */
public final class BrowserWindow {

    private BrowserWindow() {
    }

    /**
     * Opens a link, by way of a file that only its owner may read: whoever else uses the machine can see what programs are started
     * with.
     *
     * @return whether a browser was asked to
     */
    public static boolean show(String link) {
        try {
            Path folder = Files.createTempDirectory("icequill-office-");
            OwnersOnly.folder(folder);
            Path page = folder.resolve("open.html");
            Files.write(page, ("<!DOCTYPE html><html lang=\"en\"><meta charset=\"utf-8\"><title>Icequill</title>"
                    + "<meta name=\"referrer\" content=\"no-referrer\">"
                    + "<meta http-equiv=\"refresh\" content=\"0;url=" + link + "\"><a href=\"" + link
                    + "\">Icequill</a>")
                    .getBytes(StandardCharsets.UTF_8));
            page.toFile().deleteOnExit();
            folder.toFile().deleteOnExit();
            new ProcessBuilder(opener(page.toUri().toString())).redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
            return true;
        } catch (IOException none) {
            return false;
        }
    }

    private static List<String> opener(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        return system.contains("windows")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
                : List.of(system.contains("mac") ? "open" : "xdg-open", address);
    }
}
