package icequill.problem;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keeps out of what is shown to people whatever may be the password of a database. */
public final class Discretion {

    private static final Pattern ADDRESS = Pattern.compile("(?:jdbc:|postgres(?:ql)?:)");
    private static final String HOST = "[A-Za-z0-9_.-]+(?::[0-9]{1,5})?";
    private static final String PLAIN = "jdbc:postgresql://" + HOST + "(?:," + HOST + ")*/[A-Za-z0-9_.-]*";
    private static final Pattern SHOWN = Pattern.compile("(" + PLAIN + ")(?:$|(\\?)|(?=[\\s\"']|[,:)](?:\\s|$)))");
    /** Others of the driver's name classes to be loaded, or files to be written. */
    private static final String SETTING = "(?:user|password|currentSchema|ssl|sslmode|sslrootcert|sslcert|sslkey|sslpassword"
            + "|connectTimeout|socketTimeout|tcpKeepAlive|targetServerType|preferQueryMode|prepareThreshold)=[^&?\\s]*";
    private static final Pattern WHOLE = Pattern.compile(PLAIN + "(?:\\?" + SETTING + "(?:&" + SETTING + ")*)?");
    private static final String HIDDEN = "(the address of a database, which may hold a password)";

    private Discretion() {
    }

    /**
     * The text without what may be a password. Of the address of a database, host and name are shown where it is written as it
     * should be; of any other, and of what stands behind it, nothing is.
     */
    public static String of(String text) {
        if (!text.contains("jdbc:") && !text.contains("postgres")) {
            return text;
        }
        Matcher begins = ADDRESS.matcher(text);
        StringBuilder shown = new StringBuilder();
        int from = 0;
        while (begins.find(from)) {
            Matcher plain = SHOWN.matcher(text).region(begins.start(), text.length());
            shown.append(text, from, begins.start());
            if (!plain.lookingAt()) {
                return shown.append(HIDDEN).toString();
            }
            shown.append(plain.group(1));
            if (plain.group(2) != null) {
                return shown.toString();
            }
            from = plain.end(1);
        }
        return shown.append(text, from, text.length()).toString();
    }

    /** The address of a database alone, shown only where all of it is written as it should be. */
    public static String ofAddress(String url) {
        Matcher plain = SHOWN.matcher(url);
        return plain.lookingAt() ? plain.group(1) : HIDDEN;
    }

    /** Whether an address is written so plainly that no driver will take a password in it for something else, and tell it, and asks for
     * nothing but a connection. */
    public static boolean isPlainAddress(String url) {
        return WHOLE.matcher(url).matches();
    }
}
