package icequill.oracle;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Makes visits to the demo's hotel, of any mix of people, hours, work, parts and terms. Seeds are fixed. */
final class RandomVisits {

    private static final List<String> MACHINES = List.of("lobby-bar", "main-kitchen", "banquet", "floor-3");
    private static final List<String> TASKS = List.of("brush-condenser", "circulate-descaler", "sanitize", "flush");
    private static final List<String> MATERIALS = List.of("descaler-bottle", "sanitizer", "water-filter", "nylon-brush",
            "drain-tubing", "circulation-pump", "waste-disposal", "coil-cleaner");
    private static final List<String> OUTCOMES = List.of("charged", "charged", "charged", "included", "callback",
            "goodwill");
    private static final List<String> LABOR = List.of("cleaning", "repair", "diagnosis", "travel");

    private final Random random;
    private final boolean hasExtras;

    /** @param hasExtras whether the rates know the fee extra and flat prices */
    RandomVisits(long seed, boolean hasExtras) {
        this.random = new Random(seed);
        this.hasExtras = hasExtras;
    }

    String next() {
        StringBuilder text = new StringBuilder("format: 1\nform: visit\nsite: hotel-fernhill\n");
        if (random.nextInt(10) == 0) {
            return sale(text);
        }
        text.append("serviceCall: ").append(one(OUTCOMES)).append("\npeople:\n");
        LocalDateTime day = LocalDateTime.of(2026, 1, 2, 0, 0).plusDays(random.nextInt(360));
        for (int i = 0; i <= random.nextInt(3); i++) {
            person(text, day.plusDays(random.nextInt(4) == 0 ? 1 : 0).plusMinutes(300L + random.nextInt(960)), i);
        }
        boolean isAtMachines = random.nextInt(4) > 0;
        if (isAtMachines) {
            text.append("machines:\n");
            MACHINES.subList(0, 1 + random.nextInt(MACHINES.size())).forEach(machine -> machine(text, machine));
        }
        List<String> lines = lines();
        if (!lines.isEmpty()) {
            text.append("lines:\n");
            lines.forEach(line -> text.append("  - {").append(line).append("}\n"));
        }
        terms(text, isAtMachines);
        return text.toString();
    }

    private String sale(StringBuilder text) {
        text.append("sold: {on: 2026-0").append(1 + random.nextInt(9))
                .append("-15, way: shipped, shipping: {class: parts, ")
                .append(random.nextBoolean() ? "price: 14.55" : "cost: 9.37, markup: 12.5").append("}}\nlines:\n")
                .append("  - {material: water-filter, amount: ").append(1 + random.nextInt(4)).append("}\n");
        lines().forEach(line -> text.append("  - {").append(line).append("}\n"));
        terms(text, false);
        return text.toString();
    }

    private void person(StringBuilder text, LocalDateTime arrived, int number) {
        int minutes = 1 + random.nextInt(random.nextInt(3) == 0 ? 800 : 200);
        LocalDateTime left = arrived.plusMinutes(minutes);
        text.append("  - {name: P").append(number).append(", grade: ")
                .append(random.nextInt(3) == 0 ? "helper" : "lead")
                .append(", arrived: ").append(arrived).append(", left: ").append(left).append(", on: ")
                .append(one(LABOR)).append(", outcome: ").append(one(OUTCOMES));
        if (minutes > 1 && random.nextBoolean()) {
            text.append(", spent: [{until: ").append(arrived.plusMinutes(1L + random.nextInt(minutes - 1)))
                    .append(", on: ").append(one(LABOR)).append("}, {until: ").append(left).append("}]");
        }
        text.append("}\n");
    }

    private void machine(StringBuilder text, String machine) {
        text.append("  - machine: ").append(machine).append("\n    tasks:\n");
        for (String task : TASKS.subList(random.nextInt(2), 1 + random.nextInt(3) + 1)) {
            text.append("      - {task: ").append(task).append(", outcome: ").append(one(OUTCOMES)).append("}\n");
        }
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < random.nextInt(5); i++) {
            lines.add(switch (random.nextInt(6)) {
            case 0 -> "modifier: " + (random.nextBoolean() ? "stairs" : "waiting") + ", amount: "
                    + (1 + random.nextInt(40));
            case 1 -> "text: mine, class: parts, price: " + (1 + random.nextInt(90_000)) / 100.0 + less();
            case 2 -> "text: lift, class: travel, unit: day, amount: 1.5, cost: " + random.nextInt(30_000) / 100.0
                    + ", markup: " + random.nextInt(60);
            case 3 -> "text: core, class: parts, price: " + random.nextInt(900) / 100.0 + ", back: core-return";
            default -> "material: " + one(MATERIALS) + ", amount: " + (1 + random.nextInt(900)) / 100.0 + ", outcome: "
                    + (random.nextInt(3) == 0 && lines.stream().noneMatch(line -> line.contains("less"))
                            ? "charged" + less()
                            : one(OUTCOMES));
            });
        }
        if (random.nextInt(15) == 0) {
            lines.add("modifier: found-nobody");
        }
        return lines;
    }

    private String less() {
        return switch (random.nextInt(3)) {
        case 0 -> ", less: {reason: why not, percent: " + random.nextInt(1000) / 10.0 + "}";
        case 1 -> ", less: {reason: why not, amount: " + random.nextInt(9000) / 100.0 + "}";
        default -> "";
        };
    }

    private void terms(StringBuilder text, boolean isAtMachines) {
        if (random.nextInt(3) == 0) {
            text.append("classDiscount: agreement-labor\n");
        }
        if (random.nextInt(3) == 0) {
            text.append("documentDiscount: ").append(random.nextBoolean() ? "welcome" : "group").append('\n');
        }
        if (random.nextInt(3) == 0) {
            text.append("surcharges: [fuel, chemical-handling]\n");
        }
        if (random.nextInt(4) == 0) {
            text.append("less: [{class: ").append(one(List.of("travel", "repair", "parts"))).append(", percent: ")
                    .append(random.nextInt(400) / 10.0).append(", reason: we came late}]\n");
        }
        if (hasExtras && random.nextBoolean()) {
            text.append("fees: [extra]\n");
        }
        if (hasExtras && isAtMachines && random.nextInt(3) == 0) {
            text.append("flat: full-clean\n");
        }
    }

    private <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
