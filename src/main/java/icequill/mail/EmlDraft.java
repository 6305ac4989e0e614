package icequill.mail;

import icequill.files.disk.SafeFile;
import icequill.problem.Check;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;

/** A mail as a file that any mail program opens as a draft, where no server is set. */
public final class EmlDraft {

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,119}");

    private EmlDraft() {
    }

    /** The same mail gives the same bytes. {@code X-Unsent} is common practice: it is opened to be sent, not as one that came. */
    public static byte[] bytes(MailMessage mail) {
        return MimeForm.of(mail, Map.of("X-Unsent", "1"));
    }

    /**
     * Writes it into a folder, which is made as needed, whole or not at all. A draft of the same name is replaced.
     *
     * @param name of the file without its ending; letters, digits, dots and dashes
     */
    public static Validated<Path> write(MailMessage mail, Path folder, String name) {
        Check.that(NAME.matcher(name).matches(), "not the name of a draft: " + name);
        return SafeFile.write(folder.resolve(name + ".eml"), bytes(mail), true);
    }
}
