package icequill.oracle;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Prices visits from the same files by the rules as they are written, sharing nothing with the program: time goes by minute by
 * minute, amounts are plain decimals.
 */
final class PriceOracle {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final Yaml NOTHING = new Yaml(Map.of());

    private final Yaml sheet;
    private final Yaml serviceCall;
    private final Yaml materials;
    private final Yaml tasks;
    private final Yaml adjustments;
    private final Yaml tiers;
    private final MinuteByMinute time;

    /** @param sheet prices agreed for the site; empty where there are none */
    PriceOracle(Path pricing, ZoneId zone, Yaml sheet) throws IOException {
        LaidOver over = new LaidOver(sheet);
        this.sheet = sheet;
        this.serviceCall = over.serviceCall(Yaml.of(pricing.resolve("service-call.yaml")));
        this.materials = over.materials(Yaml.of(pricing.resolve("materials.yaml")));
        this.tasks = Yaml.of(pricing.resolve("tasks.yaml"));
        this.adjustments = Yaml.of(pricing.resolve("adjustments.yaml"));
        this.tiers = Yaml.of(pricing.resolve("tiers.yaml"));
        this.time = new MinuteByMinute(over.labor(Yaml.of(pricing.resolve("labor.yaml"))), serviceCall, zone);
    }

    /** A line before and after what is taken off. */
    record Line(String on, BigDecimal net) {
        boolean isCharged() {
            return net.signum() > 0;
        }
    }

    /** What is used of a material. */
    private record Use(String material, BigDecimal amount, String outcome, boolean isDose, Yaml less) {}

    /** The nets of all lines, and last what the whole comes to. */
    List<String> price(Yaml visit, Yaml site) {
        List<Line> lines = lines(visit, site);
        BigDecimal sum = lines.stream().map(Line::net).reduce(BigDecimal.ZERO, BigDecimal::add);
        List<String> nets = new ArrayList<>(lines.stream().map(line -> line.net().setScale(2).toPlainString())
                .toList());
        nets.add(sum.subtract(off(visit, lines)).setScale(2).toPlainString());
        return nets;
    }

    BigDecimal tax(Yaml visit, Yaml site, TaxOracle taxes) {
        List<Line> lines = lines(visit, site);
        return taxes.tax(lines, off(visit, lines));
    }

    private List<Line> lines(Yaml visit, Yaml site) {
        List<Line> lines = new ArrayList<>();
        Yaml discount = visit.has("classDiscount")
                ? adjustments.named("classDiscounts", visit.text("classDiscount")).child("percents")
                : sheet.has("discount") ? sheet.child("discount") : NOTHING;
        Add add = (on, outcome, list, less) -> lines.add(new Line(on, outcome.equals("charged")
                ? list.subtract(off(visit, list, on, discount, less))
                : BigDecimal.ZERO));
        boolean isSale = visit.has("sold");
        if (!isSale) {
            serviceCalls(visit, site, add);
        }
        boolean isFlat = visit.has("flat");
        boolean isNobodyThere = visit.list("lines").stream().filter(line -> line.has("modifier"))
                .anyMatch(line -> adjustments.named("modifiers", line.text("modifier")).is("insteadOfLabor"));
        if (!isNobodyThere && !isSale) {
            time.lines(visit.list("people")).stream().filter(line -> !isFlat || !line.on().equals("cleaning"))
                    .forEach(line -> add.line(line.on(), line.outcome(), line.list()));
        }
        if (isFlat) {
            flat(visit, site, add);
        }
        materials(uses(visit, site).stream().filter(use -> !isFlat || !use.isDose()).toList(), add);
        visit.list("lines").stream().filter(line -> line.has("modifier")).forEach(line -> modifier(line, add));
        visit.list("lines").stream().filter(line -> line.has("text")).forEach(line -> own(line, add));
        if (isSale) {
            Yaml shipping = visit.child("sold").child("shipping");
            // Class discounts are on what was sold.
            lines.add(new Line(shipping.text("class"), cents(shipping.maybe("price").orElseGet(
                    () -> marked(shipping.number("cost"), shipping.number("markup"))))));
        }
        List<Line> discounted = List.copyOf(lines);
        fees(visit, site, discounted, lines);
        surcharges(visit, List.copyOf(lines), lines);
        return lines;
    }

    /** Takes a line by its list price, and what is taken off it for this once. */
    private interface Add {
        void line(String on, String outcome, BigDecimal list, Yaml less);

        default void line(String on, String outcome, BigDecimal list) {
            line(on, outcome, list, NOTHING);
        }
    }

    private static BigDecimal off(Yaml visit, BigDecimal list, String on, Yaml discount, Yaml less) {
        if (list.signum() < 0) {
            return BigDecimal.ZERO;
        }
        List<BigDecimal> percents = new ArrayList<>(List.of(discount.maybe(on).orElse(BigDecimal.ZERO)));
        visit.list("less").stream().filter(each -> each.text("class").equals(on))
                .forEach(each -> percents.add(each.number("percent")));
        less.maybe("percent").ifPresent(percents::add);
        BigDecimal byPercent = cents(list.multiply(Collections.max(percents)).divide(HUNDRED));
        return byPercent.max(less.maybe("amount").orElse(BigDecimal.ZERO).min(list));
    }

    private static BigDecimal cents(BigDecimal exact) {
        return exact.setScale(2, RoundingMode.HALF_UP);
    }

    private void serviceCalls(Yaml visit, Yaml site, Add add) {
        List<ZonedDateTime> arrivals = time.arrivals(visit.list("people"));
        String outcome = visit.text("serviceCall", "charged");
        BigDecimal miles = site.number("miles");
        for (ZonedDateTime arrival : serviceCall.is("eachDay") ? arrivals : arrivals.subList(0, 1)) {
            Yaml zone = serviceCall.list("zones").stream().filter(each -> miles.compareTo(each.number("upTo")) <= 0)
                    .findFirst().orElse(serviceCall.list("zones").getLast());
            BigDecimal beyond = miles.subtract(zone.number("upTo")).max(BigDecimal.ZERO);
            add.line("travel", outcome, cents(zone.child("prices").number(time.band(arrival))
                    .add(beyond.multiply(serviceCall.number("beyond")).multiply(BigDecimal.TWO))));
            serviceCall.maybe("perMile").ifPresent(
                    price -> add.line("travel", outcome, cents(price.multiply(miles).multiply(BigDecimal.TWO))));
        }
    }

    private Yaml machine(Yaml site, Yaml at) {
        return site.named("machines", at.text("machine"));
    }

    private void flat(Yaml visit, Yaml site, Add add) {
        record Flat(BigDecimal price, String outcome) {}
        List<Flat> all = new ArrayList<>();
        for (Yaml at : visit.list("machines")) {
            Yaml machine = machine(site, at);
            Yaml row = tiers.child("flat").list("machines").stream()
                    .filter(each -> each.text("scope").equals(visit.text("flat"))
                            && each.text("make").equals(machine.text("make"))
                            && machine.number("harvestRate").compareTo(each.number("upTo")) <= 0)
                    .min(Comparator.comparing(each -> each.number("upTo"))).orElseThrow();
            all.add(new Flat(row.number("price"), at.list("tasks").stream()
                    .map(task -> task.text("outcome", "charged")).filter(outcome -> !outcome.equals("declined"))
                    .findFirst().orElse("charged")));
        }
        all.sort(Comparator.comparing(Flat::price).reversed());
        BigDecimal further = HUNDRED.subtract(tiers.child("flat").maybe("further").orElse(BigDecimal.ZERO));
        for (int i = 0; i < all.size(); i++) {
            BigDecimal price = all.get(i).price();
            add.line("cleaning", all.get(i).outcome(),
                    i == 0 ? price : cents(price.multiply(further).divide(HUNDRED)));
        }
    }

    private List<Use> uses(Yaml visit, Yaml site) {
        List<Use> uses = new ArrayList<>();
        for (Yaml at : visit.list("machines")) {
            BigDecimal size = machine(site, at).number("harvestRate");
            for (Yaml done : at.list("tasks")) {
                for (Yaml dose : tasks.named("tasks", done.text("task")).list("doses")) {
                    Yaml step = dose.list("perMachine").stream()
                            .filter(each -> size.compareTo(each.number("upTo")) <= 0)
                            .min(Comparator.comparing(each -> each.number("upTo"))).orElseThrow();
                    uses.add(new Use(dose.text("material"), step.number("amount"), done.text("outcome", "charged"),
                            true, NOTHING));
                }
            }
        }
        visit.list("lines").stream().filter(line -> line.has("material")).forEach(line -> uses.add(
                new Use(line.text("material"), line.number("amount"), line.text("outcome", "charged"), false,
                        less(line))));
        return uses;
    }

    private void materials(List<Use> uses, Add add) {
        record Packed(String material, String outcome) {}
        Map<Packed, BigDecimal> packed = new LinkedHashMap<>();
        for (Use use : uses) {
            Yaml material = materials.named("items", use.material());
            if (material.has("pack")) {
                packed.merge(new Packed(use.material(), use.outcome()), use.amount(), BigDecimal::add);
            } else {
                add.line(material.text("class"), use.outcome(), cents(use.amount().multiply(unitPrice(material))),
                        use.less());
            }
        }
        packed.forEach((key, amount) -> {
            Yaml material = materials.named("items", key.material());
            BigDecimal packs = amount.divide(material.number("pack"), 0, RoundingMode.CEILING);
            add.line(material.text("class"), key.outcome(), cents(packs.multiply(unitPrice(material))),
                    uses.stream()
                            .filter(use -> use.material().equals(key.material()) && use.outcome().equals(key.outcome())
                                    && !use.less().equals(NOTHING))
                            .map(Use::less).findFirst().orElse(NOTHING));
        });
    }

    private static Yaml less(Yaml line) {
        return line.has("less") ? line.child("less") : NOTHING;
    }

    private BigDecimal unitPrice(Yaml material) {
        BigDecimal cost = material.number("cost");
        return material.maybe("price").orElseGet(() -> marked(cost, material.maybe("markup").orElseGet(
                () -> materials.list("markupBrackets").stream()
                        .filter(bracket -> !bracket.has("upTo") || cost.compareTo(bracket.number("upTo")) <= 0)
                        .findFirst().orElseThrow().number("percent"))));
    }

    private static BigDecimal marked(BigDecimal cost, BigDecimal percent) {
        return cost.multiply(HUNDRED.add(percent)).divide(HUNDRED).setScale(4, RoundingMode.HALF_UP);
    }

    private void modifier(Yaml line, Add add) {
        Yaml modifier = adjustments.named("modifiers", line.text("modifier"));
        BigDecimal product = line.maybe("amount").orElse(BigDecimal.ONE).multiply(modifier.number("price"));
        add.line(modifier.text("class"), line.text("outcome", "charged"),
                modifier.text("unit").equals("min")
                        ? product.divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP)
                        : cents(product));
    }

    private static void own(Yaml line, Add add) {
        BigDecimal price = line.maybe("price")
                .orElseGet(() -> marked(line.number("cost"), line.maybe("markup").orElse(BigDecimal.ZERO)));
        BigDecimal list = cents(line.maybe("amount").orElse(BigDecimal.ONE).multiply(price));
        add.line(line.text("class"), line.text("outcome", "charged"), line.has("back") ? list.negate() : list,
                less(line));
    }

    private void fees(Yaml visit, Yaml site, List<Line> discounted, List<Line> lines) {
        BigDecimal sum = charged(discounted);
        String country = site.child("address").text("country");
        String region = country + "-" + site.child("address").text("region");
        for (Yaml fee : adjustments.list("fees")) {
            boolean isHere = !fee.has("regions") || fee.texts("regions").contains(country)
                    || fee.texts("regions").contains(region);
            if (sum.signum() == 0 || !(visit.texts("fees").contains(fee.text("id"))
                    || (isOfEveryVisit(fee) && isHere && !visit.has("sold")))) {
                continue;
            }
            if (fee.has("amount")) {
                if (!fee.has("under") || sum.compareTo(fee.number("under")) < 0) {
                    lines.add(new Line(fee.text("class"), fee.number("amount")));
                }
                continue;
            }
            BigDecimal base = charged(of(discounted, fee.texts("on")));
            if (base.signum() > 0) {
                BigDecimal part = cents(base.multiply(fee.number("percent")).divide(HUNDRED))
                        .min(fee.maybe("cap").orElse(BigDecimal.TEN.pow(9)))
                        .max(fee.maybe("floor").orElse(BigDecimal.ZERO));
                lines.add(new Line(fee.text("class"), part));
            }
        }
    }

    private boolean isOfEveryVisit(Yaml added) {
        return added.is("always") && !sheet.texts("without").contains(added.text("id"));
    }

    private void surcharges(Yaml visit, List<Line> withFees, List<Line> lines) {
        for (Yaml surcharge : adjustments.list("surcharges")) {
            BigDecimal base = charged(of(withFees, surcharge.texts("on")));
            if (base.signum() > 0 && ((isOfEveryVisit(surcharge) && !visit.has("sold"))
                    || visit.texts("surcharges").contains(surcharge.text(
                            "id")))) {
                lines.add(new Line(surcharge.text("class"),
                        cents(base.multiply(surcharge.number("percent")).divide(HUNDRED))));
            }
        }
    }

    private static List<Line> of(List<Line> lines, List<String> classes) {
        return lines.stream().filter(line -> classes.contains(line.on())).toList();
    }

    private static BigDecimal charged(List<Line> lines) {
        return lines.stream().filter(Line::isCharged).map(Line::net).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private BigDecimal off(Yaml visit, List<Line> lines) {
        if (!visit.has("documentDiscount")) {
            return BigDecimal.ZERO;
        }
        Yaml discount = adjustments.named("documentDiscounts", visit.text("documentDiscount"));
        BigDecimal sum = charged(lines);
        return discount.has("amount")
                ? discount.number("amount").min(sum)
                : cents(sum.multiply(discount.number("percent")).divide(HUNDRED));
    }
}
