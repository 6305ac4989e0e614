package icequill.party;

import java.util.Arrays;
import java.util.Optional;

/** The languages that papers and screens are written in. */
public enum Language {
    ENGLISH("en"), SPANISH("es");

    private final String tag;

    Language(String tag) {
        this.tag = tag;
    }

    /** The ISO 639-1 code. */
    public String tag() {
        return tag;
    }

    public static Optional<Language> ofTag(String tag) {
        return Arrays.stream(values()).filter(language -> language.tag.equals(tag)).findFirst();
    }
}
