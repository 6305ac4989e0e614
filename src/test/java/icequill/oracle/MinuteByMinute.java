package icequill.oracle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;

/** Prices the time of a visit by going through it minute by minute, one stay a person. */
record MinuteByMinute(Yaml labor, Yaml serviceCall, ZoneId zone) {

    /** A minute of somebody. */
    private static final class Minute {
        private final Yaml grade;
        private final String band;
        private final String on;
        private final String outcome;
        /** Which stretch of one band and one purpose it is of; what is added goes to the first. */
        private final int run;
        private String rate = "work";

        private Minute(Yaml grade, String band, String on, String outcome, int run) {
            this.grade = grade;
            this.band = band;
            this.on = on;
            this.outcome = outcome;
            this.run = run;
        }

        private Minute again() {
            Minute copy = new Minute(grade, band, on, outcome, run);
            copy.rate = rate;
            return copy;
        }
    }

    /** A line of labor. */
    record Line(String on, String outcome, BigDecimal list) {}

    ZonedDateTime moment(String local) {
        return LocalDateTime.parse(local).atZone(zone);
    }

    String band(ZonedDateTime moment) {
        LocalDate day = moment.toLocalDate();
        if (labor.list("holidays").stream().anyMatch(holiday -> isOn(holiday, day))) {
            return labor.text("onHolidays");
        }
        String weekday = day.getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
        for (Yaml window : labor.list("week")) {
            int now = moment.toLocalTime().toSecondOfDay() / 60;
            if (window.texts("days").contains(weekday) && now >= minutes(window.text("from"))
                    && now < minutes(window.text("until"))) {
                return window.text("band");
            }
        }
        return labor.text("otherwise");
    }

    private static int minutes(String time) {
        return Integer.parseInt(time.substring(0, 2)) * 60 + Integer.parseInt(time.substring(3));
    }

    private static boolean isOn(Yaml holiday, LocalDate day) {
        if (holiday.has("yearly")) {
            return day.format(DateTimeFormatter.ofPattern("MM-dd", Locale.ROOT)).equals(holiday.text("yearly"));
        }
        boolean fits = day.getMonthValue() == holiday.number("month").intValue()
                && day.getDayOfWeek().name().toLowerCase(Locale.ROOT).startsWith(holiday.text("weekday"));
        int nth = holiday.number("nth").intValue();
        return fits && (nth > 0
                ? (day.getDayOfMonth() - 1) / 7 + 1 == nth
                : day.plusDays(7).getMonthValue() != day.getMonthValue());
    }

    /** The lines, in the order in which their kinds of minutes first occur. */
    List<Line> lines(List<Yaml> people) {
        boolean together = labor.text("counted").equals("visit");
        List<Yaml> inOrder = new ArrayList<>(people);
        if (together) {
            inOrder.sort(Comparator.comparing(person -> moment(person.text("arrived"))));
        }
        Yaml first = people.stream().min(Comparator.comparing(person -> moment(person.text("arrived")))).orElseThrow();
        Map<String, List<Minute>> kinds = new LinkedHashMap<>();
        List<List<Yaml>> groups = together ? List.of(inOrder) : inOrder.stream().map(List::of).toList();
        BiConsumer<Minute, Boolean> count = (minute, isBilled) -> {
            List<Minute> kind = kinds.computeIfAbsent(minute.grade.text("id") + minute.band + minute.on + minute.outcome
                    + minute.rate, key -> new ArrayList<>(List.of(minute)));
            if (isBilled) {
                kind.add(minute);
            }
        };
        groups.forEach(group -> billed(group,
                group.contains(first) && serviceCall.has("includes") ? serviceCall.number("includes").intValue() : 0,
                count));
        // The first of each list only says which kind it is.
        return kinds.values().stream().map(kind -> line(kind.getFirst(), kind.size() - 1)).toList();
    }

    private void billed(List<Yaml> group, int included, BiConsumer<Minute, Boolean> count) {
        List<List<Minute>> worked = group.stream().map(this::worked).toList();
        int all = worked.stream().mapToInt(List::size).sum();
        String arrival = band(moment(group.getFirst().text("arrived")));
        int step = labor.byBand("increment", arrival).intValue();
        int raised = (all + step - 1) / step * step;
        int least = group.stream().mapToInt(person -> grade(person).byBand("minimum", arrival).intValue()).max()
                .orElseThrow();
        List<Minute> own = new ArrayList<>(worked.getFirst());
        int end = 0;
        while (end < own.size() && own.get(end).run == own.getFirst().run && own.get(end).rate.equals(
                own.getFirst().rate)) {
            end++;
        }
        for (int added = all; added < Math.max(raised, least); added++) {
            own.add(end, own.getFirst().again());
        }
        int hour = 0;
        for (int i = 0; i < own.size(); i++) {
            Minute minute = own.get(i);
            if (minute.rate.equals("work")) {
                hour++;
                minute.rate = hour <= 60 && minute.grade.has("firstHour")
                        && minute.grade.child("firstHour").has(minute.band) ? "firstHour" : "work";
            }
            count.accept(minute, i >= included);
        }
        worked.stream().skip(1).forEach(minutes -> minutes.forEach(minute -> count.accept(minute, true)));
    }

    private List<Minute> worked(Yaml person) {
        List<Minute> minutes = new ArrayList<>();
        ZonedDateTime now = moment(person.text("arrived"));
        List<Yaml> spent = person.has("spent")
                ? person.list("spent")
                : List.of(new Yaml(Map.of("until", person.text("left"))));
        int run = 0;
        for (Yaml spell : spent) {
            run++;
            String before = band(now);
            while (now.toInstant().isBefore(moment(spell.text("until")).toInstant())) {
                String band = band(now);
                run += band.equals(before) ? 0 : 1;
                before = band;
                minutes.add(minute(person, spell, band, run, minutes.size()));
                now = now.plusMinutes(1);
            }
        }
        return minutes;
    }

    private Minute minute(Yaml person, Yaml spell, String band, int run, int before) {
        Yaml grade = grade(person);
        String on = spell.text("on", person.text("on"));
        String outcome = spell.text("outcome", person.text("outcome", "charged"));
        if (on.equals("travel") && grade.has("travel")) {
            Minute minute = new Minute(grade, band, on, outcome, run);
            minute.rate = "travel";
            return minute;
        }
        if (labor.has("overtime") && before >= labor.child("overtime").number("after").intValue() * 60) {
            String dear = labor.child("overtime").text("band");
            if (grade.child("hourly").number(dear).compareTo(grade.child("hourly").number(band)) > 0) {
                Minute minute = new Minute(grade, dear, on, outcome, run);
                minute.rate = "overtime";
                return minute;
            }
        }
        return new Minute(grade, band, on, outcome, run);
    }

    private Yaml grade(Yaml person) {
        return labor.named("grades", person.text("grade"));
    }

    private static Line line(Minute kind, int minutes) {
        String prices = Set.of("work", "overtime").contains(kind.rate) ? "hourly" : kind.rate;
        BigDecimal list = BigDecimal.valueOf(minutes).multiply(kind.grade.child(prices).number(kind.band))
                .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
        return new Line(kind.on, kind.outcome, list);
    }

    /** The first arrival of each day. */
    List<ZonedDateTime> arrivals(List<Yaml> people) {
        Map<LocalDate, ZonedDateTime> first = new LinkedHashMap<>();
        for (ZonedDateTime arrival : new TreeSet<>(people.stream().map(person -> moment(person.text("arrived")))
                .toList())) {
            first.putIfAbsent(arrival.toLocalDate(), arrival);
        }
        return List.copyOf(first.values());
    }
}
