package icequill.web.visit;

/** Moments as forms write them, such as 2026-05-13T16:20, in their two parts. */
final class Moments {

    private Moments() {
    }

    static String day(String moment) {
        return moment.replaceFirst("T.*", "");
    }

    static String time(String moment) {
        return moment.replaceFirst(".*T", "");
    }
}
