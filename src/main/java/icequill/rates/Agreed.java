package icequill.rates;

import icequill.party.Wording;
import icequill.work.Band;
import icequill.work.ChargeClass;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which prices of a day are not the shop's own, and whose they are.
 *
 * @param names whose, by what has the price
 * @param discounts of the sheets, the nearest first
 */
public record Agreed(Map<String, Wording> names, List<ClassDiscount> discounts) {

    /** All are the shop's own. */
    public static final Agreed NOTHING = new Agreed(Map.of(), List.of());

    public Agreed {
        names = Map.copyOf(names);
        discounts = List.copyOf(discounts);
    }

    public Optional<Wording> hourly(Grade grade, Band band) {
        return Optional.ofNullable(names.get(hourly(grade.id(), band.id())));
    }

    public Optional<Wording> firstHour(Grade grade, Band band) {
        return Optional.ofNullable(names.get(firstHour(grade.id(), band.id())));
    }

    public Optional<Wording> serviceCall(ServiceCallRates.Zone zone, Band band) {
        return Optional.ofNullable(names.get(serviceCall(zone.id(), band.id())));
    }

    public Optional<Wording> material(Material material) {
        return Optional.ofNullable(names.get(material(material.id())));
    }

    /** With the names of a further sheet, which lies over the others. */
    Agreed under(RateSheet sheet) {
        Map<String, Wording> all = new HashMap<>(names);
        sheet.labor().forEach(entry -> entry.hourly().keySet()
                .forEach(band -> all.put(hourly(entry.grade(), band), sheet.name())));
        sheet.labor().forEach(entry -> entry.firstHour().keySet()
                .forEach(band -> all.put(firstHour(entry.grade(), band), sheet.name())));
        sheet.serviceCalls().forEach(entry -> entry.prices().keySet()
                .forEach(band -> all.put(serviceCall(entry.zone(), band), sheet.name())));
        sheet.prices().keySet().forEach(id -> all.put(material(id), sheet.name()));
        return new Agreed(all, under(sheet.discount().keySet(), sheet));
    }

    /** Class by class: what the nearer sheet does not name stays the farther one's. */
    private List<ClassDiscount> under(Set<ChargeClass> named, RateSheet sheet) {
        List<ClassDiscount> all = new ArrayList<>(discounts.stream().map(farther -> farther.without(named))
                .filter(farther -> !farther.percents().isEmpty()).toList());
        if (!named.isEmpty()) {
            all.addFirst(
                    new ClassDiscount(sheet.id(), sheet.name(), sheet.discount(), Optional.empty(), sheet.place()));
        }
        return all;
    }

    private static String hourly(String grade, String band) {
        return "labor/" + grade + "/" + band;
    }

    private static String firstHour(String grade, String band) {
        return "first-hour/" + grade + "/" + band;
    }

    private static String serviceCall(String zone, String band) {
        return "service-call/" + zone + "/" + band;
    }

    private static String material(String id) {
        return "material/" + id;
    }
}
