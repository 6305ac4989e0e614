package icequill.web.door;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/**
 * Looks at every request before a page does. What is asked for must name this machine (else another site may have bound its
 * name to our address), come from a session that a link opened, and where it changes something come from one of our own pages
 * (Fetch Metadata, or Origin of RFC 6454 where a browser does not send it).
 */
public final class Doorkeeper {

    /** Where a link leads to. */
    public static final String ENTRY = "/enter";
    /** What anybody may have: the looks of the page that sends him away. */
    public static final String OPEN = "/assets/";

    /** The attribute that holds the session of a request that was let in. */
    public static final String SESSION = "session";

    private static final String COOKIE = "icequill-";
    private static final Set<String> READING = Set.of("GET", "HEAD");

    private static final int WEB = 80;

    private final Door door;

    public Doorkeeper(Door door) {
        this.door = door;
    }

    /** Why somebody is sent away. */
    public enum Refusal {
        /** Another name for this machine than our own. */
        HOST(HttpStatus.MISDIRECTED_REQUEST),
        /** A form of another site. */
        ORIGIN(HttpStatus.FORBIDDEN),
        /** A link that opens nothing. */
        LINK(HttpStatus.FORBIDDEN),
        /** No session. */
        SESSION(HttpStatus.UNAUTHORIZED);

        private final HttpStatus status;

        Refusal(HttpStatus status) {
            this.status = status;
        }

        public HttpStatus status() {
            return status;
        }
    }

    /** The headers that every answer has. Without a referrer at home an older browser would not name our own Origin. */
    public static void headers(BiConsumer<String, String> answer) {
        answer.accept("Content-Security-Policy",
                "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self';"
                        + " connect-src 'self'; frame-src 'self'; form-action 'self'; base-uri 'none';"
                        + " frame-ancestors 'self'");
        answer.accept("X-Content-Type-Options", "nosniff");
        answer.accept("Referrer-Policy", "same-origin");
        answer.accept("Cross-Origin-Opener-Policy", "same-origin");
        answer.accept("Cross-Origin-Resource-Policy", "same-origin");
        answer.accept("Permissions-Policy", "camera=(), geolocation=(), microphone=()");
        answer.accept("Cache-Control", "no-store");
    }

    /** Lets somebody in, or says why not. */
    public Optional<Refusal> refusal(Context context) {
        Optional<String> own = ownHost(context);
        if (own.isEmpty()) {
            return Optional.of(Refusal.HOST);
        }
        if (!READING.contains(context.method().name()) && !isFromOwnPage(context, own.get())) {
            return Optional.of(Refusal.ORIGIN);
        }
        if (context.path().startsWith(OPEN) || context.path().equals(ENTRY)) {
            return Optional.empty();
        }
        Optional<Session> session = Optional.ofNullable(context.cookie(cookie(context))).flatMap(door::session);
        session.ifPresent(found -> context.attribute(SESSION, found));
        return session.isEmpty() ? Optional.of(Refusal.SESSION) : Optional.empty();
    }

    /** Opens a session to who has the link, and gives him its cookie. */
    public Optional<Refusal> enter(Context context) {
        Optional<Session> session = Optional.ofNullable(context.queryParam("key")).flatMap(door::open);
        session.ifPresent(opened -> context.cookie(new Cookie(cookie(context), opened.id(), "/", -1, false, true, null,
                SameSite.STRICT)));
        return session.isEmpty() ? Optional.of(Refusal.LINK) : Optional.empty();
    }

    /** Offices at other ports of this machine have cookies of their own. */
    private static String cookie(Context context) {
        return COOKIE + context.req().getLocalPort();
    }

    private static Optional<String> ownHost(Context context) {
        String host = context.header("Host");
        return ownHosts(context.req().getLocalPort()).filter(own -> own.equals(host)).findFirst();
    }

    /** What browsers call this machine, who leave out the port of the Web. */
    static Stream<String> ownHosts(int port) {
        return Stream.of("127.0.0.1", "localhost", "[::1]").map(name -> port == WEB ? name : name + ":" + port);
    }

    private static boolean isFromOwnPage(Context context, String host) {
        String site = context.header("Sec-Fetch-Site");
        String origin = context.header("Origin");
        return site == null ? ("http://" + host).equals(origin) : site.equals("same-origin");
    }
}
