package icequill.party;

/** A name or short text of the shop's own, in English and in Spanish; readers of other languages get the English one. */
public record Wording(String english, String spanish) {

    /** The same in every language. */
    public static Wording same(String text) {
        return new Wording(text, text);
    }

    /** Both, such as a place and what is there. */
    public Wording and(Wording other) {
        return new Wording(english + ": " + other.english, spanish + ": " + other.spanish);
    }

    public String in(Language language) {
        return language.equals(Language.SPANISH) ? spanish : english;
    }
}
