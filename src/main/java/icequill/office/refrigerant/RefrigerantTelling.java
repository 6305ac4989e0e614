package icequill.office.refrigerant;

import icequill.answer.history.Period;
import icequill.answer.refrigerant.RefrigerantHistory;
import icequill.answer.refrigerant.RefrigerantHistory.Rate;
import icequill.answer.refrigerant.RefrigerantSheet;
import icequill.life.refrigerant.CylinderLog;
import icequill.life.refrigerant.Handled;
import icequill.life.refrigerant.LeakRate;
import icequill.life.refrigerant.MachineLog;
import icequill.life.refrigerant.RefrigerantLog;
import icequill.life.refrigerant.RefrigerantLog.OfKind;
import icequill.life.refrigerant.RefrigerantLog.Standing;
import icequill.office.care.VisitScope;
import icequill.party.Site;
import icequill.render.words.MachineName;
import icequill.render.words.RefrigerantWords;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.Optional;

/** Puts the log of refrigerant into the words of a reader. */
record RefrigerantTelling(HandledVisits visits, Sentences sentences) {

    RefrigerantSheet sheet(Optional<String> site, VisitScope where, Period period, RefrigerantLog log) {
        return new RefrigerantSheet(new RefrigerantHistory(site, where.machine(), period.from(),
                period.until(), log.entries().stream().map(this::visit).toList(),
                log.machines().stream().map(this::machine).toList(),
                log.kinds().stream().map(RefrigerantTelling::kind).toList(),
                log.cylinders().stream().map(RefrigerantTelling::cylinder).toList(), notes()), sentences);
    }

    private RefrigerantWords words() {
        return new RefrigerantWords(sentences);
    }

    private RefrigerantHistory.Visit visit(MachineLog.Entry entry) {
        Handled handled = entry.handled();
        return new RefrigerantHistory.Visit(handled.visit(), handled.day(), handled.site(), siteName(handled),
                handled.machine(), machineName(handled), handled.kind(), handled.charge(), handled.purpose(),
                handled.added(), handled.from(), handled.recovered(), handled.into(), words().technician(handled),
                handled.leak(), handled.repair(), handled.test().map(words()::test), entry.lost(),
                words().lost(entry), rates(entry.rates()));
    }

    private List<Rate> rates(List<LeakRate> rates) {
        return rates.stream().map(rate -> new Rate(rate.method(), rate.percent(), words().how(rate))).toList();
    }

    private RefrigerantHistory.Machine machine(Standing machine) {
        Handled last = machine.last();
        return new RefrigerantHistory.Machine(last.site(), siteName(last), last.machine(), machineName(last),
                last.kind(), last.charge(), rates(machine.rates()), machine.verdict().outcome(),
                words().verdict(machine), words().disposal(machine));
    }

    private static RefrigerantHistory.Kind kind(OfKind kind) {
        return new RefrigerantHistory.Kind(kind.kind(), kind.added(), kind.recovered());
    }

    private static RefrigerantHistory.Cylinder cylinder(CylinderLog cylinder) {
        return new RefrigerantHistory.Cylinder(cylinder.cylinder(), cylinder.kind(), cylinder.taken(),
                cylinder.put(), cylinder.balance());
    }

    private List<String> notes() {
        return List.of(sentences.word("leak.note.law"), sentences.word("leak.note.venting"));
    }

    private String siteName(Handled handled) {
        return visits.site(handled.site()).map(Site::name).orElse(handled.site());
    }

    private String machineName(Handled handled) {
        return visits.site(handled.site()).flatMap(site -> site.machine(handled.machine()))
                .map(machine -> new MachineName(machine, sentences).text()).orElse(handled.machine());
    }
}
