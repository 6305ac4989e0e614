package icequill.explain;

import java.util.Locale;

/** How a constant is called in words files, forms and JSON. */
public final class ConstantKey {

    private ConstantKey() {
    }

    /** Small letters, with hyphens between words. */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The name of a constant as English words, such as {@code credit note}. */
    public static String words(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
