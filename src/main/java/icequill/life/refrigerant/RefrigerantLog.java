package icequill.life.refrigerant;

import icequill.rates.RefrigerantRules;
import icequill.rates.RefrigerantRules.DisposalRule;
import icequill.work.RefrigerantWork.Purpose;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was done with refrigerant within some days.
 *
 * @param entries by day
 * @param machines each with how it stands by its last visit of those
 * @param kinds what was added and recovered of each
 */
public record RefrigerantLog(List<MachineLog.Entry> entries, List<Standing> machines, List<OfKind> kinds,
        List<CylinderLog> cylinders) {

    /**
     * A machine.
     *
     * @param rates those of its last loss; none where it lost nothing
     * @param disposal the law that wants a record of its disposal; empty where it is not disposed of, or none does
     */
    public record Standing(Handled last, List<LeakRate> rates, Verdict verdict, Optional<DisposalRule> disposal) {

        public Standing {
            rates = List.copyOf(rates);
        }
    }

    /** Ounces of a refrigerant. */
    public record OfKind(String kind, BigDecimal added, BigDecimal recovered) {}

    public RefrigerantLog {
        entries = List.copyOf(entries);
        machines = List.copyOf(machines);
        kinds = List.copyOf(kinds);
        cylinders = List.copyOf(cylinders);
    }

    /**
     * Of some visits.
     *
     * @param all that is on record: leak rates and balances look back beyond the days that are asked for
     * @param shown which of them are asked for
     */
    public static RefrigerantLog of(List<Handled> all, List<Handled> shown, RefrigerantRules rules) {
        Map<List<String>, List<MachineLog.Entry>> machines = new LinkedHashMap<>();
        all.stream().collect(Collectors.groupingBy(RefrigerantLog::machine, LinkedHashMap::new, Collectors.toList()))
                .forEach((machine, visits) -> machines.put(machine, MachineLog.of(visits).stream()
                        .filter(entry -> shown.contains(entry.handled())).toList()));
        List<MachineLog.Entry> entries = machines.values().stream().flatMap(List::stream)
                .sorted(Comparator.comparing((MachineLog.Entry entry) -> entry.handled().day())
                        .thenComparing(entry -> entry.handled().visit())
                        .thenComparing(entry -> entry.handled().machine()))
                .toList();
        return new RefrigerantLog(entries,
                machines.values().stream().filter(visits -> !visits.isEmpty()).map(visits -> standing(visits, rules))
                        .toList(),
                kinds(shown), cylinders(all, shown, rules));
    }

    private static List<String> machine(Handled handled) {
        return List.of(handled.site(), handled.machine());
    }

    private static Standing standing(List<MachineLog.Entry> visits, RefrigerantRules rules) {
        Handled last = visits.getLast().handled();
        List<LeakRate> rates = visits.reversed().stream().map(MachineLog.Entry::rates).filter(all -> !all.isEmpty())
                .findFirst().orElse(List.of());
        return new Standing(last, rates, Verdict.of(rules, last.kind(), last.charge(), last.day(), rates),
                rules.disposal().filter(rule -> last.purpose() == Purpose.DISPOSAL && rule.asksFor(last.charge())));
    }

    private static List<OfKind> kinds(List<Handled> shown) {
        return shown.stream().map(Handled::kind).distinct().sorted().map(kind -> {
            List<Handled> of = shown.stream().filter(one -> one.kind().equals(kind)).toList();
            return new OfKind(kind, sum(of.stream().map(Handled::added)), sum(of.stream().map(Handled::recovered)));
        }).toList();
    }

    private static List<CylinderLog> cylinders(List<Handled> all, List<Handled> shown, RefrigerantRules rules) {
        return shown.stream().flatMap(one -> Stream.of(one.from(), one.into())).flatMap(Optional::stream).distinct()
                .sorted().map(name -> CylinderLog.of(name, all.stream().filter(one -> CylinderLog.isOf(name, one))
                        .toList(), shown.stream().filter(one -> CylinderLog.isOf(name, one)).toList(),
                        rules.cylinder(name)))
                .toList();
    }

    private static BigDecimal sum(Stream<BigDecimal> ounces) {
        return ounces.reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
