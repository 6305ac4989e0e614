package icequill.oracle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;

/**
 * Works a comparison out again from the inputs that its data state, by other means than the program's: the renewal equation as sums on a
 * grid, charges cent by cent, two ways by their joint law. What is shared by the two ways: random faults, and the dirt where they
 * clean on the same days.
 */
public final class ForecastOracle {

    private static final List<String> CAUSES = List.of("random", "condenser", "water");
    private static final int CELLS = 360;
    private static final double CHANCE = 5e-6;
    /** The program adds up two ways on a lattice that may be wider than a cent, and where sums nearly tie that blurs a chance. */
    private static final double JOINT = 3e-4;
    private static final double YEAR = 12;

    private final JsonNode json;
    private final JsonNode inputs;
    private final List<String> disagreements = new ArrayList<>();
    /** Ways that clean on the same days need the same sums. */
    private final Map<Grid, double[]> grids = new HashMap<>();
    private int compared;

    private record Grid(GridStops side, double age, double months, int cells) {}

    private ForecastOracle(JsonNode json) {
        this.json = json;
        this.inputs = json.path("inputs");
    }

    /** What came of it. */
    public record Verdict(int compared, List<String> disagreements) {}

    /** All figures of the first year, and the means of the horizon. */
    public static Verdict judge(JsonNode json) {
        ForecastOracle oracle = new ForecastOracle(json.path("forecast"));
        oracle.json.path("options").propertyNames().forEach(oracle::option);
        return new Verdict(oracle.compared, oracle.disagreements);
    }

    private void option(String way) {
        JsonNode option = json.path("options").path(way);
        double[] all = {1};
        Cents charges = Cents.nothing();
        for (String cause : CAUSES) {
            double[] counts = counts(way, cause, YEAR);
            chance(way + " calls " + cause, GridStops.mean(counts), option.path("callsByCause").path(cause).asDouble());
            all = plus(all, counts);
            charges = charges.and(counts, shares(way, cause), amounts(way, cause));
        }
        chance(way + " expected calls", GridStops.mean(all), option.path("expectedCalls").asDouble());
        chance(way + " no call", all[0], option.path("chanceOfNoCall").asDouble());
        for (int n = 0; n < option.path("chancesOfCalls").size(); n++) {
            chance(way + " chance of " + n, n < all.length ? all[n] : 0,
                    option.path("chancesOfCalls").get(n).asDouble());
        }
        JsonNode law = option.path("charges");
        money(way + " mean", charges.mean(), law.path("mean"));
        money(way + " deviation", charges.deviation(), law.path("sd"));
        money(way + " total", charges.mean() + planned(option), option.path("total").path("mean"));
        for (int percent : new int[]{10, 50, 90}) {
            quantile(way + " P" + percent, charges, percent / 100.0, law.path("p" + percent),
                    blur(law.path("latticeStep"), option.path("expectedCalls")));
        }
        cheaper(way, "payPerCall", "chanceCheaperThanPayPerCall");
        cheaper(way, "bookedSingly", "chanceCheaperThanBookedSingly");
        double over = YEAR * option.path("horizon").path("years").asInt();
        for (String cause : CAUSES) {
            chance(way + " calls over years " + cause, GridStops.mean(counts(way, cause, over)),
                    option.path("horizon").path("callsByCause").path(cause).asDouble());
        }
    }

    private void chance(String what, double own, double said) {
        compared++;
        if (!(Math.abs(own - said) <= CHANCE * Math.max(1, own))) {
            disagreements.add(what + ": " + own + ", said " + said);
        }
    }

    private void money(String what, double own, JsonNode said) {
        compared++;
        if (!(Math.abs(own / 100 - said.asDouble()) <= 0.0051 + CHANCE * own / 100)) {
            disagreements.add(what + ": " + own / 100 + ", said " + said);
        }
    }

    /** Cents by which sums may be off: on a wide lattice each charge is split between two steps, so that errors add up like a walk. */
    private static long blur(JsonNode step, JsonNode calls) {
        long cents = Math.round(step.asDouble() * 100);
        return cents <= 1 ? 0 : Math.round(3 * cents * Math.sqrt(calls.asDouble() + 1));
    }

    private void quantile(String what, Cents charges, double part, JsonNode said, long off) {
        compared++;
        long cents = Math.round(said.asDouble() * 100);
        if (charges.atMost(cents + off) < part - CHANCE || charges.atMost(cents - off - 1) > part + CHANCE) {
            disagreements.add(what + ": up to " + said + " in " + charges.atMost(cents));
        }
    }

    private void cheaper(String way, String rival, String key) {
        JsonNode said = json.path("options").path(way).path(key).path("1");
        if (way.equals(rival)) {
            return;
        }
        boolean shared = json.path("options").path(way).path("cleanings")
                .equals(json.path("options").path(rival).path("cleanings"))
                && json.path("options").path(way).path("brushings")
                        .equals(json.path("options").path(rival).path("brushings"));
        Cents own = Cents.nothing();
        Cents other = Cents.nothing();
        for (String cause : CAUSES) {
            if (shared || cause.equals("random")) {
                int[] differences = amounts(way, cause);
                int[] others = amounts(rival, cause);
                Arrays.setAll(differences, i -> differences[i] - others[i]);
                own = own.and(counts(way, cause, YEAR), shares(way, cause), differences);
            } else {
                own = own.and(counts(way, cause, YEAR), shares(way, cause), amounts(way, cause));
                other = other.and(counts(rival, cause, YEAR), shares(rival, cause), amounts(rival, cause));
            }
        }
        long fixed = planned(json.path("options").path(way)) - planned(json.path("options").path(rival));
        compared++;
        double chance = own.chanceOfLess(fixed, other);
        if (!(Math.abs(chance - said.asDouble()) <= JOINT)) {
            disagreements.add(way + " cheaper than " + rival + ": " + chance + ", said " + said);
        }
    }

    /** In cents, of the first year. */
    private static long planned(JsonNode option) {
        return Math.round(100 * (option.path("plannedPrice").asDouble() + option.path("catchingUp").asDouble(0)));
    }

    private List<JsonNode> kinds(String way, String cause) {
        return StreamSupport.stream(inputs.path("calls").path(way).spliterator(), false)
                .filter(kind -> kind.path("cause").asString().equals(cause)).toList();
    }

    private double[] shares(String way, String cause) {
        return kinds(way, cause).stream().mapToDouble(kind -> kind.path("share").asDouble()).toArray();
    }

    private int[] amounts(String way, String cause) {
        return kinds(way, cause).stream()
                .mapToInt(kind -> (int) Math.round(100 * kind.path("charge").asDouble())).toArray();
    }

    private double[] counts(String way, String cause, double months) {
        double[] sum = {1};
        for (JsonNode machine : inputs.path("machines")) {
            sum = switch (cause) {
            case "random" -> plus(sum, poisson(inputs.path("randomFaults").path("usual").asDouble() * months / YEAR));
            case "condenser" -> machine.has("monthsOfDirtOnCondenser")
                    ? plus(sum,
                            dirt(way, cause, "brushing", machine.path("monthsOfDirtOnCondenser").asDouble(), months))
                    : sum;
            default -> plus(sum, dirt(way, cause, "cleaning", machine.path("monthsOfDirtInWater").asDouble(), months));
            };
        }
        return sum;
    }

    private double[] dirt(String way, String side, String care, double age, double months) {
        double six = inputs.path(side).path("usual").path("by6").asDouble() / 20;
        double twelve = inputs.path(side).path("usual").path("by12").asDouble() / 20;
        double shape = Math.log(Math.log(1 - twelve) / Math.log(1 - six)) / Math.log(2);
        double scale = 12 / Math.pow(-Math.log(1 - twelve), 1 / shape);
        for (JsonNode factor : inputs.path("siteFactors")) {
            scale /= factor.path(side).asDouble();
        }
        List<Double> cleanings = new ArrayList<>();
        json.path("options").path(way).path(care + "s").forEach(month -> cleanings.add(month.asDouble()));
        cleanings.removeIf(month -> month >= months);
        double restores = inputs.path("restores").path(care).asDouble() / 100;
        double cleans = inputs.path("callsThatClean").asDouble() / 100;
        if (cleans > 0) {
            int cells = (int) (CELLS * months / YEAR / (months > YEAR ? 2 : 1));
            return grids.computeIfAbsent(
                    new Grid(new GridStops(shape, scale, List.copyOf(cleanings), restores), age, months, cells),
                    grid -> grid.side().chances(grid.age(), grid.months(), grid.cells()));
        }
        double hazard = 0;
        double dirt = age;
        double at = 0;
        cleanings.add(months);
        for (double next : cleanings) {
            hazard += Math.pow((dirt + next - at) / scale, shape) - Math.pow(dirt / scale, shape);
            dirt = (dirt + next - at) * (1 - restores);
            at = next;
        }
        return poisson(hazard);
    }

    private static double[] poisson(double mean) {
        double[] chances = new double[(int) (mean + 10 * Math.sqrt(mean) + 20)];
        chances[0] = Math.exp(-mean);
        for (int n = 1; n < chances.length; n++) {
            chances[n] = chances[n - 1] * mean / n;
        }
        return chances;
    }

    private static double[] plus(double[] one, double[] other) {
        double[] sum = new double[one.length + other.length - 1];
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; j < other.length && one[i] > 0; j++) {
                sum[i + j] += one[i] * other[j];
            }
        }
        int most = sum.length;
        while (most > 1 && sum[most - 1] < 1e-15) {
            most--;
        }
        return Arrays.copyOf(sum, most);
    }
}
