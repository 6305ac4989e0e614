package icequill.life.refrigerant;

import icequill.life.refrigerant.LeakRate.Method;
import icequill.work.RefrigerantWork.Purpose;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The refrigerant of one machine, from visit to visit. */
public final class MachineLog {

    private final List<Entry> entries = new ArrayList<>();
    /** Ounces that were recovered and did not go back: not lost, though the machine needs them. */
    private BigDecimal out = BigDecimal.ZERO;
    private Optional<LocalDate> provedTight = Optional.empty();

    private MachineLog() {
    }

    /**
     * A visit, with what it shows to have leaked.
     *
     * @param back ounces of what was added that had been recovered before, and so had not leaked
     * @param lost ounces that had leaked; zero where nothing was added but what had been recovered, or where it was a first charge
     * @param rates by both methods where something had leaked; otherwise none
     */
    public record Entry(Handled handled, BigDecimal back, BigDecimal lost, List<LeakRate> rates) {

        public Entry {
            rates = List.copyOf(rates);
        }
    }

    /** The visits of a machine, in the order of their days. */
    public static List<Entry> of(List<Handled> visits) {
        MachineLog log = new MachineLog();
        visits.stream().sorted(Comparator.comparing(Handled::day)).forEach(log::add);
        return List.copyOf(log.entries);
    }

    private void add(Handled handled) {
        BigDecimal back = BigDecimal.ZERO;
        BigDecimal lost = BigDecimal.ZERO;
        if (handled.purpose() == Purpose.SERVICE) {
            out = out.add(handled.recovered());
            back = out.min(handled.added());
            lost = handled.added().subtract(back);
            out = out.subtract(back);
        } else {
            out = BigDecimal.ZERO;
        }
        entries.add(new Entry(handled, back, lost, List.of()));
        if (lost.signum() > 0) {
            entries.set(entries.size() - 1, new Entry(handled, back, lost, rates(handled)));
        }
        if (handled.provesTight()) {
            provedTight = Optional.of(handled.day());
        }
    }

    private List<LeakRate> rates(Handled handled) {
        LocalDate day = handled.day();
        BigDecimal ofDay = lostSince(day);
        int days = daysTo(day, lastAddedBefore(day));
        int back = daysTo(day, provedTight);
        return List.of(new LeakRate(Method.ANNUALIZING, ofDay, handled.charge(), days),
                new LeakRate(Method.ROLLING_AVERAGE, lostSince(day.minusDays(back - 1L)), handled.charge(), back));
    }

    /** Several visits of one day are one addition. */
    private Optional<LocalDate> lastAddedBefore(LocalDate day) {
        return entries.stream().filter(entry -> entry.lost().signum() > 0
                || entry.handled().purpose() == Purpose.FIRST_CHARGE)
                .map(entry -> entry.handled().day()).filter(day::isAfter).reduce((first, last) -> last);
    }

    /** From a day to another, at most a year and at least a day; a year where there is none. */
    private static int daysTo(LocalDate day, Optional<LocalDate> from) {
        return from.map(first -> (int) Math.max(1, Math.min(LeakRate.YEAR, ChronoUnit.DAYS.between(first, day))))
                .orElse(LeakRate.YEAR);
    }

    private BigDecimal lostSince(LocalDate first) {
        return entries.stream().filter(entry -> !entry.handled().day().isBefore(first)).map(Entry::lost)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
