package icequill.office;

import icequill.agreement.Tier;
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
import icequill.work.VisitLine;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A call that could be, priced like any visit, by the first grade of the rates. */
record SampleCall(Shop shop, Site site, Rates rates) {

    /** A band that has no hour within them is none to plan for. */
    private static final int HOURS_AHEAD = 14 * 24;

    /**
     * The price of a call in a labor band, at its first full hour from a day on.
     *
     * @param minutes at the site
     * @param lines what it takes
     */
    Checked<PricedVisit> price(LocalDate day, Band band, int minutes, ChargeClass on, List<VisitLine> lines) {
        return visit(day, band, minutes, on, lines).then(visit -> Pricer.price(visit, site, rates));
    }

    /** The same under an agreement. */
    Checked<PricedVisit> price(LocalDate day, Band band, int minutes, ChargeClass on, List<VisitLine> lines,
            Tier tier) {
        return visit(day, band, minutes, on, lines).then(visit -> Pricer.price(visit, site, rates, tier));
    }

    private Checked<Visit> visit(LocalDate day, Band band, int minutes, ChargeClass on, List<VisitLine> lines) {
        Optional<ZonedDateTime> start = start(day, band, minutes);
        if (start.isEmpty()) {
            return Checked.faulty(new Problem(Code.NO_RATES, Place.ofFile("pricing"),
                    "no hour of the two weeks from " + day + " has " + minutes + " minutes in the labor band \""
                            + band.id() + "\"",
                    "windows for it"));
        }
        String grade = rates.labor().grades().getFirst().id();
        Attendance.Spell spell = new Attendance.Spell(start.get(), start.get().plusMinutes(minutes), on,
                Outcome.CHARGED);
        return Checked.sound(new Visit("", site.id(), Optional.empty(), Order.NONE, Outcome.CHARGED,
                List.of(new Attendance("", grade, List.of(spell), Place.NOWHERE)), List.of(), lines, List.of(),
                Optional.empty(), Optional.empty(), Optional.empty(), Visit.Handover.NONE, Place.NOWHERE));
    }

    private Optional<ZonedDateTime> start(LocalDate day, Band band, int minutes) {
        ZonedDateTime midnight = day.atStartOfDay(shop.zone());
        return IntStream.range(0, HOURS_AHEAD).mapToObj(midnight::plusHours)
                .filter(hour -> rates.labor().week().split(hour, hour.plusMinutes(minutes)).stream()
                        .allMatch(slice -> slice.band().equals(band)))
                .findFirst();
    }
}
