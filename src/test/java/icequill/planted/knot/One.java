package icequill.planted.knot;

/** Needs another that needs it. */
public record One(Other other) {

    int unused() {
        return usedByUnused();
    }

    private int usedByUnused() {
        return 1;
    }
}
