package icequill.party;

/** What is made or served at a site, as far as it bears on ice machines. */
public enum SiteKind {
    BAKERY, PIZZA, BREWERY, TAPROOM, BAR, RESTAURANT, HOTEL, CLINIC, SEAFOOD, SHOP, OFFICE, OTHER
}
