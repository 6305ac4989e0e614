package icequill.mail;

import icequill.problem.Check;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where mail is handed in.
 *
 * @param host a name, or an address in digits
 * @param login empty where the server asks for none
 * @param trusted certificates in PEM form that alone vouch for the server; empty for those that the Java runtime trusts
 */
public record MailServer(String host, int port, Security security, Optional<Login> login, Optional<Path> trusted,
        Timeouts timeouts) {

    private static final int MOST_PORT = 65_535;
    private static final Pattern HOST = Pattern
            .compile("[A-Za-z0-9](?:[A-Za-z0-9.-]{0,252}[A-Za-z0-9])?|[0-9A-Fa-f:]{2,39}");
    private static final Pattern THIS_MACHINE = Pattern.compile("localhost|127(?:[.][0-9]{1,3}){3}|::1");

    public MailServer {
        Check.that(faults(host, port, security, Place.NOWHERE).isEmpty(), "not a mail server that may be used");
    }

    /** A server as it was set, with all that is wrong with it. */
    public static Validated<MailServer> of(String host, int port, Security security, Optional<Login> login,
            Optional<Path> trusted, Timeouts timeouts, Place place) {
        return faults(host, port, security, place)
                .or(() -> new MailServer(host, port, security, login, trusted, timeouts));
    }

    private static Problems faults(String host, int port, Security security, Place place) {
        Problems problems = new Problems();
        if (!HOST.matcher(host).matches()) {
            problems.add(Code.NOT_ALLOWED, place, "this is no name of a mail server", "such as mail.example.com");
        }
        if (port < 1 || port > MOST_PORT) {
            problems.add(Code.OUT_OF_RANGE, place, "there is no such port of a mail server",
                    "587 with STARTTLS, 465 with TLS; from 1 to " + MOST_PORT);
        }
        if (security == Security.PLAIN && !THIS_MACHINE.matcher(host).matches()) {
            problems.add(Code.NOT_ALLOWED, place, "mail would go to another machine in the clear",
                    "STARTTLS or TLS; in the clear only to localhost");
        }
        return problems;
    }
}
