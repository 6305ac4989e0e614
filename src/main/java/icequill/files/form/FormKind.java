package icequill.files.form;

import icequill.explain.ConstantKey;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a form tells of. The order is that in which forms are taken in, each after those that it may name. */
public enum FormKind {

    CUSTOMER("customer", true), SITE("site", true), AGREEMENT("agreement", true),
    MAINTENANCE_REQUEST("maintenance", true),
    BRUSHING_REQUEST("brushing", true), PLANNED_VISIT("visit", true), VISIT("visit", true), ACCOUNT("account", true),
    PAYMENT("payment", true), CREDIT("credit", false);

    private final String schema;
    private final boolean isStored;

    FormKind(String schema, boolean isStored) {
        this.schema = schema;
        this.isStored = isStored;
    }

    /** As a form names it, such as {@code planned-visit}. */
    public String key() {
        return ConstantKey.of(this);
    }

    /** As people say it, such as {@code planned visit}. */
    public String words() {
        return key().replace('-', ' ');
    }

    /** A visit that is planned and one that was done share their names. */
    public FormKind storedAs() {
        return this == PLANNED_VISIT ? VISIT : this;
    }

    /** Whether a book takes such forms in; others are for one paper. */
    public boolean isStored() {
        return isStored;
    }

    /** The resource of its schema. */
    public String schema() {
        return "/icequill/schema/" + schema + ".schema.json";
    }

    public static Optional<FormKind> of(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key().equals(key)).findFirst();
    }

    /** The names of those that a book takes in. */
    public static List<String> storedKeys() {
        return Arrays.stream(values()).filter(FormKind::isStored).map(FormKind::key).toList();
    }
}
