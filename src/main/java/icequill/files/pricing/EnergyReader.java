package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.forecast.effects.EnergyLimit;
import icequill.forecast.effects.Line;
import icequill.forecast.effects.Provenance;
import icequill.party.Machine;
import icequill.party.Period;
import icequill.problem.Code;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the limits of energy from a file of kind energy. */
final class EnergyReader {

    private EnergyReader() {
    }

    static List<EnergyLimit> read(Fields file) {
        return file.children("classes").stream().flatMap(entry -> limits(entry).stream()).toList();
    }

    private static List<EnergyLimit> limits(Fields entry) {
        Optional<Period> made = entry.child("made").flatMap(days -> days.day("from")
                .flatMap(from -> days.period(from)));
        Optional<Machine.Make> make = entry.constant("make", Machine.Make.class);
        Optional<EnergyLimit.Build> build = entry.constant("build", EnergyLimit.Build.class);
        Optional<Machine.Cooling> cooling = entry.constant("cooling", Machine.Cooling.class);
        Optional<Provenance> mark = entry.constant("mark", Provenance.class);
        if (made.isEmpty() || make.isEmpty() || build.isEmpty() || cooling.isEmpty() || mark.isEmpty()) {
            return List.of();
        }
        Optional<Line> water = entry.child("condenserWater").flatMap(EnergyReader::line);
        List<EnergyLimit> limits = new ArrayList<>();
        BigDecimal end = BigDecimal.ZERO;
        for (Fields row : entry.children("rows")) {
            Optional<BigDecimal> from = row.number("from");
            Optional<BigDecimal> below = row.number("below");
            Optional<Line> energy = line(row);
            if (from.isPresent() && below.isPresent() && energy.isPresent()) {
                if (from.get().compareTo(end) < 0 || below.get().compareTo(from.get()) <= 0) {
                    row.problems().add(Code.WRONG_ORDER, row.place("from"),
                            "from " + from.get().toPlainString() + " to below " + below.get().toPlainString(),
                            "rows by rising harvest rate, none twice: from " + end.toPlainString() + " on");
                }
                end = below.get();
                limits.add(new EnergyLimit(made.get(), make.get(), build.get(), cooling.get(), from.get(), below.get(),
                        energy.get(), water, mark.get(), entry.text("source").orElse("")));
            }
        }
        return limits;
    }

    private static Optional<Line> line(Fields entry) {
        return entry.number("base").flatMap(base -> entry.number("aPound").map(slope -> new Line(base, slope)));
    }
}
