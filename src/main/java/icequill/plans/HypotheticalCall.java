package icequill.plans;

import icequill.agreement.Tier;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.pricer.PricedVisit;
import icequill.pricer.Pricer;
import icequill.problem.Place;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.work.Attendance;
import icequill.work.Band;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.Outcome;
import icequill.work.PurchaseOrder;
import icequill.work.Task;
import icequill.work.Visit;
import icequill.work.VisitLine;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A call that could be, priced like any visit, by the first grade of the rates. */
public record HypotheticalCall(Shop shop, Site site, Rates rates) {

    /**
     * What a call is for.
     *
     * @param minutes at the site, without those of the tasks
     * @param lines what it takes
     * @param tasks that are done besides at one machine, one after another; empty for none
     */
    public record Work(int minutes, ChargeClass on, List<VisitLine> lines, Optional<AtMachine> tasks) {

        /** Without tasks. */
        public static Work of(int minutes, ChargeClass on, List<VisitLine> lines) {
            return new Work(minutes, on, lines, Optional.empty());
        }
    }

    /** Cleaning tasks at a machine, all of which suit it. */
    record AtMachine(String machine, List<Task> tasks) {

        private int minutes() {
            return tasks.stream().mapToInt(task -> task.attended() + task.unattended()).sum();
        }

        private Finding finding() {
            return new Finding(machine, Optional.empty(), Optional.empty(), Optional.empty(), tasks.stream()
                    .map(task -> new Finding.TaskDone(task.id(), Outcome.CHARGED, task.place())).toList(), List.of(),
                    List.of(), Place.NOWHERE);
        }
    }

    /**
     * The price of a call in a labor band, whether or not any hour near the day is in it: a band may be that of a few holidays.
     *
     * @param day of the call
     */
    public Validated<PricedVisit> price(LocalDate day, Band band, Work work) {
        return Pricer.price(visit(day, work), site, rates.within(band));
    }

    /** The same under an agreement. */
    public Validated<PricedVisit> price(LocalDate day, Band band, Work work, Tier tier) {
        return Pricer.price(visit(day, work), site, rates.within(band), tier);
    }

    private Visit visit(LocalDate day, Work work) {
        int more = work.tasks().map(AtMachine::minutes).orElse(0);
        ZonedDateTime start = day.atStartOfDay(shop.zone());
        String grade = rates.labor().grades().getFirst().id();
        ZonedDateTime found = start.plusMinutes(work.minutes());
        List<Attendance.Spell> spells = new ArrayList<>(
                List.of(new Attendance.Spell(start, found, work.on(), Outcome.CHARGED)));
        if (more > 0) {
            spells.add(new Attendance.Spell(found, found.plusMinutes(more), ChargeClass.CLEANING, Outcome.CHARGED));
        }
        return new Visit("", site.id(), Optional.empty(), PurchaseOrder.NONE, Outcome.CHARGED,
                List.of(new Attendance("", grade, spells, Place.NOWHERE)), Optional.empty(), Optional.empty(),
                work.tasks().map(AtMachine::finding).stream().toList(), work.lines(), Visit.PriceTerms.USUAL,
                Optional.empty(), Visit.Handover.NONE, Place.NOWHERE);
    }
}
