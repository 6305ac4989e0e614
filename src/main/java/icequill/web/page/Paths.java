package icequill.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Where things are found that were made. */
public final class Paths {

    private Paths() {
    }

    /** A paper, by its number. */
    public static String paper(String number) {
        return "/papers/" + part(number);
    }

    /** A visit, by its id. */
    public static String visit(String id) {
        return "/visits/" + part(id);
    }

    /** A call, by its id. */
    public static String call(String id) {
        return "/calls/" + part(id);
    }

    /** An agreement, by its number. */
    public static String agreement(String number) {
        return "/agreements/" + part(number);
    }

    /** A site, by its id. */
    public static String site(String id) {
        return "/sites/" + part(id);
    }

    /** A quote, by its number. */
    public static String quote(String number) {
        return "/quotes/" + part(number);
    }

    /** A claim, by its id. */
    public static String claim(String id) {
        return "/claims/" + part(id);
    }

    /** A mail, by its id. */
    public static String mail(String id) {
        return "/mail/" + part(id);
    }

    /** The job that a quote became. */
    public static String job(String number) {
        return "/jobs/" + part(number);
    }

    private static String part(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
