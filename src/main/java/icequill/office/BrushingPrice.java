package icequill.office;

import icequill.party.Shop;
import icequill.party.Site;
import icequill.pricer.PricedVisit;
import icequill.pricer.Pricer;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.rates.Rates;
import icequill.work.Attendance;
import icequill.work.Band;
import icequill.work.ChargeClass;
import icequill.work.Order;
import icequill.work.Outcome;
import icequill.work.Visit;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What we would charge for coming to brush one condenser, priced like any visit. */
record BrushingPrice(Shop shop, Site site, Rates rates) {

    /** What one takes (common practice). */
    private static final int MINUTES = 10;
    /** A band that has no hour within them is none to plan a brushing in. */
    private static final int HOURS_AHEAD = 14 * 24;

    /** The price in the first band of the rates, which is that of standard hours, and by its first grade. */
    Checked<PricedVisit> from(LocalDate day) {
        Optional<ZonedDateTime> start = start(day);
        if (start.isEmpty()) {
            return Checked.faulty(new Problem(Code.NO_RATES, Place.ofFile("pricing"),
                    "no hour of the two weeks from " + day + " is in the first labor band", "windows for it"));
        }
        String grade = rates.labor().grades().getFirst().id();
        Attendance.Spell spell = new Attendance.Spell(start.get(), start.get().plusMinutes(MINUTES),
                ChargeClass.CLEANING, Outcome.CHARGED);
        Visit visit = new Visit("brushing", site.id(), Optional.empty(), Order.NONE, Outcome.CHARGED,
                List.of(new Attendance("", grade, List.of(spell), Place.NOWHERE)), List.of(), List.of(), List.of(),
                Optional.empty(), Optional.empty(), Optional.empty(), Visit.Handover.NONE, Place.NOWHERE);
        return Pricer.price(visit, site, rates);
    }

    private Optional<ZonedDateTime> start(LocalDate day) {
        Band standard = rates.labor().bands().getFirst();
        ZonedDateTime midnight = day.atStartOfDay(shop.zone());
        return IntStream.range(0, HOURS_AHEAD).mapToObj(midnight::plusHours)
                .filter(hour -> rates.labor().week().at(hour.toLocalDateTime()).equals(standard)
                        && rates.labor().week().at(hour.plusMinutes(MINUTES).toLocalDateTime()).equals(standard))
                .findFirst();
    }
}
