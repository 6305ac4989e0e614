package icequill.shop;

import icequill.files.yaml.Fields;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;

/** What customers, sites, machines and visits are called in the book; never a path, nor anything that a terminal would obey. */
public final class EntryId {

    private static final int LONGEST = 60;

    private EntryId() {
    }

    /** One made of what people call it; {@code customer} where that has no letters. */
    public static String of(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String id = plain.isEmpty() ? "customer" : plain;
        return id.length() <= LONGEST ? id : id.substring(0, LONGEST).replaceAll("-$", "");
    }

    /** A problem when it is no such name. */
    public static Optional<Problem> problem(String id, Place place) {
        return Fields.isId(id)
                ? Optional.empty()
                : Optional.of(new Problem(Code.NOT_ALLOWED, place, "the id \"" + id + "\"",
                        "up to 60 small letters, digits and hyphens, such as mill-lane"));
    }
}
