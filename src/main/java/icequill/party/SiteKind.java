package icequill.party;

/** What is made or served at a site, as far as it bears on ice machines. */
public enum SiteKind {
    BAKERY, PIZZA, BREWERY, TAPROOM, BAR, RESTAURANT, HOTEL, CLINIC, SEAFOOD, SHOP, OFFICE, OTHER;

    /** Whether what flour, dough, beer and its foam give off feeds slime there. Common practice. */
    public boolean hasYeast() {
        return switch (this) {
        case BAKERY, PIZZA, BREWERY, TAPROOM -> true;
        case BAR, RESTAURANT, HOTEL, CLINIC, SEAFOOD, SHOP, OFFICE, OTHER -> false;
        };
    }
}
