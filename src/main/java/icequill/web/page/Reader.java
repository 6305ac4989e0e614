package icequill.web.page;

import icequill.files.yaml.Languages;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.render.words.Sentences;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Optional;

/**
 * Who reads a page.
 *
 * @param sentences in his language, with the numbers and dates of the shop's country
 * @param zone of the shop
 * @param today where the shop is
 * @param shopName empty where shop.yaml cannot be read
 */
public record Reader(Sentences sentences, ZoneId zone, LocalDate today, String shopName) {

    private static final String UNKNOWN_COUNTRY = "US";

    static Reader of(Optional<Shop> shop, Optional<Language> chosen, Optional<String> accepted, ZoneId zone,
            LocalDate today) {
        Language language = chosen.or(() -> accepted.flatMap(Reader::best))
                .or(() -> shop.map(Shop::language)).orElse(Language.ENGLISH);
        return new Reader(Sentences.of(language, shop.map(found -> found.address().country()).orElse(UNKNOWN_COUNTRY)),
                zone, today, shop.map(Shop::name).orElse(""));
    }

    public Language language() {
        return sentences.formats().language();
    }

    /** The first that there are words for, of what a browser lists in the order of its wishes (RFC 9110, 12.5.4). */
    private static Optional<Language> best(String accepted) {
        return Arrays.stream(accepted.split(",")).map(range -> range.strip().replaceFirst("[-;].*", ""))
                .flatMap(tag -> Language.ofTag(tag).stream()).filter(Languages::isKnown).findFirst();
    }
}
