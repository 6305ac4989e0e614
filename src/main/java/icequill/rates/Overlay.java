package icequill.rates;

import icequill.rates.Material.Given;
import icequill.rates.ServiceCallRates.Zone;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Lays a rate sheet over rates, entry by entry. */
record Overlay(Rates rates, RateSheet sheet) {

    Rates laid() {
        return new Rates(rates.currency(), labor(), serviceCall(), materials(), rates.tasks(), adjustments(),
                rates.plans(), rates.agreed().under(sheet), rates.included(),
                rates.refrigerants());
    }

    private LaborRates labor() {
        LaborRates usual = rates.labor();
        return new LaborRates(usual.bands(), usual.week(), usual.grades().stream().map(this::grade).toList(),
                usual.counting(), usual.crew());
    }

    private Grade grade(Grade usual) {
        Grade grade = usual;
        for (RateSheet.Labor entry : sheet.labor()) {
            if (entry.grade().equals(usual.id())) {
                HourPrices hourly = grade.hourly();
                grade = new Grade(grade.id(), grade.name(), new HourPrices(over(hourly.work(), entry.hourly()),
                        firstHour(hourly.firstHour(), entry), hourly.travel(), hourly.wage()),
                        over(grade.minimum(), entry.minimum()),
                        grade.qualified(), entry.place());
            }
        }
        return grade;
    }

    /** Who agreed on the price of an hour does not pay the shop's for the first one. */
    private static Map<String, MonetaryAmount> firstHour(Map<String, MonetaryAmount> usual, RateSheet.Labor entry) {
        Map<String, MonetaryAmount> all = new HashMap<>(usual);
        all.keySet().removeAll(entry.hourly().keySet());
        all.putAll(entry.firstHour());
        return all;
    }

    private ServiceCallRates serviceCall() {
        ServiceCallRates usual = rates.serviceCall();
        return new ServiceCallRates(usual.zones().stream().map(this::zone).toList(), usual.beyond(), usual.perMile(),
                sheet.includes().orElse(usual.includes()), usual.eachDay(), usual.mileCost(), usual.speed(),
                usual.place());
    }

    private Zone zone(Zone usual) {
        Zone zone = usual;
        for (RateSheet.ServiceCall entry : sheet.serviceCalls()) {
            if (entry.zone().equals(usual.id())) {
                zone = new Zone(zone.id(), zone.name(), zone.upTo(), over(zone.prices(), entry.prices()),
                        entry.place());
            }
        }
        return zone;
    }

    /** What it costs the shop stays what it is. */
    private List<Material> materials() {
        return rates.materials().stream()
                .map(material -> Optional.ofNullable(sheet.prices().get(material.id()))
                        .map(price -> new Material(material.id(), material.name(), material.partNumber(),
                                material.chargeClass(),
                                material.unit(), material.pack(), new Given(price, material.price().cost()),
                                material.registration(), material.label(), sheet.place()))
                        .orElse(material))
                .toList();
    }

    /** Fees and surcharges of every visit of which the customer is free apply where a visit names them all the same. */
    private Adjustments adjustments() {
        Adjustments usual = rates.adjustments();
        return new Adjustments(usual.modifiers(), usual.fees().stream().map(fee -> isFree(fee.id())
                ? new Fee(fee.id(), fee.name(), fee.chargeClass(), fee.amount(), fee.applies().onlyNamed())
                : fee).toList(),
                usual.surcharges().stream().map(surcharge -> isFree(surcharge.id())
                        ? new Surcharge(surcharge.id(), surcharge.name(), surcharge.percent(), surcharge.on(),
                                surcharge.chargeClass(), surcharge.applies().onlyNamed(), surcharge.place())
                        : surcharge).toList(),
                usual.classDiscounts(), usual.documentDiscounts(), usual.earlyPayment(), usual.cardCost(),
                usual.diagnosisCredit(), usual.warrantyPayers())
                .paid(sheet.earlyPayment());
    }

    private boolean isFree(String id) {
        return sheet.without().contains(id);
    }

    private static <T> Map<String, T> over(Map<String, T> usual, Map<String, T> agreed) {
        Map<String, T> all = new HashMap<>(usual);
        all.putAll(agreed);
        return all;
    }
}
