package icequill.office.asking;

import icequill.party.Machine;
import icequill.rates.Material;
import icequill.work.Quantity;
import icequill.work.Task;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** How much of each cleaner and sanitizer went into a machine, held against its label at once. */
record ChemicalQuestions(Setting setting, Machine machine) {

    private static final BigDecimal LEAST = new BigDecimal("0.001");
    private static final BigDecimal MOST = BigDecimal.valueOf(10_000);
    private static final BigDecimal MINUTES_OF_A_DAY = BigDecimal.valueOf(1440);

    /** A chemical, and what a task takes of it for the machine. */
    private record Dosed(Material material, Task.Step step) {}

    Turn each(List<Task> tasks, Draft row, Function<Draft, Turn> then) {
        return asked(tasks.stream().flatMap(task -> task.doses().stream()).flatMap(dose -> dosed(dose).stream())
                .distinct().toList(), row, then);
    }

    private Optional<Dosed> dosed(Task.Dose dose) {
        return setting.rates().material(dose.material())
                .flatMap(material -> dose.step(machine.harvestRate()).map(step -> new Dosed(material, step)));
    }

    private Asking asking() {
        return setting.asking();
    }

    private Turn asked(List<Dosed> left, Draft row, Function<Draft, Turn> then) {
        return left.isEmpty()
                ? then.apply(row)
                : dose(left.getFirst(), used -> asked(left.subList(1, left.size()),
                        used.map(found -> row.adding("chemicals", found)).orElse(row), then));
    }

    private Turn dose(Dosed chemical, Function<Optional<Draft>, Turn> then) {
        Question question = asking().question("dose", name(chemical), unit(chemical), setting.name(machine))
                .proposing(chemical.step().quantity().stripTrailingZeros().toPlainString());
        return asking().skippable(question, answer -> answer.isEmpty()
                ? then.apply(Optional.empty())
                : asking().quantity(answer.get(), LEAST, MOST, dose -> ofLabel(chemical, dose, then)));
    }

    private Turn ofLabel(Dosed chemical, BigDecimal dose, Function<Optional<Draft>, Turn> then) {
        Optional<BigDecimal> most = chemical.step().water()
                .flatMap(water -> chemical.material().label().map(label -> label.most(water)));
        return most.filter(limit -> dose.compareTo(limit) > 0)
                .<Turn>map(limit -> asking().wrong("label", dose.toPlainString(), unit(chemical),
                        limit.stripTrailingZeros().toPlainString(), water(chemical)))
                .orElseGet(() -> minutes(chemical, dose, then));
    }

    private String water(Dosed chemical) {
        return chemical.step().water().flatMap(water -> chemical.material().label()
                .map(label -> setting.sentences().quantity(new Quantity(water, label.per())))).orElse("");
    }

    private Turn minutes(Dosed chemical, BigDecimal dose, Function<Optional<Draft>, Turn> then) {
        Draft used = Draft.EMPTY.with("material", chemical.material().id()).with("dose", dose);
        return asking().skippable(asking().question("minutes", name(chemical)), answer -> answer.isEmpty()
                ? then.apply(Optional.of(used))
                : asking().quantity(answer.get(), BigDecimal.ZERO, MINUTES_OF_A_DAY,
                        minutes -> then.apply(Optional.of(used.with("minutes", minutes)))));
    }

    private String name(Dosed chemical) {
        return setting.sentences().in(chemical.material().name());
    }

    private String unit(Dosed chemical) {
        return setting.sentences().word("unit." + chemical.material().unit().symbol());
    }
}
