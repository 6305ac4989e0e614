package icequill.files.form;

import icequill.explain.ConstantKey;
import icequill.files.yaml.Tree;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a form tells of. The order is that in which forms are taken in, each after those that it may name. */
public enum FormKind {

    CUSTOMER("customer"), SITE("site"), AGREEMENT("agreement"),
    MAINTENANCE_REQUEST("maintenance"),
    BRUSHING_REQUEST("brushing"), PLANNED_VISIT("visit"), VISIT("visit"), SALE("visit"), ACCOUNT("account"),
    PAYMENT("payment");

    private final String schema;

    FormKind(String schema) {
        this.schema = schema;
    }

    /** As a form names it, such as {@code planned-visit}. */
    public String key() {
        return ConstantKey.of(this);
    }

    /** As people say it, such as {@code planned visit}. */
    public String words() {
        return key().replace('-', ' ');
    }

    /** A visit that is planned, one that was done and a sale without one share their names. */
    public FormKind storedAs() {
        return this == PLANNED_VISIT || this == SALE ? VISIT : this;
    }

    /** What a stored visit is handed over as: a sale where nobody came. */
    public static FormKind ofVisit(Tree.Branch matter, boolean isPlanned) {
        return matter.entries().containsKey(SaleReader.KEY) ? SALE : isPlanned ? PLANNED_VISIT : VISIT;
    }

    /** The resource of its schema. */
    public String schema() {
        return "/icequill/schema/" + schema + ".schema.json";
    }

    public static Optional<FormKind> of(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key().equals(key)).findFirst();
    }

    /** The names of all of them. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(FormKind::key).toList();
    }
}
