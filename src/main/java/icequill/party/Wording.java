package icequill.party;

/** A name or short text of the shop's own, in each language that papers are written in. */
public record Wording(String english, String spanish) {

    /** The same in every language. */
    public static Wording same(String text) {
        return new Wording(text, text);
    }

    public String in(Language language) {
        return switch (language) {
        case ENGLISH -> english;
        case SPANISH -> spanish;
        };
    }
}
