package icequill.plans;

import icequill.agreement.PlannedVisit;
import icequill.document.InvoiceLine;
import icequill.document.PlanYear;
import icequill.document.PlanYear.MachineWork;
import icequill.document.PlanYear.SlotWork;
import icequill.money.Amounts;
import icequill.party.Machine;
import icequill.planner.Timetable;
import icequill.pricer.PricedAgreement;
import icequill.pricer.PricedSlot;
import icequill.pricer.StaffedVisit;
import icequill.tax.TaxCalculator;
import icequill.tax.TaxedVisit;
import icequill.visits.ChargeSheet;
import icequill.work.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/** Puts a year on a plan together as its customer sees it. */
public record PlanYearAssembly(PricedPlan plan) {

    PlanYear year() {
        PricedAgreement priced = plan.year();
        return new PlanYear(plan.tier().promised(), visits(), priced.list(), priced.discount(), priced.otherDiscount(),
                priced.reserve(),
                priced.price(),
                priced.how());
    }

    /** Visits that are alike in everything but their day stand together. */
    public List<SlotWork> visits() {
        List<SlotWork> kinds = new ArrayList<>();
        List<PricedSlot> slots = plan.year().slots();
        for (int i = 0; i < slots.size(); i++) {
            SlotWork work = work(slots.get(i), plan.crews().get(i));
            int like = IntStream.range(0, kinds.size()).filter(k -> isAlike(kinds.get(k), work)).findFirst()
                    .orElse(kinds.size());
            if (like == kinds.size()) {
                kinds.add(work);
            } else {
                kinds.set(like, and(kinds.get(like), work));
            }
        }
        return kinds;
    }

    private static boolean isAlike(SlotWork one, SlotWork other) {
        return one.visits().getFirst().slot().scope().equals(other.visits().getFirst().slot().scope())
                && one.people() == other.people() && one.minutes() == other.minutes()
                && one.arrival().equals(other.arrival()) && one.machines().equals(other.machines())
                && prints(one).equals(prints(other));
    }

    /** What is printed of the lines. */
    private static List<List<Object>> prints(SlotWork work) {
        return work.lines().stream().map(line -> List.<Object>of(line.text(), line.quantity(), line.net())).toList();
    }

    private static SlotWork and(SlotWork before, SlotWork like) {
        List<PlannedVisit> visits = new ArrayList<>(before.visits());
        visits.addAll(like.visits());
        return new SlotWork(visits, before.people(), before.minutes(), before.from(), before.timetable(),
                before.arrival(),
                before.machines(), before.lines(),
                before.net());
    }

    private SlotWork work(PricedSlot slot, TimedVisit crew) {
        List<StaffedVisit.Person> people = crew.staffed().crew();
        List<InvoiceLine> lines = new ChargeSheet(plan.setting().site(), taxed(slot)).lines();
        return new SlotWork(List.of(slot.visit()), people.size(),
                people.stream().mapToInt(StaffedVisit.Person::minutes).max().orElseThrow(), crew.from(),
                crew.timetable(),
                slot.arrival(),
                machines(slot.visit(), crew.timetable()), lines, slot.priced().net());
    }

    private List<MachineWork> machines(PlannedVisit visit, Optional<Timetable> timetable) {
        PlannedMinutes minutes = new PlannedMinutes(plan.setting());
        List<MachineWork> machines = new ArrayList<>();
        for (Machine machine : plan.setting().site().machines()) {
            machines.add(
                    new MachineWork(machine.where(), minutes.tasks(visit, machine).stream().map(Task::name).toList(),
                            minutes.withoutIce(visit, machine, timetable)));
        }
        return machines;
    }

    /** One visit of the plan taxed as if it were booked singly. */
    TaxedVisit taxed(PricedSlot slot) {
        PlanSetting setting = plan.setting();
        return TaxCalculator.tax(slot.priced(), setting.place(), setting.shop().taxBasis(),
                setting.site().customer(), slot.visit().date());
    }

    /** What the tax would come to if every visit of the year were booked singly. */
    MonetaryAmount taxBookedSingly() {
        return Amounts.sum(plan.year().slots().stream().map(slot -> taxed(slot).tax()).toList(),
                plan.setting().rates().currency());
    }
}
