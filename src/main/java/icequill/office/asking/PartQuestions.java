package icequill.office.asking;

import icequill.party.Machine;
import icequill.rates.Material;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** What was put in, one thing after the other: letters of its name, which of those that have them, how much, and where. */
record PartQuestions(Setting setting, Function<Draft, Turn> next) {

    private static final int FEWEST_LETTERS = 3;
    private static final BigDecimal LEAST = new BigDecimal("0.001");
    private static final BigDecimal MOST = BigDecimal.valueOf(10_000);

    Turn first(Draft draft) {
        String key = draft.rows("lines").isEmpty() ? "part" : "next-part";
        return asking().skippable(asking().question(key),
                letters -> letters.isEmpty() ? next.apply(draft) : found(letters.get(), draft));
    }

    private Asking asking() {
        return setting.asking();
    }

    private Turn found(String letters, Draft draft) {
        if (letters.length() < FEWEST_LETTERS) {
            return asking().wrong("letters-of-part", letters, String.valueOf(FEWEST_LETTERS));
        }
        List<Material> materials = setting.rates().materials().stream()
                .filter(material -> Stream.concat(material.partNumber().stream(), Stream
                        .of(name(material), material.name().english(), material.name().spanish(), material.id()))
                        .anyMatch(name -> plain(name).contains(plain(letters))))
                .toList();
        if (materials.isEmpty()) {
            return asking().wrong("part", letters);
        }
        Question which = asking().question("which-part")
                .proposing(materials.size() == 1 ? Optional.of("1") : Optional.empty());
        return asking().oneOf(which, materials.stream().map(this::numbered).toList(),
                place -> amount(materials.get(place), draft));
    }

    /** Without accents and capitals, which nobody types when he searches. */
    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "").toLowerCase(Locale.ROOT);
    }

    private String numbered(Material material) {
        return name(material) + material.partNumber().map(number -> ", " + number).orElse("");
    }

    private String name(Material material) {
        return setting.sentences().in(material.name());
    }

    private Turn amount(Material material, Draft draft) {
        String unit = setting.sentences().word("unit." + material.unit().symbol());
        return asking().needed(
                asking().question("amount", name(material), unit.isEmpty() ? "" : " (" + unit + ")").proposing("1"),
                answer -> asking().quantity(answer, LEAST, MOST, amount -> where(Draft.EMPTY
                        .with("material", material.id()).with("amount", amount), draft)));
    }

    private Turn where(Draft line, Draft draft) {
        List<Machine> machines = setting.machines(draft);
        if (machines.size() < 2) {
            return first(draft.adding("lines", at(line, machines.stream().findFirst())));
        }
        return asking().oneOrNone(asking().question("part-at"), machines.stream().map(setting::name).toList(),
                place -> first(draft.adding("lines", at(line, place.map(machines::get)))));
    }

    private static Draft at(Draft line, Optional<Machine> machine) {
        return line.withAny("machine", machine.map(Machine::id));
    }
}
