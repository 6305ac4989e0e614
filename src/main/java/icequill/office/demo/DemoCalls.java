package icequill.office.demo;

import icequill.office.call.CallOffice;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.util.Map;
import java.util.Optional;

/** Calls of the invented shop's customers, to which nobody went yet. */
record DemoCalls(ShopBook book) {

    private static final String TAPROOM = "pennon-wharf-taproom";

    /** Puts them into its book, and plans one. */
    Validated<Boolean> taken() {
        CallOffice office = CallOffice.of(book, Optional.empty());
        Problems problems = new Problems();
        problems.take(office.take("hotel-fernhill", Map.of("by", "Imre Castell", "at", "2026-08-31T08:40", "symptom",
                "Half of the cubes are missing their corners.", "machine", "lobby-bar", "since", "Saturday night",
                "purchaseOrder", "FH-0412-77", "limit", "350", "approver", "Imre Castell, by telephone")));
        problems.take(office.take(TAPROOM, Map.of("by", "Bram Oyelaran", "at", "2026-09-01T10:15", "symptom",
                "Water on the floor below the machine.", "since", "this morning")));
        problems.take(office.plan(TAPROOM + "-2026-09-01",
                Map.of("person", "Sol Marrero", "at", "2026-09-03T09:00"), Optional.empty()));
        problems.take(office.take("crumb-lane-bakery", Map.of("by", "Noor Haddad", "at", "2026-09-01T16:05", "symptom",
                "Louder than usual.", "promised", "2026-09-03T12:00")));
        return problems.or(() -> true);
    }
}
