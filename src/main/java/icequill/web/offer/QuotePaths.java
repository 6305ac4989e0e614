package icequill.web.offer;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Where quotes are made and found. */
final class QuotePaths {

    /** Where one is made for a customer whom the book does not have yet. */
    static final String NEW = "/quotes/new";

    private QuotePaths() {
    }

    /** A quote, by its number. */
    static String quote(String number) {
        return "/quotes/" + part(number);
    }

    /** The job that a quote became. */
    static String job(String number) {
        return "/jobs/" + part(number);
    }

    /** Where one is made for a site of the book. */
    static String entry(String site) {
        return "/sites/" + part(site) + "/quote";
    }

    private static String part(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
