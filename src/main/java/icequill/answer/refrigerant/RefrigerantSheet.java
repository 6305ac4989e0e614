package icequill.answer.refrigerant;

import icequill.answer.refrigerant.RefrigerantHistory.Cylinder;
import icequill.answer.refrigerant.RefrigerantHistory.Rate;
import icequill.answer.refrigerant.RefrigerantHistory.Visit;
import icequill.files.answer.Sheet;
import icequill.render.words.RefrigerantWords;
import icequill.render.words.Sentences;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was done with refrigerant, for the screen in one language and as data. */
public record RefrigerantSheet(RefrigerantHistory data, Sentences sentences) implements Sheet {

    /** All of it, line by line. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (data.visits().isEmpty()) {
            lines.add(sentences.word("leak.none"));
        }
        data.visits().forEach(visit -> lines.add(visit(visit)));
        data.machines().forEach(machine -> {
            lines.add(machine.siteName() + ", " + machine.machineName() + ": " + machine.says());
            machine.rates().stream().map(Rate::how).map(how -> "  " + how).forEach(lines::add);
            machine.disposal().map(text -> "  " + text).ifPresent(lines::add);
        });
        data.kinds().forEach(kind -> lines.add(sentences.word("leak.of-kind", kind.refrigerant(),
                ounces(kind.added()), ounces(kind.recovered()))));
        data.cylinders().forEach(cylinder -> lines.add(cylinder(cylinder)));
        lines.addAll(data.notes());
        return lines;
    }

    private String visit(Visit visit) {
        return sentences.formats().day(visit.day()) + ": " + visit.siteName() + ", " + visit.machineName() + ", "
                + Stream.of(Optional.of(visit.refrigerant()), purpose(visit), added(visit), recovered(visit),
                        visit.technician(), visit.leak(), visit.repair(), visit.test(), visit.figured())
                        .flatMap(Optional::stream).collect(Collectors.joining("; "))
                + " (" + visit.visit() + ")";
    }

    /** Why it was done, where that is more than service. */
    public Optional<String> purpose(Visit visit) {
        return words().purpose(visit.purpose());
    }

    /** What went in; empty where nothing did. */
    public Optional<String> added(Visit visit) {
        return words().added(visit.added(), visit.from());
    }

    /** What came out; empty where nothing did. */
    public Optional<String> recovered(Visit visit) {
        return words().recovered(visit.recovered(), visit.into());
    }

    /** What moved with a cylinder, and what is in it. */
    public String cylinder(Cylinder cylinder) {
        return sentences.word("leak.of-cylinder", cylinder.cylinder(), cylinder.refrigerant(),
                ounces(cylinder.taken()), ounces(cylinder.put()),
                cylinder.balance().map(this::ounces).orElseGet(() -> sentences.word("leak.balance-unknown")));
    }

    /** A weight. */
    public String ounces(BigDecimal weight) {
        return words().ounces(weight);
    }

    private RefrigerantWords words() {
        return new RefrigerantWords(sentences);
    }
}
