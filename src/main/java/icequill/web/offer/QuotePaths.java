package icequill.web.offer;

import icequill.web.page.Paths;

/** Where quotes are made. */
final class QuotePaths {

    /** Where one is made for a customer whom the book does not have yet. */
    static final String NEW = "/quotes/new";

    private QuotePaths() {
    }

    /** Where one is made for a site of the book. */
    static String entry(String site) {
        return Paths.site(site) + "/quote";
    }
}
