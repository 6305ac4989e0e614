package icequill.forecast.stops;

/** The months from a cleaning call, or from the beginning, on: ages and hazards at the beginning of each later stretch. */
final class AgePath {

    private final FoulingLife clock;
    private final double[] begins;
    private final double[] ages;
    private final double[] hazards;
    private final double from;
    private final int first;

    AgePath(FoulingLife clock, Stretches stretches, int first, double from, double age) {
        this.clock = clock;
        this.begins = stretches.begins();
        this.ages = new double[begins.length];
        this.hazards = new double[begins.length];
        this.first = first;
        this.from = from;
        ages[first] = age;
        for (int later = first + 1; later < begins.length; later++) {
            double gone = begins[later] - start(later - 1);
            hazards[later] = hazards[later - 1] + clock.hazard(ages[later - 1], gone);
            ages[later] = stretches.leaves() * (ages[later - 1] + gone);
        }
    }

    private double start(int stretch) {
        return stretch == first ? from : begins[stretch];
    }

    /** The age at the beginning of a stretch. */
    double age(int stretch) {
        return ages[stretch];
    }

    double hazard(int stretch, double month) {
        return hazards[stretch] + clock.hazard(ages[stretch], month - start(stretch));
    }

    double rate(int stretch, double month) {
        return clock.rate(ages[stretch] + month - start(stretch));
    }
}
