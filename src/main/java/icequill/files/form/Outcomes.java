package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.work.Outcome;

/** Who bears something, as its form says: whoever is billed, where it says nothing. */
final class Outcomes {

    private Outcomes() {
    }

    static Outcome of(Fields entry, String key) {
        return entry.constant(key, Outcome.class).orElse(Outcome.CHARGED);
    }
}
